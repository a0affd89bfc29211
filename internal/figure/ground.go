package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
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

func frostLeft(c *Calc) float64 {
	depth, thawed := c.Num("ground.frost_depth"), c.NumOr("ground.thawed_depth", 0)
	left := math.Max(0, depth-thawed)
	c.Step("%s - %s = %s", Q(depth, "in"), Q(thawed, "in"), Q(left, "in"))
	return left
}

// soil is the ground named, with its moisture held to what such ground can hold.
func soil(c *Calc) heat.Soil {
	kind := c.Text("ground.soil")
	of := func(key string) float64 { return c.Of("ground.soils", kind, key) }
	density := of("density")
	grain := heat.Coarse
	if kind == "silt" || kind == "clay" {
		grain = heat.Fine
	}
	w := clamp(c.Num("ground.moisture"), of("least"), of("most"))
	c.Step("%s of %s and %s of water", kind, Q(density, "lb/ft3"), Q(w, "%"))
	return heat.Kersten(grain, density*kgPerFt3, w/100)
}

const kgPerFt3 = 16.018463 // kg/m³ in a lb/ft³

func frostExpected(c *Calc) (Value, error) {
	s := soil(c)
	const season, mean = 100.0, 50.0 // days and °F, usual where such winters are
	c.Assume("a season of %s so far and a mean annual temperature of %s", Q(season, "d"), Q(mean, "F"))
	index := c.Num("ground.freezing_index")
	depth := func(share float64) float64 {
		if index == 0 {
			return 0
		}
		d, _ := heat.Berggren(s, share*index/1.8, season, celsius(mean))
		return d / meter
	}
	v := Between(depth(0.5), depth(0.7), depth(0.9))
	c.Step("with 0.5, 0.7 and 0.9 of %s at the surface: %s, %s and %s", Q(index, "F·d"), Q(v.Low, "in"), Q(v.Best, "in"), Q(v.High, "in"))
	return v, nil
}

func thawHours(c *Calc) (Value, error) {
	left := c.Figure("frost_remaining").Best * meter
	s := soil(c)
	c.Step("ice in %s of it takes %s to melt", Q(left/meter, "in"), Q(s.LatentHeat()*left/btuPerFt2, "Btu/ft2"))
	method := c.Text("ground.thaw_method")
	above := c.NumOr("ground.thawed_depth", 0) * meter // already thawed, which the heat must cross
	var hours float64
	switch method {
	case "hydronic heater":
		surface := c.Of("ground.thawing_surface", method)
		hours = heat.ThawHours(s, celsius(surface), 0, above+left) - heat.ThawHours(s, celsius(surface), 0, above)
		c.Step("the hoses hold the surface at %s", Q(surface, "F"))
	case "hot air":
		air := c.Of("ground.thawing_air", method)
		film := 1 / heat.Film(0)
		hours = heat.ThawHoursThrough(s, celsius(air), film, above+left) - heat.ThawHoursThrough(s, celsius(air), film, above)
		c.Step("air of %s gives its heat through a still film", Q(air, "F"))
	case "blankets":
		deep, err := c.Table("ground.deep_ground")
		if err != nil {
			return Value{}, err
		}
		depth, t := deep["depth"]*12*meter, celsius(deep["temperature"])
		flux := s.Thawed * t / math.Max(depth-above-left, depth/4)
		hours = s.LatentHeat() * left / flux / 3600
		c.Step("under blankets only the heat of deep ground, %s at %s down, comes up", Q(deep["temperature"], "F"), Q(deep["depth"], "ft"))
	case "none":
		return Value{}, fmt.Errorf("nothing thaws the ground: name a method, such as a hydronic heater under blankets")
	default:
		return Value{}, fmt.Errorf("how long %s takes to thaw ground is not known: use a hydronic heater under blankets, or hot air under a tarp", map[string]string{"salt": "salt", "straw": "a fire"}[method])
	}
	return Exact(math.Ceil(hours)), nil
}

const btuPerFt2 = 11356.53 // J/m² in a Btu/ft²

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
	return Exact(wcm + more/cement), nil
}
