package figure

import "math"

// Course is how something goes through time, or along something else, to be drawn. Where facts are unknown it is the room
// between the ends.
type Course struct {
	Name      string // "top of the slab"
	Unit      string // of what is drawn
	Along     string // unit of X
	X         []float64
	Low, High []float64 // the same where everything is known
}

// Drawn computes a figure with its courses, which no judgement needs.
func (s *Sheet) Drawn(name string) *Result {
	drawing := s.set.Sheet(s.facts)
	drawing.memory, drawing.draws = s.memory, true
	return drawing.Result(name)
}

// Draws says whether courses are wanted.
func (c *Calc) Draws() bool { return c.sheet.draws }

// Draw adds a course to the result.
func (c *Calc) Draw(name, unit, along string, x, y []float64) {
	c.DrawBetween(name, unit, along, x, y, y)
}

// DrawBetween adds a course that lies between two lines.
func (c *Calc) DrawBetween(name, unit, along string, x, low, high []float64) {
	c.courses = append(c.courses, Course{Name: name, Unit: unit, Along: along, X: x, Low: low, High: high})
}

// spread widens courses by those of another end. Courses that the other end does not have stay as they are.
func spread(courses, end []Course) []Course {
	if courses == nil {
		return end
	}
	for i := range courses {
		c := &courses[i]
		if i >= len(end) || end[i].Name != c.Name || len(end[i].X) != len(c.X) {
			continue
		}
		low, high := make([]float64, len(c.X)), make([]float64, len(c.X))
		for k := range c.X {
			low[k], high[k] = math.Min(c.Low[k], end[i].Low[k]), math.Max(c.High[k], end[i].High[k])
		}
		c.Low, c.High = low, high
	}
	return courses
}
