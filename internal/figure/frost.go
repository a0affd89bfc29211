package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
)

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
