package figure

import "hearsay/internal/limit"

// ratioByMass is where the water-cement ratio is defined.
var ratioByMass = []limit.Cite{{Source: "concrete-construction", Where: "Water in concrete", Basis: limit.Published}}

// mixFigures are those of cement, water and their ratio.
func mixFigures() []Figure {
	return []Figure{
		{
			Name: "cementitious", Title: "cementitious material in a yard", Unit: "lb/yd3",
			Method: "cement and supplementary cementitious materials added up", Cites: ratioByMass,
			Ways: []Way{
				{Needs: []string{"mix.cementitious"}, Compute: func(c *Calc) (Value, error) {
					return Exact(c.Num("mix.cementitious")), nil
				}},
				{Needs: []string{"mix.portland", "mix.fly_ash", "mix.slag", "mix.silica_fume"}, Compute: func(c *Calc) (Value, error) {
					sum := c.Num("mix.portland") + c.Num("mix.fly_ash") + c.Num("mix.slag") + c.Num("mix.silica_fume")
					c.Step("cement + fly ash + slag + silica fume = %s", Q(sum, "lb/yd3"))
					return Exact(sum), nil
				}},
			},
		},
		{
			Name: "wcm", Title: "water-cement ratio of the mix", Unit: "",
			Method: "mixing water divided by cementitious material, by mass", Cites: ratioByMass,
			Ways: []Way{
				{Needs: []string{"mix.wcm"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("mix.wcm")), nil }},
				{Needs: []string{"mix.water", "figure.cementitious"}, Compute: func(c *Calc) (Value, error) {
					w, b := c.Num("mix.water"), c.Figure("cementitious").Best
					c.Step("w/cm = %s / %s = %.3f", Q(w, "lb/yd3"), Q(b, "lb/yd3"), w/b)
					return Exact(w / b), nil
				}},
			},
		},
		{
			Name: "wcm_after_water", Title: "water-cement ratio after the water added at the site", Unit: "",
			Method: "the added water joins the mixing water of the whole load", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.wcm", "figure.cementitious", "water.added", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				return raised(c, c.Num("water.added"), c.Num("load.volume")), nil
			}}},
		},
		{
			Name: "wcm_of_rest", Title: "water-cement ratio of what was left in the drum", Unit: "",
			Method: "all of the added water joins the part of the load that was not yet discharged", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.wcm", "figure.cementitious", "water.added", "load.volume", "water.discharged"}, Compute: func(c *Calc) (Value, error) {
				left, err := leftInDrum(c)
				if err != nil {
					return Value{}, err
				}
				c.Step("left in the drum: %s - %s = %s", Q(c.Num("load.volume"), "yd3"), Q(c.Num("water.discharged"), "yd3"), Q(left, "yd3"))
				return raised(c, c.Num("water.added"), left), nil
			}}},
		},
		{
			Name: "wcm_with_wash", Title: "water-cement ratio with the wash water in the drum", Unit: "",
			Method: "the wash water joins the mixing water of the whole load", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.wcm", "figure.cementitious", "water.wash", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				return raised(c, c.Num("water.wash"), c.Num("load.volume")), nil
			}}},
		},
	}
}

// raised gives the ratio of the mix after so many gallons went into so many yards of it.
func raised(c *Calc, gallons, yards float64) Value {
	wcm, cement := c.Figure("wcm").Best, c.Figure("cementitious").Best
	gallon := c.Of("water.gallon")
	more := gallons * gallon / yards
	after := wcm + more/cement
	c.Step("water in a yard: %s x %s / %s = %s", Q(gallons, "gal"), Q(gallon, "lb/gal"), Q(yards, "yd3"), Q(more, "lb/yd3"))
	c.Step("w/cm = %.3f + %s / %s = %.3f", wcm, Q(more, "lb/yd3"), Q(cement, "lb/yd3"), after)
	return Exact(after)
}
