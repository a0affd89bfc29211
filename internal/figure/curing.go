package figure

import (
	"math"

	"hearsay/internal/limit"
)

// curingFigures are those of keeping concrete moist and warm: strength with and without, days, and water.
func curingFigures() []Figure {
	return append(append(compoundFigures(), areaFigure()), []Figure{
		{
			Name: "strength_share_without_curing", Title: "share of strength reached without curing", Unit: "%",
			Method: "as three sources give it, each against its own full strength",
			Ways: []Way{{Compute: func(c *Calc) (Value, error) {
				var share [3]float64
				for i, name := range []string{"least_share_in_air", "share_in_air", "most_share_in_air"} {
					v, err := c.Limit("cure." + name)
					if err != nil {
						return Value{}, err
					}
					share[i] = v
				}
				c.Step("dried in air from the start: %s, %s or %s by source", Q(share[0], "%"), Q(share[1], "%"), Q(share[2], "%"))
				return Between(share[0], share[1], share[2]), nil
			}}},
		},
		{
			Name: "strength_share_at_days", Title: "share of design strength reached with so many days of moist curing", Unit: "%",
			Method: "two published series of strength by days of moist curing, straight between their days",
			Ways:   []Way{{Needs: []string{"cure.days"}, Compute: func(c *Calc) (Value, error) { return shareAt(c, c.Num("cure.days")) }}},
		},
		{
			Name: "strength_share_at_days_needed", Title: "share of design strength reached with the days of moist curing needed", Unit: "%",
			Method: "two published series of strength by days of moist curing, straight between their days",
			Ways: []Way{{Needs: []string{"figure.curing_days_needed"}, Compute: func(c *Calc) (Value, error) {
				return shareAt(c, c.Figure("curing_days_needed").Best)
			}}},
		},
		{
			Name: "curing_days_needed", Title: "days of curing needed", Unit: "d",
			Method: "days for the type of cement; below the temperature they hold for, a third more for every ten degrees",
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "mix.cement_type", Lowest: "III", Highest: "V"}, {Fact: "cure.temperature", Lowest: 100.0, Highest: coldestCuring}},
				Compute:  curingDays,
			}},
		},
		{
			Name: "water_lost_before_curing", Title: "water lost before curing starts", Unit: "lb/ft2",
			Method: "evaporation times the hours until curing starts",
			Ways: []Way{{Needs: []string{"figure.evaporation", "cure.delay"}, Compute: func(c *Calc) (Value, error) {
				e, h := c.Figure("evaporation"), c.Num("cure.delay")
				c.Step("%s × %s = %s", Q(e.Best, "lb/ft2/h"), Q(h, "h"), Q(e.Best*h, "lb/ft2"))
				c.Assume("the surface stays as wet as bleed water all the while; once it pales it loses less")
				return Between(e.Low*h, e.Best*h, e.High*h), nil
			}}},
		},
		{
			Name: "latest_curing", Title: "latest start of curing after final finishing", Unit: "h",
			Method: "the hours in which as much water evaporates as a curing membrane may let through in three days, and no more than the longest wait",
			Ways:   []Way{{Needs: []string{"figure.evaporation"}, Compute: latestCuring}},
		},
		{
			Name: "curing_water_difference", Title: "concrete temperature less that of the curing water", Unit: "dF",
			Method: "the two temperatures stated",
			Ways: []Way{{Needs: []string{"cure.surface_temperature", "cure.water_temperature"}, Compute: func(c *Calc) (Value, error) {
				concrete, water := c.Num("cure.surface_temperature"), c.Num("cure.water_temperature")
				c.Step("%s - %s = %s", Q(concrete, "F"), Q(water, "F"), Q(concrete-water, "dF"))
				return Exact(concrete - water), nil
			}}},
			Cites: []limit.Cite{{Source: "aci-308", Where: "curing water", Edition: "308R-01", Basis: limit.Memory}},
		},
		{
			Name: "coldest_curing_water", Title: "coldest curing water for this concrete", Unit: "F",
			Method: "concrete temperature less the largest difference, and never frozen",
			Ways: []Way{{Needs: []string{"cure.surface_temperature"}, Compute: func(c *Calc) (Value, error) {
				most, err := c.Limit("cure.most_water_difference")
				return Exact(math.Max(32, c.Num("cure.surface_temperature")-most)), err
			}}},
		},
	}...)
}

func shareAt(c *Calc, days float64) (Value, error) {
	var share [2]float64
	for i, name := range []string{"share_by_days", "share_by_days_older"} {
		table, err := c.Table("cure." + name)
		if err != nil {
			return Value{}, err
		}
		if share[i], err = heldAlong(table, days, "of moist curing", "d"); err != nil {
			return Value{}, err
		}
	}
	c.Step("%s of moist curing: %s in one series, %s in the other", Q(days, "d"), Q(share[0], "%"), Q(share[1], "%"))
	c.Assume("moist curing at an ordinary temperature, with air drying afterwards")
	return Between(math.Min(share[0], share[1]), share[0], math.Max(share[0], share[1])), nil
}

// coldestCuring is the temperature at which hydration is taken to go no slower, °F: below it concrete is protected, not
// cured.
const coldestCuring = 32.0

func curingDays(c *Calc) (Value, error) {
	kind, t := c.Text("mix.cement_type"), c.Num("cure.temperature")
	days, err := c.Limit("cure.days_by_cement", kind)
	if err != nil {
		return Value{}, err
	}
	warm, err := c.Limit("cure.warm_enough")
	if err != nil {
		return Value{}, err
	}
	slower, err := c.Limit("cure.slower_in_ten_degrees")
	if err != nil {
		return Value{}, err
	}
	c.Step("cement of type %s: %s at %s or warmer", kind, Q(days, "d"), Q(warm, "F"))
	if t < warm {
		factor := math.Pow(slower, (warm-math.Max(t, coldestCuring))/10)
		days *= factor
		c.Step("at %s it hardens %.2f times as slowly: %s", Q(t, "F"), factor, Q(days, "d"))
	}
	whole := math.Ceil(days - 1e-9)
	if whole > days {
		c.Step("in whole days: %s", Q(whole, "d"))
	}
	return Exact(whole), nil
}

func latestCuring(c *Calc) (Value, error) {
	loss, err := c.Limit("cure.most_loss")
	if err != nil {
		return Value{}, err
	}
	longest, err := c.Limit("cure.longest_delay")
	if err != nil {
		return Value{}, err
	}
	e := c.Figure("evaporation").Best
	if e*longest <= loss {
		c.Step("it dries so slowly that the longest wait of %s decides", Q(longest, "h"))
		return Exact(longest), nil
	}
	c.Step("%s / %s = %s", Q(loss, "lb/ft2"), Q(e, "lb/ft2/h"), Q(loss/e, "h"))
	return Exact(loss / e), nil
}

// heldAlong interpolates a table straight between its rows and keeps the first and the last value beyond them.
func heldAlong(table map[string]float64, at float64, what, unit string) (float64, error) {
	rows, err := rowsOf(table)
	if err != nil {
		return 0, err
	}
	return along(table, math.Min(math.Max(at, rows[0].key), rows[len(rows)-1].key), what, unit)
}
