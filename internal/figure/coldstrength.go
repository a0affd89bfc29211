package figure

import (
	"fmt"
	"math"
	"slices"

	"hearsay/internal/heat"
	"hearsay/internal/limit"
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

var curves = []limit.Cite{
	{Source: "aci-209", Where: "table 2.2.1, with the rate of ASTM C1074", Basis: limit.Memory},
	{Source: "carino", Where: "hyperbolic strength curve, with the rate of Freiesleben Hansen and Pedersen", Basis: limit.Memory},
	{Source: "en-1992", Where: "equations 3.2 and B.10", Basis: limit.Published},
	{Source: "schindler", Where: "heat of hydration", Basis: limit.Memory},
	{Source: "etl-365", Where: "equations A-2 and A-3, heat transfer to moving air", Basis: limit.Published},
}

const runMethod = "flow of heat through cover, concrete and ground by the hour, with heat of hydration"

// coldRunFigures are those that follow a placement in cold weather through time.
func coldRunFigures() []Figure {
	planned := slices.Concat(coldNeeds, []string{"protection.cover"})
	return []Figure{
		{
			Name: "hours_to_500", Title: "hours to 500 psi at the slab temperature predicted", Unit: "h",
			Method: runMethod + "; strength at the coldest place by three published pairs of curve and rate, and " +
				"{168 h} where it freezes before or a week does not bring it",
			Cites: curves,
			Ways:  []Way{{Needs: planned, Sharpens: slices.Concat(coldBounds, coverBounds, gainBounds), Assumes: coldAssumes, Compute: hoursTo500}},
		},
		{
			Name: "hours_to_500_plain", Title: "hours to 500 psi without the accelerator", Unit: "h",
			Method: "as the hours to 500 psi, without an accelerator",
			Cites:  curves,
			Ways:   []Way{{Needs: planned, Sharpens: slices.Concat(coldBounds, coverBounds, gainBounds[:2]), Assumes: coldAssumes, Compute: hoursTo500Plain}},
		},
		{
			Name: "freeze_hour", Title: "hour the uncovered surface reaches freezing", Unit: "h",
			Method: runMethod + "; {336 h}, twice the week that is followed, where it does not freeze",
			Cites:  curves[3:],
			Ways:   []Way{{Needs: coldNeeds, Sharpens: coldBounds, Assumes: coldAssumes, Compute: freezeHour}},
		},
		{
			Name: "lowest_surface", Title: "lowest temperature of the uncovered surface in three days", Unit: "F",
			Method: runMethod,
			Cites:  curves[3:],
			Ways:   []Way{{Needs: coldNeeds, Sharpens: coldBounds, Assumes: coldAssumes, Compute: lowestSurface}},
		},
		{
			Name: "lowest_with_cover", Title: "lowest slab temperature in three days with the cover planned", Unit: "F",
			Method: runMethod,
			Cites:  curves[3:],
			Ways:   []Way{{Needs: planned, Sharpens: slices.Concat(coldBounds, coverBounds), Assumes: coldAssumes, Compute: lowestWithCover}},
		},
		{
			Name: "strength_when_cover_comes_off", Title: "strength when the cover comes off", Unit: "psi",
			Method: runMethod + "; strength at the coldest place by three published pairs of curve and rate",
			Cites:  curves,
			Ways: []Way{{
				Needs:    slices.Concat(planned, []string{"protection.days", "order.strength"}),
				Sharpens: slices.Concat(coldBounds, coverBounds, gainBounds[1:]), Assumes: coldAssumes, Compute: strengthThen,
			}},
		},
	}
}

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
	h, _, err := plannedRun(c)
	if err != nil {
		return Value{}, err
	}
	g, err := gain(c, accelerated)
	if err != nil {
		return Value{}, err
	}
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
	at := func(f float64) float64 {
		// At an end of the unknown facts it freezes a little sooner or later: a night can pass by a fraction of a degree.
		freeze := (&heat.History{Hours: h.Hours, Top: h.Top}).Freeze(celsius(f - 1.5*corner(c)))
		return math.Min(freeze.Hour, never)
	}
	v := Between(at(points["first"]), at(points["usual"]), at(points["last"]))
	if v.Best == never {
		c.Step("the surface does not come down to %s within %s", Q(points["usual"], "F"), Q(window, "h"))
	} else {
		c.Step("the surface comes down to %s, where ice first forms, after %s", Q(points["usual"], "F"), Q(v.Best, "h"))
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
	return Exact(degreesOut(c, fahrenheit(lowest(h.Hours, h.Top)))), nil
}

func lowestWithCover(c *Calc) (Value, error) {
	h, _, err := plannedRun(c)
	if err != nil {
		return Value{}, err
	}
	sayCourse(c, h)
	low := math.Inf(1)
	for _, s := range h.Spots() {
		low = math.Min(low, lowest(h.Hours, s.Celsius))
	}
	return Exact(degreesOut(c, fahrenheit(low))), nil
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
