package figure

import "hearsay/internal/limit"

// What a sprinkling that nobody measured is taken for, gal/100 ft²: a flick of the brush, and a hose.
const (
	leastSprinkled = 0.5
	mostSprinkled  = 2.0
)

// finishingFigures are those of the surface while it is finished.
func finishingFigures() []Figure {
	return []Figure{
		{
			Name: "surface_wcm", Title: "water-cement ratio of the surface with the water worked in", Unit: "",
			Method: "the water joins the mixing water of the layer that the tools work it into; its amount, where not stated, is taken as a range",
			Ways: []Way{{
				Needs:    []string{"figure.wcm", "figure.cementitious"},
				Sharpens: []Bound{{Fact: "finish.water_rate", Lowest: leastSprinkled, Highest: mostSprinkled}},
				Compute:  surfaceRatio,
			}},
		},
		{
			Name: "rain_before_set", Title: "number of rains before the concrete has set", Unit: "1",
			Method: "1 or 0: as stated, or by the hour of the rain against the time to final set",
			Cites:  []limit.Cite{{Source: "astm-c403", Where: "final set", Basis: limit.Practice}},
			Ways: []Way{
				{Needs: []string{"weather.rain"}, Compute: func(c *Calc) (Value, error) { return Exact(yes(c.Flag("weather.rain"))), nil }},
				{Needs: []string{"weather.rain_in", "figure.final_set_hours"}, Compute: func(c *Calc) (Value, error) {
					rain, set := c.Num("weather.rain_in"), c.Figure("final_set_hours").Best
					c.Step("rain after %s, final set after %s", Q(rain, "h"), Q(set, "h"))
					return Exact(yes(rain < set)), nil
				}},
			},
			Private: true,
		},
	}
}

func yes(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

func surfaceRatio(c *Calc) (Value, error) {
	gallon, err := c.Limit("water.gallon")
	if err != nil {
		return Value{}, err
	}
	depth, err := c.Limit("finish.worked_depth")
	if err != nil {
		return Value{}, err
	}
	rate, cement := c.Num("finish.water_rate"), c.Figure("cementitious").Best
	volume := 100 * depth / 12 / 27 // yd³ below 100 ft²
	more := rate * gallon / (cement * volume)
	ratio := c.Figure("wcm").Best + more
	c.Step("the top %s of {100 ft2} is %s and holds %s of cement", Q(depth, "in"), Q(volume, "yd3"), Q(cement*volume, "lb"))
	c.Step("w/cm there = %.2f + %s × %s × {100 ft2} / %s = %.2f", c.Figure("wcm").Best, Q(rate, "gal/100 ft2"), Q(gallon, "lb/gal"), Q(cement*volume, "lb"), ratio)
	c.Assume("the top layer holds as much cement as the concrete below")
	return Exact(ratio), nil
}
