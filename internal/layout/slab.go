package layout

import (
	"fmt"
	"math"
)

// Point is a place on a slab in feet: X along its length, Y across it, both from the corner at the lower left.
type Point struct{ X, Y float64 }

// Rect is a rectangle on a slab in feet, from its lower left corner to its upper right one.
type Rect struct{ X0, Y0, X1, Y1 float64 }

func (r Rect) holds(p Point) bool { return p.X > r.X0 && p.X < r.X1 && p.Y > r.Y0 && p.Y < r.Y1 }

// Slab is what a joint plan is made for.
type Slab struct {
	Length, Width float64 // ft, above 0
	Thickness     float64 // in, 0 where it is not to be shown
	Spacing       float64 // ft: the largest distance between joints, above 0
	Aspect        float64 // the largest length over width of a panel, at least 1
	JointDepth    float64 // in, 0 where it is not to be shown
	Openings      []Rect  // parts of the rectangle that are no slab; each inside corner they make gets a joint
	Columns       []Point // columns, each boxed out with a diamond and met by joints both ways
	Walls         bool    // the slab meets walls, so an isolation strip runs around it
}

// mostPanels is how many panels a plan may have along one side; more than that is a slip in a unit.
const mostPanels = 400

func (s Slab) check() error {
	for _, n := range []struct {
		name  string
		value float64
		least float64
	}{{"length", s.Length, 0}, {"width", s.Width, 0}, {"joint spacing", s.Spacing, 0}} {
		if !(n.value > n.least) || math.IsInf(n.value, 0) {
			return fmt.Errorf("the %s of the slab must be above 0: give it in feet", n.name)
		}
	}
	switch {
	case !(s.Aspect >= 1) || math.IsInf(s.Aspect, 0):
		return fmt.Errorf("the largest length over width of a panel must be 1 or more, such as 1.5")
	case !(s.Thickness >= 0) || !(s.JointDepth >= 0) || s.Thickness > 0 && s.JointDepth > s.Thickness:
		return fmt.Errorf("the joint depth lies between 0 and the thickness of the slab, in inches")
	case math.Max(s.Length, s.Width)/s.Spacing > mostPanels:
		return fmt.Errorf("joints every %g ft make more than %d panels in a row: check the units", s.Spacing, mostPanels)
	}
	for _, o := range s.Openings {
		if !(o.X0 >= 0 && o.X0 < o.X1 && o.X1 <= s.Length && o.Y0 >= 0 && o.Y0 < o.Y1 && o.Y1 <= s.Width) {
			return fmt.Errorf("the opening from %g, %g to %g, %g does not lie within the slab of %g ft by %g ft", o.X0, o.Y0, o.X1, o.Y1, s.Length, s.Width)
		}
	}
	for _, c := range s.Columns {
		if !(c.X >= 0 && c.X <= s.Length && c.Y >= 0 && c.Y <= s.Width) || !s.covers(c) {
			return fmt.Errorf("the column at %g, %g does not stand on the slab of %g ft by %g ft", c.X, c.Y, s.Length, s.Width)
		}
	}
	return nil
}

// covers says whether there is slab at a place.
func (s Slab) covers(p Point) bool {
	for _, o := range s.Openings {
		if o.holds(p) {
			return false
		}
	}
	return true
}
