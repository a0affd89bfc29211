package figure

import (
	"fmt"

	"hearsay/internal/limit"
)

// groundFigures are those of frost and of ground colder than the concrete.
func groundFigures() []Figure {
	frost := []limit.Cite{
		{Source: "tm-5-852-6", Where: "modified Berggren formula and Neumann's solution", Basis: limit.Published},
		{Source: "kersten", Where: "conductivity of soil", Basis: limit.Memory},
	}
	moisture := []Bound{{Fact: "ground.moisture", Lowest: 0.0, Highest: 100.0}}
	return []Figure{
		{
			Name: "frost_remaining", Title: "frost left in the ground", Unit: "in",
			Method: "depth of frost less the depth thawed from the top",
			Ways: []Way{{Needs: []string{"ground.frost_depth"}, Assumes: []string{"ground.thawed_depth"}, Compute: func(c *Calc) (Value, error) {
				return Exact(frostLeft(c)), nil
			}}},
		},
		{
			Name: "frost_depth_expected", Title: "frost depth to expect from the winter so far", Unit: "in",
			Method: "modified Berggren formula; half to nine tenths of the air's freezing index reaches the surface, 0.7 of it bare soil",
			Cites:  frost,
			Ways:   []Way{{Needs: []string{"ground.freezing_index", "ground.soil"}, Sharpens: moisture, Compute: frostExpected}},
		},
		{
			Name: "thaw_hours_needed", Title: "hours of thawing still needed by the method named", Unit: "h",
			Method: "Neumann's solution from a surface held warm, or the heat that comes through the air or up from deep ground, against the heat that melts the ice",
			Cites:  frost,
			Ways: []Way{{Needs: []string{"figure.frost_remaining", "ground.soil", "ground.thaw_method"}, Sharpens: moisture,
				Assumes: []string{"ground.thawed_depth"}, Compute: thawHours}},
		},
		{
			Name: "least_ground_temperature", Title: "least temperature of the ground", Unit: "F",
			Method: "least placing temperature of the section less how much colder the ground may be",
			Ways: []Way{{Needs: []string{"figure.least_placing_temperature"}, Compute: func(c *Calc) (Value, error) {
				less := c.Of("ground.colder_than_least")
				least := c.Figure("least_placing_temperature").Best
				c.Step("%s - %s = %s", Q(least, "F"), Q(less, "dF"), Q(least-less, "F"))
				return Exact(least - less), nil
			}}},
		},
		{
			Name: "ground_difference", Title: "concrete temperature less ground temperature", Unit: "dF",
			Method: "the one less the other",
			Ways: []Way{{Needs: []string{"load.temperature", "ground.temperature"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("load.temperature") - c.Num("ground.temperature")), nil
			}}},
		},
		{
			Name: "bottom_temperature", Title: "temperature at the bottom of the slab after six hours", Unit: "F",
			Method: runMethod + ", the top covered",
			Cites:  curves[3:],
			Ways:   []Way{{Needs: bottomNeeds, Compute: bottomTemperature}},
		},
		{
			Name: "set_delay", Title: "delay of set at the bottom by the cold ground", Unit: "h",
			Method: "setting goes on at the temperature of the bottom hour by hour, at the pace of the table of setting times; the time less that at the temperature placed",
			Cites:  curves[3:],
			Ways:   []Way{{Needs: bottomNeeds, Compute: setDelay}},
		},
		{
			Name: "wcm_with_ground_water", Title: "water-cement ratio with the standing water mixed in", Unit: "",
			Method: "the water standing in the forms spread over the depth of the slab and added to its mixing water",
			Ways:   []Way{{Needs: []string{"ground.standing_water", "member.thickness", "figure.wcm", "figure.cementitious"}, Compute: withGroundWater}},
		},
		{
			Name: "ground_water", Title: "water standing in the forms or the trench", Unit: "gal",
			Method: "area times the depth of the water", Cites: takeOff,
			Ways: []Way{{Needs: []string{"ground.standing_water", "figure.area"}, Compute: func(c *Calc) (Value, error) {
				deep, area := c.Num("ground.standing_water"), c.Figure("area").Best
				const gallons = 7.48 // in a cubic foot
				v := area * deep / 12 * gallons
				c.Step("%s × %s = %s", Q(area, "ft2"), Q(deep, "in"), Q(v, "gal"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "fall_needed", Title: "least fall over this length", Unit: "in",
			Method: "least fall in each foot times the length",
			Ways: []Way{{Needs: []string{"member.length"}, Compute: func(c *Calc) (Value, error) {
				least := c.Of("ground.least_fall")
				c.Step("%s × %s", Q(least, "in/ft"), Q(c.Num("member.length"), "ft"))
				return Exact(least * c.Num("member.length")), nil
			}}},
		},
		{
			Name: "fall_planned", Title: "fall planned over this length", Unit: "in",
			Method: "fall in each foot times the length",
			Ways: []Way{{Needs: []string{"member.length", "member.fall"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("member.fall") * c.Num("member.length")), nil
			}}},
		},
	}
}

var bottomNeeds = []string{"member.thickness", "load.temperature", "ground.temperature"}

func withGroundWater(c *Calc) (Value, error) {
	water, depth := c.Num("ground.standing_water"), c.Num("member.thickness")
	wcm, cement := c.Figure("wcm").Best, c.Figure("cementitious").Best
	const poundsInYard = 62.4 * 27
	if water >= depth {
		return Value{}, fmt.Errorf("the water stands as deep as the slab is thick: pump it out")
	}
	more := poundsInYard * water / (depth - water)
	c.Step("%s of water under %s of concrete = %s", Q(water, "in"), Q(depth-water, "in"), Q(more, "lb/yd3"))
	c.Step("w/cm = %.3f + %s / %s = %.3f", wcm, Q(more, "lb/yd3"), Q(cement, "lb/yd3"), wcm+more/cement)
	over := poundsInYard * water / depth
	c.Step("where as much concrete goes in as the forms hold, and some runs over: %.3f + %s / %s = %.3f", wcm, Q(over, "lb/yd3"), Q(cement, "lb/yd3"), wcm+over/cement)
	return Between(wcm+over/cement, wcm+more/cement, wcm+more/cement), nil
}
