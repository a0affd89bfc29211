package figure

import (
	"math"
	"slices"
)

// A placement in cold weather is run through time by the heat package. What a job does not state is bounded by what
// makes it coldest and warmest; what it states beyond these bounds counts as the bound, so that learning a fact never
// leads out of the range.
var (
	coldNeeds  = []string{"member.thickness", "member.kind", "load.temperature"}
	coldBounds = []Bound{
		{Fact: "weather.high", Lowest: -70.0, Highest: 140.0},
		{Fact: "weather.wind", Lowest: mostWind, Highest: leastWind, Apart: true}, // it cools in cold air and warms above cold ground
		{Fact: "ground.temperature", Lowest: coldestGround, Highest: warmestGround},
		{Fact: "mix.cementitious", Lowest: leastCement, Highest: mostCement},
	}
	// Where the start is not stated, every sixth hour is tried, once moved to each side (see corner).
	startBound  = Bound{Fact: "job.start", Lowest: 18.0, Highest: 6 + warmSide, Also: []any{0.0, 6.0, 12.0, warmSide, 12 + warmSide, 18 + warmSide}}
	coldAssumes = []string{"ground.state"}
)

// noContradiction is Within where a rougher way may come out far from a better one: an answer must not hang on it.
const noContradiction = 1e6

// coldWays gives the two ways in which a placement is run: through the hours of a forecast, or through days that are made
// from the low and the high. They say the same where both are stated, but for what a forecast knows better.
func coldWays(needs []string, bounds []Bound, compute func(c *Calc) (Value, error)) []Way {
	bounds = slices.Concat(coldBounds, bounds)
	return []Way{
		{Needs: slices.Concat(needs, []string{"weather.forecast", "weather.start_hour"}), Sharpens: bounds, Assumes: coldAssumes, Compute: compute, Final: true},
		{Needs: slices.Concat(needs, []string{"weather.low"}), Sharpens: slices.Concat(bounds, []Bound{startBound}), Assumes: coldAssumes, Compute: compute, Final: true},
	}
}

// startOf is the hour of the day at which a made-up day begins, o'clock.
func startOf(c *Calc) float64 {
	if !c.names("job.start") {
		return 0
	}
	if c.Stated("job.start") {
		return c.Num("job.start")
	}
	return math.Trunc(c.Num("job.start"))
}

// warmSide marks an hour that is tried for the start as one whose result is moved to the warm side, h.
const warmSide = 0.01

// lowAhead is the low that a way goes by.
func lowAhead(c *Calc) float64 {
	if c.names("weather.low") {
		return c.Num("weather.low")
	}
	low, _ := coldestOf(c)
	return low
}

const (
	leastSwing    = 8.0 // of the air between low and high, dF
	mostSwing     = 35.0
	leastWind     = 3.0   // mph: no day is calmer throughout
	mostWind      = 30.0  // mph
	coldestGround = 20.0  // F
	warmestGround = 75.0  // F
	groundAbove   = 40.0  // how much warmer than the low the ground is counted at most, dF
	leastCement   = 400.0 // lb/yd3
	mostCement    = 800.0 // lb/yd3
	usualWater    = 0.5   // water-cement ratio of which the heat is taken

	kgPerLbYd = 0.593276 // kg/m³ in a lb/yd³
	rsi       = 0.176110 // m²·K/W in an R
	meter     = 0.0254   // in an inch
)

// corner tells at which end of the unknown facts a run stands: -1 at the coldest, 1 at the warmest, 0 where all are stated.
// The ends do not bound it to the last degree, since a cause works now and then the other way: wind warms by day, more
// cement leaves less water to freeze. So what comes out at an end is moved outward a little.
func corner(c *Calc) float64 {
	for _, b := range coldBounds {
		if !c.names(b.Fact) || c.Stated(b.Fact) || b.Apart || !counts(c, b.Fact) {
			continue
		}
		if c.fact(b.Fact) == b.Lowest {
			return -1
		}
		return 1
	}
	if c.names("job.start") && !c.Stated("job.start") {
		if c.Num("job.start") > startOf(c) {
			return 1
		}
		return -1
	}
	return 0
}

// startUnknown is how far a time may lie outside what the hours of the start that are tried give, h: half of what they lie
// apart.
func startUnknown(c *Calc) float64 {
	if c.names("job.start") && !c.Stated("job.start") {
		return 6 * corner(c)
	}
	return 0
}

// counts says whether a fact makes a difference to this placement.
func counts(c *Calc, fact string) bool {
	switch fact {
	case "weather.high":
		return !c.Stated("weather.forecast")
	case "ground.temperature":
		return onGround(c.Text("member.kind"))
	}
	return true
}

func onGround(kind string) bool {
	return slices.Contains([]string{"slab on ground", "footing", "topping", "pad"}, kind)
}

// degreesOut moves a temperature in °F outward at an end of the unknown facts.
func degreesOut(c *Calc, f float64) float64 {
	out := 1.5
	if c.names("job.start") && !c.Stated("job.start") {
		out = 4
	}
	return f + out*corner(c)
}

// hoursOut moves a time that is longer the warmer it is (sign 1) or the colder it is (sign -1) outward.
func hoursOut(c *Calc, v Value, sign float64) Value {
	at := sign * corner(c)
	out := func(h float64) float64 {
		if h >= window { // it does not come at all
			return h
		}
		return clamp(h*(1+0.08*at)+at, 0, window)
	}
	return Between(out(v.Low), out(v.Best), out(v.High))
}
