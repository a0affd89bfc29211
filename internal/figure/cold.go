package figure

import (
	"fmt"
	"math"

	"hearsay/internal/limit"
)

// coldFigures are those of placing and protecting in cold weather that need no run through time.
func coldFigures() []Figure {
	return []Figure{
		{
			Name: "coldest_air", Title: "lowest air temperature ahead", Unit: "F",
			Method: "the overnight low, or the lowest hour of the forecast in the first three days",
			Within: 10, // a forecast and somebody's low differ
			Ways: []Way{
				{Needs: []string{"weather.low"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("weather.low")), nil }},
				{Needs: []string{"weather.forecast"}, Compute: coldestHour},
			},
		},
		{
			Name: "least_placing_temperature", Title: "least temperature of the concrete as placed", Unit: "F",
			Method: "from a table by the least dimension of the section",
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) {
				return byThickness(c, "cold.least_placing")
			}}},
		},
		{
			Name: "least_mixing_temperature", Title: "least temperature of the concrete as mixed", Unit: "F",
			Method: "from a table by the least dimension of the section and the air temperature",
			Ways:   []Way{{Needs: []string{"member.thickness", "figure.coldest_air"}, Compute: leastMixing}},
		},
		{
			Name: "largest_drop", Title: "largest fall of the surface temperature in the first day after protection", Unit: "dF",
			Method: "from a table by the least dimension of the section",
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) {
				return byThickness(c, "cold.largest_drop")
			}}},
		},
		{
			Name: "planned_drop", Title: "fall of the surface temperature when the cover comes off", Unit: "dF",
			Method: "concrete temperature less air temperature: a surface uncovered at once comes near that of the air within a day",
			Ways: []Way{{Needs: []string{"protection.slab_temperature", "protection.removal_outside"}, Compute: func(c *Calc) (Value, error) {
				slab, air := c.Num("protection.slab_temperature"), c.Num("protection.removal_outside")
				c.Step("%s - %s = %s", Q(slab, "F"), Q(air, "F"), Q(slab-air, "dF"))
				return Exact(math.Max(0, slab-air)), nil
			}}},
		},
		{
			Name: "coldest_removal", Title: "coldest air in which the cover may come off at once", Unit: "F",
			Method: "concrete temperature less the largest fall allowed in the first day",
			Ways: []Way{{Needs: []string{"protection.slab_temperature", "figure.largest_drop"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("protection.slab_temperature") - c.Figure("largest_drop").Best), nil
			}}},
		},
		{
			Name: "protection_days_needed", Title: "days of protection needed", Unit: "d",
			Method: "from a table by what the concrete must stand and whether it is accelerated",
			Cites:  []limit.Cite{{Source: "aci-306", Where: "table 5.3 (1988), table 7.1 (2010)", Basis: limit.Memory}},
			Ways: []Way{{
				Needs: []string{"protection.service"},
				Sharpens: []Bound{
					{Fact: "mix.cement_type", Lowest: "III", Highest: "II"},
					{Fact: "cold.accelerator", Lowest: "calcium chloride", Highest: "none"},
				},
				Compute: protectionDays,
			}},
		},
	}
}

// firstDays is how long a forecast is looked through for its coldest hour, h.
const firstDays = 72

func coldestHour(c *Calc) (Value, error) {
	low, at := math.Inf(1), 0.0
	for _, row := range c.Series("weather.forecast") {
		if air, ok := row["air"]; ok && row["hour"] <= firstDays && air < low {
			low, at = air, row["hour"]
		}
	}
	if math.IsInf(low, 1) {
		return Value{}, fmt.Errorf("the forecast has no air temperature: give the column air for every hour")
	}
	c.Step("coldest at hour %.3g of the forecast: %s", at, Q(low, "F"))
	return Exact(low), nil
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

func byThickness(c *Calc, table string) (Value, error) {
	class, err := sectionClass(c)
	if err != nil {
		return Value{}, err
	}
	v, err := c.Limit(table, class)
	c.Step("a section of %s is %s", Q(c.Num("member.thickness"), "in"), class)
	return Exact(v), err
}

func leastMixing(c *Calc) (Value, error) {
	class, err := sectionClass(c)
	if err != nil {
		return Value{}, err
	}
	mild, err := c.Limit("cold.mild_air")
	if err != nil {
		return Value{}, err
	}
	severe, err := c.Limit("cold.severe_air")
	if err != nil {
		return Value{}, err
	}
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

func protectionDays(c *Calc) (Value, error) {
	service, cement := c.Text("protection.service"), c.Text("mix.cement_type")
	if service == "full load" {
		days, err := c.Limit("cold.days_to_full_strength", cement)
		c.Step("a member that takes its full load stays protected until it has its strength: Type %s at {50 F} takes %s", cement, Q(days, "d"))
		c.Assume("strength tests of field-cured specimens may end it sooner")
		return Exact(days), err
	}
	pace := "normal"
	if cement == "III" || c.Text("cold.accelerator") != "none" {
		pace = "accelerated"
	}
	days, err := c.Limit("cold.protection_days", service, pace)
	c.Step("%s, %s: %s", service, pace, Q(days, "d"))
	return Exact(days), err
}
