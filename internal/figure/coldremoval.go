package figure

import (
	"fmt"
	"math"
	"slices"

	"hearsay/internal/heat"
)

// coldRemovalFigures are those of taking the cover off, and of what the concrete must stand after that.
func coldRemovalFigures() []Figure {
	planned := slices.Concat(coldNeeds, []string{"protection.cover"})
	return []Figure{
		{
			Name: "uncover_hour", Title: "hour from which the cover may come off all at once", Unit: "h",
			Method: runMethod + ", up to each sixth hour under the cover and then bare: the first at which it has the days of protection it needs and 500 psi by the slowest of three methods, and falls no further in the day after than its section may",
			Cites:  curves,
			Within: noContradiction,
			Ways:   coldWays(slices.Concat(planned, []string{"figure.protection_days_to_plan", "figure.largest_drop"}), slices.Concat(coverBounds, gainBounds), uncoverHour),
		},
		{
			Name: "uncover_drop", Title: "fall of the surface in the day after the cover comes off as planned", Unit: "dF",
			Method: runMethod + ", under the cover for the days planned and then bare; the largest fall of top, bottom and edge",
			Cites:  curves[3:],
			Within: noContradiction,
			Ways:   coldWays(slices.Concat(planned, []string{"protection.days"}), coverBounds, uncoverDrop),
		},
		{
			Name: "hours_to_frost_strength", Title: "hours to the strength for frosts while wet, under the cover planned", Unit: "h",
			Method: runMethod + "; strength at the coldest place by three published pairs of curve and rate, the temperature after a week going on",
			Cites:  curves,
			Within: noContradiction,
			Ways:   coldWays(slices.Concat(planned, []string{"figure.strength_for_frosts", "order.strength"}), slices.Concat(coverBounds, gainBounds[1:]), hoursToFrostStrength),
		},
		{
			Name: "temperature_to_load", Title: "temperature to leave the plant at, to arrive no colder than it may be placed", Unit: "F",
			Method: "least placing temperature and what a turning drum loses on the way: a quarter of the difference to the air for each hour",
			Cites:  deliveryLoss,
			Ways: []Way{{Needs: []string{"figure.least_placing_temperature", "load.haul", "weather.air"}, Compute: func(c *Calc) (Value, error) {
				return Exact(leaving(c, c.Figure("least_placing_temperature").Best)), nil
			}}},
		},
	}
}

// covered is the placement under its cover, ready to be uncovered.
func covered(c *Calc) (j site, r float64, err error) {
	if c.Text("protection.cover") == "none" {
		return j, 0, fmt.Errorf("there is no cover to come off: plan one first")
	}
	_, j, err = plannedRun(c)
	if c.Text("protection.cover") != "enclosure" {
		r = clamp(c.Num("protection.r_value"), 0, mostCover) * rsi
	}
	return j, r, err
}

func uncoverHour(c *Calc) (Value, error) {
	j, r, err := covered(c)
	if err != nil {
		return Value{}, err
	}
	if j.Gain, err = gain(c, true); err != nil {
		return Value{}, err
	}
	if j.Share, err = safeShare(c); err != nil {
		return Value{}, err
	}
	least, drop := 24*c.Figure("protection_days_to_plan").Best, c.Figure("largest_drop").Best
	key := fmt.Sprintf("uncover %s %+v %+v %g %g %g %g", j.key, j.Face, j.Gain, j.Share, r, least, drop)
	v, err := c.remember(key, func() (any, error) { return j.FirstRemoval(r, least, drop/1.8) })
	out, _ := v.(heat.Removal)
	switch {
	case err != nil:
		return Value{}, err
	case !out.Possible:
		return Value{}, fmt.Errorf("it cannot come off all at once within %s: take it off step by step, no more than %s in a day", Q(window, "h"), Q(drop, "dF"))
	}
	strength := clamp(c.Num("order.strength"), weakest, strongest)
	c.Step("no sooner than %s; after %s it has %s (at least %s), and falls %s in the day after, of %s allowed",
		Q(least, "h"), Q(out.Hour, "h"), Q(out.Strength.Best*strength, "psi"), Q(out.Strength.Low*strength, "psi"), Q(out.Drop*1.8, "dF"), Q(drop, "dF"))
	return hoursOut(c, Exact(out.Hour), -1), nil
}

func uncoverDrop(c *Calc) (Value, error) {
	j, r, err := covered(c)
	if err != nil {
		return Value{}, err
	}
	hour := 24 * c.Num("protection.days")
	if hour > window {
		hour = window
		c.Assume("from the seventh day on the slab keeps its temperature")
	}
	key := fmt.Sprintf("drop %s %+v %g %g", j.key, j.Face, r, hour)
	v, err := c.remember(key, func() (any, error) { return j.Uncovered(r, hour) })
	if err != nil {
		return Value{}, err
	}
	fall := 1.8 * v.(*heat.History).Drop(hour, 24)
	c.Step("uncovered after %s it falls %s within a day", Q(hour, "h"), Q(fall, "dF"))
	return Exact(fall), nil
}

func hoursToFrostStrength(c *Calc) (Value, error) {
	h, _, err := plannedRun(c)
	if err != nil {
		return Value{}, err
	}
	g, err := gain(c, true)
	if err != nil {
		return Value{}, err
	}
	needed, ordered := c.Figure("strength_for_frosts").Best, c.Num("order.strength")
	v := h.HoursTo(needed/ordered, g)
	c.Step("%s is %.0f %% of the %s ordered", Q(needed, "psi"), 100*needed/ordered, Q(ordered, "psi"))
	if math.IsInf(v.High, 1) || v.High > 90*24 {
		return Value{}, fmt.Errorf("concrete of %s does not surely come to %s within %s at this temperature: order a stronger one, or keep it warmer", Q(ordered, "psi"), Q(needed, "psi"), Q(90, "d"))
	}
	c.Step("by the quickest of the three methods after %s, by the slowest after %s", Q(v.Low, "h"), Q(v.High, "h"))
	return Between(v.Low, v.Best, v.High), nil
}

// leaving is the temperature in °F at which concrete must leave the plant to arrive at another.
func leaving(c *Calc, arriving float64) float64 {
	hours, air := c.Num("load.haul")/60, c.Num("weather.air")
	lost := 1.8 * heat.DeliveryLoss(celsius(arriving), celsius(air), hours)
	c.Step("on a way of %s through air of %s it loses 0.25 × %s × %.2f = %s", Q(c.Num("load.haul"), "min"), Q(air, "F"), Q(math.Max(0, arriving-air), "dF"), hours, Q(lost, "dF"))
	return arriving + lost
}
