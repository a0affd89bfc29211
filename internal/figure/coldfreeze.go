package figure

import (
	"math"

	"hearsay/internal/heat"
)

func freezeHour(c *Calc) (Value, error) {
	j, err := placement(c)
	if err != nil {
		return Value{}, err
	}
	points, err := c.Table("cold.freezing_point")
	if err != nil {
		return Value{}, err
	}
	h, err := j.under(c, 0)
	if err != nil {
		return Value{}, err
	}
	sayCourse(c, h)
	at := func(f float64) heat.Freeze {
		// At an end of the unknown facts it freezes a little sooner or later: a night can pass by a fraction of a degree.
		freeze := h.Freeze(celsius(f - 1.5*corner(c)))
		freeze.Hour = math.Min(max(0, freeze.Hour+startUnknown(c)), never)
		return freeze
	}
	usual := at(points["usual"])
	v := Between(at(points["first"]).Hour, usual.Hour, at(points["last"]).Hour)
	if v.Best == never {
		c.Step("no place of it comes down to %s within %s", Q(points["usual"], "F"), Q(window, "h"))
	} else {
		c.Step("the %s comes down to %s first, where ice forms, after %s", placeOf(c, usual.Where), Q(points["usual"], "F"), Q(v.Best, "h"))
	}
	return hoursOut(c, v, 1), nil
}

func lowestSurface(c *Calc) (Value, error) {
	j, err := placement(c)
	if err != nil {
		return Value{}, err
	}
	h, err := j.under(c, 0)
	if err != nil {
		return Value{}, err
	}
	sayCourse(c, h)
	drawSlab(c, h)
	return Exact(degreesOut(c, fahrenheit(math.Min(lowest(h.Hours, h.Top), lowest(h.Hours, h.Edge))))), nil
}

func lowestWithCover(c *Calc) (Value, error) {
	h, _, err := plannedRun(c)
	if err != nil {
		return Value{}, err
	}
	sayCourse(c, h)
	drawSlab(c, h)
	low := math.Inf(1)
	for _, s := range h.Spots() {
		low = math.Min(low, lowest(h.Hours, s.Celsius))
	}
	return Exact(degreesOut(c, fahrenheit(low))), nil
}

// placeOf names a place in a section: what is cast upright has faces and an end where a slab has a top, a bottom and an edge.
func placeOf(c *Calc, place string) string {
	kind := c.Text("member.kind")
	if onGround(kind) || kind == "suspended slab" {
		return place
	}
	return map[string]string{"top": "face", "middle": "middle", "bottom": "other face", "edge": "end"}[place]
}

// drawn is how far a course is drawn, h.
const drawn = 96

// drawSlab draws the temperatures of a slab by the hour.
func drawSlab(c *Calc, h *heat.History) {
	if !c.Draws() {
		return
	}
	for _, place := range []struct {
		name    string
		celsius []float64
	}{{"top", h.Top}, {"middle", h.Middle}, {"bottom", h.Bottom}, {"edge", h.Edge}} {
		var hours, degrees []float64
		for i, t := range place.celsius {
			if h.Hours[i] <= drawn {
				hours, degrees = append(hours, h.Hours[i]), append(degrees, fahrenheit(t))
			}
		}
		c.Draw(placeOf(c, place.name), "F", "h", hours, degrees)
	}
}

// lowest is the lowest temperature of a record in the first days.
func lowest(hours, celsius []float64) float64 {
	low := math.Inf(1)
	for i, t := range celsius {
		if hours[i] <= firstDays {
			low = math.Min(low, t)
		}
	}
	return low
}
