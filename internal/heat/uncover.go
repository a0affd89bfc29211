package heat

import "math"

// Removal is how protection comes off.
type Removal struct {
	Possible bool    // false: not within the time looked at
	Hour     float64 // from which on it may come off
	Drop     float64 // of the surface in the day after, K
	Strength Range   // share of the 28-day strength at the coldest spot then
}

// Uncovered runs the placement under a cover of so much R, m²·K/W, up to an hour, and without it for two days more.
func (j Job) Uncovered(r, hour float64) (*History, error) {
	j = j.filled()
	s, face, far := j.covered(r)
	_, bare, bareFar := j.covered(0)
	bare.Kind = Outdoors
	if hour <= 0 {
		face, far = bare, bareFar
	}
	plan := []Change{{Top: face, Far: far}}
	if hour > 0 {
		plan = append(plan, Change{Hour: hour, Top: bare, Far: bareFar})
	}
	return Run(s, j.Weather, plan, Span{Hours: hour + 48, Step: j.Step, Cells: j.Cells})
}

// FirstRemoval finds the first hour, not before least and in steps of six hours, at which the cover of so much R may come
// off all at once: the share of strength is reached by the slowest method, and the surface falls no more than
// allowed K in the day after. The error is that of Run.
func (j Job) FirstRemoval(r, least, allowed float64) (Removal, error) {
	j = j.filled()
	whole, err := j.With(r)
	if err != nil {
		return Removal{}, err
	}
	// Under the cover it is no stronger any sooner than this; only the fall has to be tried hour by hour.
	strong := math.Floor(whole.HoursTo(j.Share, j.Gain).High/6) * 6
	for hour := max(least, strong, 6); hour <= j.Hours; hour += 6 {
		h, err := j.Uncovered(r, hour)
		if err != nil {
			return Removal{}, err
		}
		out := Removal{Hour: hour, Drop: h.Drop(hour, 24), Strength: j.StrengthAt(h, hour)}
		if out.Strength.Low >= j.Share && out.Drop <= allowed {
			out.Possible = true
			return out, nil
		}
	}
	return Removal{}, nil
}

// StrengthAt is the share of strength at the weakest spot at an hour.
func (j Job) StrengthAt(h *History, hour float64) Range {
	weakest := Range{math.Inf(1), math.Inf(1), math.Inf(1)}
	for _, s := range h.Spots() {
		var hours, celsius []float64
		for i := range h.Hours {
			if h.Hours[i] < hour {
				hours, celsius = append(hours, h.Hours[i]), append(celsius, s.Celsius[i])
			}
		}
		hours, celsius = append(hours, hour), append(celsius, At(h.Hours, s.Celsius, hour))
		r := j.Gain.Share(hours, celsius)
		weakest = Range{math.Min(weakest.Low, r.Low), math.Min(weakest.Best, r.Best), math.Min(weakest.High, r.High)}
	}
	return weakest
}
