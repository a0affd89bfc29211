package layout

import (
	"fmt"
	"math"
	"slices"
)

// Plan is a slab divided into panels.
type Plan struct {
	Slab   Slab
	Across []float64 // ft from the left: the joints that run across the length
	Along  []float64 // ft from the bottom: the joints that run along it
	Panels []Rect
	Notes  []string // what the division could not do, with quantities in braces ({3 ft})
}

// New divides a slab into panels. Joints run through every inside corner and every column, and between these the slab is
// divided evenly so that no stretch is longer than the spacing; then further, where that brings panels closer to square,
// until each is within the largest length over width. It fails on lengths that make no slab.
func New(s Slab) (Plan, error) {
	if err := s.check(); err != nil {
		return Plan{}, err
	}
	p := Plan{Slab: s}
	var xs, ys []float64
	for _, o := range s.Openings {
		xs, ys = append(xs, o.X0, o.X1), append(ys, o.Y0, o.Y1)
	}
	x, y := p.bays(s.Length, xs, columns(s, Point.x)), p.bays(s.Width, ys, columns(s, Point.y))
	p.square(x, y)
	p.Across, p.Along = joints(x), joints(y)
	p.panels()
	p.noteAspect()
	if len(p.Panels) == 0 {
		return Plan{}, fmt.Errorf("the openings leave nothing of the slab")
	}
	return p, nil
}

func (p Point) x() float64 { return p.X }
func (p Point) y() float64 { return p.Y }

func columns(s Slab, side func(Point) float64) []float64 {
	var at []float64
	for _, c := range s.Columns {
		at = append(at, side(c))
	}
	return at
}

// bay is a stretch between two lines that must be, divided evenly.
type bay struct {
	from, to float64
	parts    int
}

func (b bay) part() float64 { return (b.to - b.from) / float64(b.parts) }

// narrow is how close in feet a column may stand to another line before its own joint would leave a sliver.
const narrow = 2.0

// bays finds the lines that must be, and divides what lies between them so that no part is longer than the spacing.
func (p *Plan) bays(length float64, corners, columns []float64) []bay {
	lines := []float64{0, length}
	for _, at := range corners {
		if at > 0 && at < length {
			lines = append(lines, at)
		}
	}
	for _, at := range columns {
		near := slices.ContainsFunc(lines, func(l float64) bool { return l != at && math.Abs(l-at) < narrow })
		switch {
		case near && at > 0 && at < length:
			p.note("A column stands within {%g ft} of an edge or a joint: turn its box-out so that the joint meets a corner of it", narrow)
		case !near:
			lines = append(lines, at)
		}
	}
	slices.Sort(lines)
	lines = slices.Compact(lines)
	bays := make([]bay, 0, len(lines))
	for i := 1; i < len(lines); i++ {
		bays = append(bays, bay{lines[i-1], lines[i], parts(lines[i]-lines[i-1], p.Slab.Spacing)})
	}
	return bays
}

func (p *Plan) note(format string, args ...any) {
	if note := fmt.Sprintf(format, args...); !slices.Contains(p.Notes, note) {
		p.Notes = append(p.Notes, note)
	}
}

// joints lists the lines inside a row of bays.
func joints(bays []bay) []float64 {
	var at []float64
	for i, b := range bays {
		if i > 0 {
			at = append(at, b.from)
		}
		for k := 1; k < b.parts; k++ {
			at = append(at, b.from+b.part()*float64(k))
		}
	}
	return at
}

// panels cuts the slab along all joints.
func (p *Plan) panels() {
	xs, ys := p.lines()
	for j := 1; j < len(ys); j++ {
		for i := 1; i < len(xs); i++ {
			r := Rect{xs[i-1], ys[j-1], xs[i], ys[j]}
			if p.Slab.covers(r.middle()) {
				p.Panels = append(p.Panels, r)
			}
		}
	}
}

func (r Rect) middle() Point { return Point{(r.X0 + r.X1) / 2, (r.Y0 + r.Y1) / 2} }

// lines gives the joints with the edges of the slab on both sides.
func (p *Plan) lines() (xs, ys []float64) {
	return edged(p.Across, p.Slab.Length), edged(p.Along, p.Slab.Width)
}

func edged(joints []float64, length float64) []float64 {
	return append(append([]float64{0}, joints...), length)
}

func (p *Plan) noteAspect() {
	worst, at := 0.0, Rect{}
	for _, r := range p.Panels {
		if a := ratio(r.X1-r.X0, r.Y1-r.Y0); a > worst {
			worst, at = a, r
		}
	}
	if worst > p.Slab.Aspect*(1+1e-9) {
		p.note("A panel of {%.4g ft} × {%.4g ft} is too long for its width: corners and columns force it; lay two or three bars across its middle, or move what forces it",
			at.X1-at.X0, at.Y1-at.Y0)
	}
}
