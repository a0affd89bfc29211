package heat

import (
	"math"
)

// History is the temperature through time, °C, one entry for each of Hours.
type History struct {
	Hours               []float64
	Top, Middle, Bottom []float64 // the concrete at its top face, half-way and at its far face; empty for bare ground
	Edge                []float64 // the coldest of the strip along the edge; empty without one
	Ground              []float64 // the ground at its top; empty without one
	Thawed              []float64 // m of ground thawed from the top down; empty without ground
	Balance             Balance
}

// Balance is where the heat of a run came from and went, J/m² of face.
type Balance struct{ Stored, Top, Far, Hydration float64 }

// Error is the part of the heat that is not accounted for, over all that moved.
func (b Balance) Error() float64 {
	moved := math.Abs(b.Top) + math.Abs(b.Far) + math.Abs(b.Hydration) + math.Abs(b.Stored)
	if moved == 0 {
		return 0
	}
	return math.Abs(b.Stored-b.Top-b.Far-b.Hydration) / moved
}

// Run follows the temperature of a section through the weather. plan says what the faces meet, from hour 0 on, in order
// of time. The weather counts from the hour at which the concrete is placed.
//
// Heat flows in one dimension, by finite volumes and implicit steps: any step is stable and keeps the heat it is given.
// The error is where the section or the plan cannot be used.
func Run(s Section, w Weather, plan []Change, span Span) (*History, error) {
	span = span.filled()
	if err := check(s, plan, span); err != nil {
		return nil, err
	}
	r := &run{section: s, weather: w, plan: plan, main: newColumn(s, span.Cells)}
	if s.Edge != nil && s.Thickness > 0 {
		r.edge = newColumn(s, span.Cells)
		r.side = make([]bond, r.edge.n)
	}
	r.reserve(int(span.Hours/span.Every) + 2)
	before := r.main.content()
	r.meet(0)
	r.record(0)
	for t, next := 0.0, 1.0; t < span.Hours-1e-9; {
		mark := math.Min(next*span.Every, span.Hours)
		if c := r.following(t); c < mark {
			mark = c
		}
		steps := math.Ceil((mark-t)/span.Step - 1e-9)
		dt := (mark - t) / steps
		for i := 1.0; i <= steps; i++ {
			r.advance(t+i*dt, dt*3600)
		}
		t = mark
		r.meet(t)
		if t >= next*span.Every-1e-9 || t >= span.Hours-1e-9 {
			r.record(t)
			next++
		}
	}
	r.history.Balance.Stored = r.main.content() - before
	return &r.history, nil
}

type run struct {
	section    Section
	weather    Weather
	plan       []Change
	main, edge *column
	side       []bond
	top, far   Face
	history    History
}

// meet takes the faces of an hour from the plan.
func (r *run) meet(hour float64) {
	for _, c := range r.plan {
		if c.Hour <= hour+1e-9 {
			r.top, r.far = c.Top, c.Far
		}
	}
}

// following is the hour of the next change of the plan.
func (r *run) following(hour float64) float64 {
	for _, c := range r.plan {
		if c.Hour > hour+1e-9 {
			return c.Hour
		}
	}
	return math.Inf(1)
}

// advance goes on to an hour, dt seconds after the last.
func (r *run) advance(hour, dt float64) {
	h := r.weather.At(hour)
	celsius, resistance := r.top.outside(h)
	top := r.main.reach(0, celsius, resistance)
	bottom := r.below(r.main, h)
	in := r.main.step(&r.section.Concrete, dt, top, bottom, nil)
	r.history.Balance.Top += in[0]
	r.history.Balance.Far += in[1]
	r.history.Balance.Hydration += in[3]
	r.main.conduct(r.section)
	if r.edge != nil {
		r.couple(h)
		r.edge.step(&r.section.Concrete, dt, r.edge.reach(0, celsius, resistance), r.below(r.edge, h), r.side)
		r.edge.conduct(r.section)
	}
}

// reach is what the outermost cell i meets through a resistance.
func (c *column) reach(i int, celsius, resistance float64) outer {
	return outer{celsius, 1 / (resistance + c.dx[i]/(2*c.k[i]))}
}

func (r *run) below(c *column, h Hour) outer {
	if len(r.section.Ground) > 0 {
		return c.reach(c.n-1, c.deep, 0)
	}
	celsius, resistance := r.far.outside(h)
	return c.reach(c.n-1, celsius, resistance)
}
