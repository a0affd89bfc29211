package figure

import (
	"math"

	"hearsay/internal/limit"
)

// thicknessBound bounds what falls with the thickness of a section.
var thicknessBound = []Bound{{Fact: "member.thickness", Lowest: 240.0, Highest: 0.5}}

// coldFigures are those of placing and protecting in cold weather that need no run through time.
func coldFigures() []Figure {
	return []Figure{
		{
			Name: "coldest_air", Title: "lowest air temperature ahead", Unit: "F",
			Method: "the lowest hour of the forecast, or the overnight low; where one of air temperature and low is known, the other lies near it",
			Within: lowsApart,
			Ways:   []Way{forecastLow, statedLow, nearAir},
		},
		{
			Name: "least_placing_temperature", Title: "least temperature of the concrete as placed", Unit: "F",
			Method: "from a table by the least dimension of the section",
			Ways: []Way{{Sharpens: thicknessBound, Compute: func(c *Calc) (Value, error) {
				return byThickness(c, "cold.least_placing")
			}}},
		},
		{
			Name: "least_mixing_temperature", Title: "least temperature of the concrete as mixed", Unit: "F",
			Method: "from a table by the least dimension of the section and the air temperature",
			Ways:   []Way{{Needs: []string{"figure.coldest_air"}, Sharpens: thicknessBound, Compute: leastMixing}},
		},
		{
			Name: "largest_drop", Title: "largest fall of the surface temperature in the first day after protection", Unit: "dF",
			Method: "from a table by the least dimension of the section",
			Ways: []Way{{Sharpens: thicknessBound, Compute: func(c *Calc) (Value, error) {
				return byThickness(c, "cold.largest_drop")
			}}},
		},
		{
			Name: "planned_drop", Title: "fall of the surface temperature when the cover comes off", Unit: "dF",
			Method: "concrete temperature less air temperature: a surface uncovered at once comes near that of the air within a day",
			Within: noContradiction, // the air of an enclosure is not the concrete: no contradiction, but an answer must not hang on it
			Ways: []Way{
				{Needs: []string{"protection.slab_temperature", "protection.removal_outside"}, Compute: func(c *Calc) (Value, error) {
					return dropTo(c, c.Num("protection.slab_temperature")), nil
				}},
				{Needs: []string{"protection.enclosure_temperature", "protection.removal_outside"}, Compute: func(c *Calc) (Value, error) {
					c.Assume("the concrete is as warm as the enclosure")
					return dropTo(c, c.Num("protection.enclosure_temperature")), nil
				}},
			},
		},
		{
			Name: "coldest_removal", Title: "coldest air in which the cover may come off at once", Unit: "F",
			Method: "concrete temperature less the largest fall allowed in the first day",
			Ways: []Way{{Needs: []string{"protection.removal_outside", "figure.planned_drop", "figure.largest_drop"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("protection.removal_outside") + c.Figure("planned_drop").Best - c.Figure("largest_drop").Best), nil
			}}},
		},
		{
			Name: "strength_for_frosts", Title: "strength needed before frosts while wet", Unit: "psi",
			Method: "by whether deicing salt comes on it",
			Ways: []Way{{Sharpens: []Bound{{Fact: "exposure.salted", Lowest: false, Highest: true}}, Compute: func(c *Calc) (Value, error) {
				if c.Flag("exposure.salted") {
					return Exact(c.Of("cold.strength_for_salted_frosts")), nil
				}
				return Exact(c.Of("cold.strength_for_frosts")), nil
			}}},
		},
		{
			Name: "protection_days_needed", Title: "days of protection needed", Unit: "d",
			Method: "from a table by what the concrete must stand and whether it is accelerated",
			Cites:  []limit.Cite{{Source: "aci-306", Where: "table 5.3 (1988), table 7.1 (2010)", Basis: limit.Memory}},
			Ways: []Way{{
				Sharpens: daysBounds, Compute: protectionDays,
			}},
		},
		{
			Name: "protection_days_to_plan", Title: "days of protection to plan", Unit: "d",
			Method: "the days of protection needed, and no fewer than what comes out into frost needs at the least",
			Ways: []Way{{Needs: []string{"figure.protection_days_needed"}, Assumes: []string{"protection.removal_outside"}, Compute: func(c *Calc) (Value, error) {
				days := c.Figure("protection_days_needed").Best
				if c.NumOr("protection.removal_outside", 32) < 32 {
					days = math.Max(days, c.Of("cold.least_days_into_frost"))
				}
				return Exact(days), nil
			}}},
		},
	}
}

var daysBounds = []Bound{
	{Fact: "protection.service", Lowest: "no load not exposed", Highest: "partial load exposed"},
	{Fact: "mix.cement_type", Lowest: "III", Highest: "I"},
	{Fact: "cold.accelerator", Lowest: "calcium chloride", Highest: "none"},
}

// sectionClass names the class of a section by its least dimension.
func sectionClass(c *Calc) (string, error) {
	classes, err := c.Table("cold.section_classes")
	if err != nil {
		return "", err
	}
	d := c.Num("member.thickness")
	for _, name := range []string{"thin", "medium", "thick"} {
		if d < classes[name] {
			return name, nil
		}
	}
	return "massive", nil
}

// dropTo is the fall from a concrete temperature to that of the air outside.
func dropTo(c *Calc, slab float64) Value {
	air := c.Num("protection.removal_outside")
	c.Step("%s - %s = %s", Q(slab, "F"), Q(air, "F"), Q(slab-air, "dF"))
	return Exact(math.Max(0, slab-air))
}

func byThickness(c *Calc, table string) (Value, error) {
	class, err := sectionClass(c)
	if err != nil {
		return Value{}, err
	}
	c.Step("a section of %s is %s", Q(c.Num("member.thickness"), "in"), class)
	return Exact(c.Of(table, class)), nil
}

func leastMixing(c *Calc) (Value, error) {
	class, err := sectionClass(c)
	if err != nil {
		return Value{}, err
	}
	mild := c.Of("cold.mild_air")
	severe := c.Of("cold.severe_air")
	row, air := "cold", c.Figure("coldest_air").Best
	switch {
	case air > mild:
		row = "mild"
	case air < severe:
		row = "severe"
	}
	v, err := c.Limit("cold.least_mixing", row, class)
	c.Step("a section of %s is %s, air of %s %s", Q(c.Num("member.thickness"), "in"), class, Q(air, "F"), row)
	return Exact(v), err
}

// protectionDays reads the table. A member that takes its full load stays protected at least as long as one that takes a
// part of it.
func protectionDays(c *Calc) (Value, error) {
	service, pace := c.Text("protection.service"), "normal"
	if c.Text("mix.cement_type") == "III" || c.Text("cold.accelerator") != "none" {
		pace = "accelerated"
	}
	if service == "full load" {
		service = "partial load exposed"
		c.Step("a member that takes its full load stays protected at least as long as one that takes a part; then strength tests decide")
	}
	days := c.Of("cold.protection_days", service, pace)
	c.Step("%s, %s: %s", service, pace, Q(days, "d"))
	return Exact(days), nil
}
