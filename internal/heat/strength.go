package heat

import "math"

// Early is how fast the cement gains its early strength.
type Early int

// The classes: slow such as Types IV and V and blends, ordinary such as Types I, II and IL, rapid such as Type III.
const (
	Slow Early = iota
	Ordinary
	Rapid
)

// ACI209 is strength over 28-day strength at an age in hours at 20 °C, moist cured: t/(a+bt) with t in days, a = 4.0
// and b = 0.85 for Type I, 2.3 and 0.92 for Type III (ACI 209R-92, table 2.2.1). It has no class for slow cement, which is taken
// as Type I.
func ACI209(hours float64, early Early) float64 {
	t := math.Max(hours, 0) / 24
	if early == Rapid {
		return t / (2.3 + 0.92*t)
	}
	return t / (4.0 + 0.85*t)
}

// ACI209Steam is the same for steam curing: a = 1.0, b = 0.95 for Type I, 0.70 and 0.98 for Type III.
func ACI209Steam(hours float64, early Early) float64 {
	t := math.Max(hours, 0) / 24
	if early == Rapid {
		return t / (0.70 + 0.98*t)
	}
	return t / (1.0 + 0.95*t)
}

// Eurocode is strength over 28-day strength at an age in hours at 20 °C: exp(s·(1-√(28/t))) with t in days and s = 0.20,
// 0.25 and 0.38 for cements of class R, N and S (EN 1992-1-1, equation 3.2).
func Eurocode(hours float64, early Early) float64 {
	if hours <= 0 {
		return 0
	}
	s := 0.25
	switch early {
	case Rapid:
		s = 0.20
	case Slow:
		s = 0.38
	}
	return math.Exp(s * (1 - math.Sqrt(28*24/hours)))
}

// Hyperbola is N. J. Carino's strength curve (ASTM, 1984), limit·k·(t-t0)/(1+k·(t-t0)): no strength before the final
// set t0.
type Hyperbola struct {
	Limit float64 // strength in the long run over 28-day strength
	K     float64 // 1/h
	Set   float64 // t0, h at 20 °C
}

// At is strength over 28-day strength at an age in hours at 20 °C.
func (c Hyperbola) At(hours float64) float64 {
	x := c.K * (hours - c.Set)
	if x <= 0 {
		return 0
	}
	return c.Limit * x / (1 + x)
}

// CarinoThrough gives the hyperbola that begins at final set, in hours at 20 °C, and passes through the strengths of
// ACI 209 at 7 and 28 days.
func CarinoThrough(set float64, early Early) Hyperbola {
	const day7, day28 = 7 * 24.0, 28 * 24.0
	ratio := ACI209(day7, early) / ACI209(day28, early)
	a, b := day7-set, day28-set // a(1+kb) = ratio·b(1+ka)
	k := (ratio*b - a) / (a * b * (1 - ratio))
	return Hyperbola{Limit: (1 + k*b) / (k * b), K: k, Set: set}
}
