package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
)

// What the cover planned and the strength ordered add to the needs of a run.
var (
	coverBounds = []Bound{
		{Fact: "protection.r_value", Lowest: 0.0, Highest: mostCover, Apart: true}, // it keeps warm, and it keeps the day out
		{Fact: "protection.enclosure_temperature", Lowest: 30.0, Highest: 90.0},
	}
	gainBounds = []Bound{
		{Fact: "order.strength", Lowest: weakest, Highest: strongest},
		{Fact: "mix.cement_type", Lowest: "IV", Highest: "III"},
		{Fact: "cold.accelerator", Lowest: "none", Highest: "calcium chloride"},
	}
)

const (
	mostCover = 30.0   // R
	weakest   = 2500.0 // psi
	strongest = 6000.0 // psi
	never     = 2 * window
)

// gain is how the concrete of the order gains strength. accelerated says whether its accelerator counts.
func gain(c *Calc, accelerated bool) (heat.Gain, error) {
	g := heat.Gain{Early: heat.Ordinary}
	switch c.Text("mix.cement_type") {
	case "III":
		g.Early = heat.Rapid
	case "IV", "V", "blended":
		g.Early = heat.Slow
	}
	freezing, err := c.Limit("cold.freezing_point", "usual")
	g.Freezing = celsius(freezing)
	if err == nil && accelerated && c.Text("cold.accelerator") != "none" {
		g.Speed, err = c.Limit("cold.accelerated_speed")
		c.Step("the accelerator makes the first strength %.1f times as fast", g.Speed)
	}
	return g, err
}

// plannedRun runs the placement under the cover that is planned.
func plannedRun(c *Calc) (*heat.History, site, error) {
	j, err := placement(c)
	if err != nil {
		return nil, j, err
	}
	r := 0.0
	switch cover := c.Text("protection.cover"); cover {
	case "none":
		c.Step("no cover")
	case "enclosure":
		t := clamp(c.Num("protection.enclosure_temperature"), 30, 90)
		j.Face.Kind, j.Face.Sky, j.Face.Celsius = heat.Enclosed, 0, celsius(t)
		c.Step("an enclosure kept at %s", Q(t, "F"))
	default:
		r = clamp(c.Num("protection.r_value"), 0, mostCover)
		c.Step("a cover of %s", Q(r, "R"))
	}
	h, err := j.under(c, r)
	return h, j, err
}

// sayCourse adds the temperatures through the first days to the working.
func sayCourse(c *Calc, h *heat.History) {
	for _, hour := range []float64{12, 24, 48, 72} {
		low := math.Inf(1)
		for _, s := range h.Spots() {
			low = math.Min(low, heat.At(h.Hours, s.Celsius, hour))
		}
		c.Step("after %s: coldest place %s, top %s", Q(hour, "h"), Q(fahrenheit(low), "F"), Q(fahrenheit(heat.At(h.Hours, h.Top, hour)), "F"))
	}
}

func hoursTo500(c *Calc) (Value, error)      { return timeTo500(c, true) }
func hoursTo500Plain(c *Calc) (Value, error) { return timeTo500(c, false) }

func timeTo500(c *Calc, accelerated bool) (Value, error) {
	h, j, err := plannedRun(c)
	if err != nil {
		return Value{}, err
	}
	g, err := gain(c, accelerated)
	if err != nil {
		return Value{}, err
	}
	j.Gain = g
	drawStrength(c, j, h)
	share, err := safeShare(c)
	if err != nil {
		return Value{}, err
	}
	sayCourse(c, h)
	frozen := h.Freeze(g.Freezing).Hour + corner(c) // at an end of the unknown facts an hour sooner or later
	until := func(hours float64) float64 {
		if hours > frozen || hours > window {
			return window
		}
		return hours
	}
	r := h.HoursTo(share, g)
	v := Between(until(r.Low), until(r.Best), until(r.High))
	c.Step("by the quickest of the three methods after %s, by the slowest after %s%s", Q(v.Low, "h"), Q(v.High, "h"), orLater(v.High, frozen))
	return hoursOut(c, v, -1), nil
}

// drawStrength draws the strength at the coldest place by the hour, from the slowest of the methods to the quickest.
func drawStrength(c *Calc, j site, h *heat.History) {
	if !c.Draws() {
		return
	}
	ordered := clamp(c.Num("order.strength"), weakest, strongest)
	var hours, low, high []float64
	for hour := 0.0; hour <= drawn; hour += 3 {
		share := j.StrengthAt(h, hour)
		hours, low, high = append(hours, hour), append(low, share.Low*ordered), append(high, share.High*ordered)
	}
	c.DrawBetween("strength at the coldest place", "psi", "h", hours, low, high)
}

func orLater(hours, frozen float64) string {
	switch {
	case hours < window:
		return ""
	case frozen < window:
		return fmt.Sprintf(" or not at all, since it freezes after %s", Q(frozen, "h"))
	}
	return " or not at all"
}

// safeShare is the strength that stands one freeze over the strength ordered.
func safeShare(c *Calc) (float64, error) {
	safe, err := c.Limit("cold.safe_strength")
	strength := clamp(c.Num("order.strength"), weakest, strongest)
	c.Step("%s is %.0f %% of the 28-day strength, taken as the %s ordered", Q(safe, "psi"), 100*safe/strength, Q(strength, "psi"))
	return safe / strength, err
}

func strengthThen(c *Calc) (Value, error) {
	h, j, err := plannedRun(c)
	if err != nil {
		return Value{}, err
	}
	g, err := gain(c, true)
	if err != nil {
		return Value{}, err
	}
	j.Gain = g
	hour, strength := 24*c.Num("protection.days"), clamp(c.Num("order.strength"), weakest, strongest)
	share := j.StrengthAt(h, hour)
	sayCourse(c, h)
	c.Step("after %s: %.0f %% (%.0f to %.0f %%) of %s", Q(hour, "h"), 100*share.Best, 100*share.Low, 100*share.High, Q(strength, "psi"))
	if hour > window {
		c.Assume("from the seventh day on the slab keeps its temperature")
	}
	return Between(share.Low*strength, share.Best*strength, share.High*strength), nil
}
