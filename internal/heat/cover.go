package heat

import "math"

// Need is the cover that keeps concrete from freezing until it is strong enough.
type Need struct {
	Possible bool    // false: no cover up to the thickest that was tried does it
	R        float64 // of the cover, m²·K/W; 0: none is needed
	Hours    float64 // for which it must stay, by the slowest method; 0 when none is needed
	Lowest   float64 // the lowest temperature with it until then, °C
}

// Job is a placement to find protection for.
type Job struct {
	Section Section
	Weather Weather
	Face    Face    // what the top meets without the cover that is looked for
	Far     Face    // the far face where there is no ground; it keeps its own cover
	Both    bool    // the far face is covered like the top, as of a wall
	Gain    Gain    // how strength grows
	Share   float64 // of the 28-day strength that stands one freeze
	Margin  float64 // K above the freezing point that a cover must keep until then
	Hours   float64 // longest time looked at; 0: a week
	Step    float64 // time step; 0: half an hour
	Cells   int     // through the concrete; 0: eight
}

const thickest = 6.0 // m²·K/W, about R-34

func (j Job) filled() Job {
	if j.Hours == 0 {
		j.Hours = 168
	}
	if j.Step == 0 {
		j.Step = 0.5
	}
	if j.Cells == 0 {
		j.Cells = 8
	}
	return j
}

// covered gives section and faces under a cover of so much R more than the faces have already. The edge is covered like
// the top.
func (j Job) covered(r float64) (s Section, face, far Face) {
	s, face, far = j.Section, j.Face, j.Far
	face.R += r
	if j.Both {
		far = face
	}
	if s.Edge != nil {
		s.Edge = &Edge{R: s.Edge.R + r}
	}
	return s, face, far
}

// With runs the placement under a cover of so much R, m²·K/W, for the whole time.
func (j Job) With(r float64) (*History, error) {
	j = j.filled()
	s, face, far := j.covered(r)
	return Run(s, j.Weather, []Change{{Top: face, Far: far}}, Span{Hours: j.Hours, Step: j.Step, Cells: j.Cells})
}

// safe tells whether every spot of a history is strong enough, by the slowest method, before it is too cold; hours is when
// the last of them is.
func (j Job) safe(h *History) (ok bool, hours float64) {
	for _, s := range h.Spots() {
		strong := j.Gain.HoursTo(j.Share, h.Hours, s.Celsius).High
		if crossing(h.Hours, s.Celsius, j.Section.Concrete.Freezing+j.Margin) < strong || strong > j.Hours {
			return false, math.Inf(1)
		}
		hours = math.Max(hours, strong)
	}
	return true, hours
}

// LeastCover finds the least R, to about 2 %, under which no spot comes down to the freezing point and its margin before
// it is strong enough. The error is that of Run.
func (j Job) LeastCover() (Need, error) {
	j = j.filled()
	try := func(r float64) (Need, error) {
		h, err := j.With(r)
		if err != nil {
			return Need{}, err
		}
		n := Need{R: r, Lowest: math.Inf(1)}
		n.Possible, n.Hours = j.safe(h)
		for _, s := range h.Spots() {
			for i, t := range s.Celsius {
				if h.Hours[i] <= n.Hours+1 {
					n.Lowest = math.Min(n.Lowest, t)
				}
			}
		}
		return n, nil
	}
	bare, err := try(0)
	if err != nil || bare.Possible {
		bare.Hours = 0
		return bare, err
	}
	best, err := try(thickest)
	if err != nil || !best.Possible {
		return best, err
	}
	for low, high := 0.02, thickest; high/low > 1.02; {
		n, err := try(math.Sqrt(low * high))
		if err != nil {
			return n, err
		}
		if n.Possible {
			best, high = n, n.R
		} else {
			low = n.R
		}
	}
	return best, nil
}
