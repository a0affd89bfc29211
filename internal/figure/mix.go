package figure

import "hearsay/internal/limit"

// mixFigures are those of cement, water and their ratio.
func mixFigures() []Figure {
	return []Figure{
		{
			Name: "cementitious", Title: "cementitious material in a yard", Unit: "lb/yd3",
			Method: "cement and supplementary cementitious materials added up",
			Cites:  []limit.Cite{{Source: "concrete-construction", Where: "Water in concrete", Basis: limit.Published}},
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
			Method: "mixing water divided by cementitious material, by mass",
			Cites:  []limit.Cite{{Source: "concrete-construction", Where: "Water in concrete", Basis: limit.Published}},
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
			Method: "the added water joins the mixing water of the load",
			Ways: []Way{{Needs: []string{"figure.wcm", "figure.cementitious", "water.added", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				gallon, err := c.Limit("water.gallon")
				if err != nil {
					return Value{}, err
				}
				more := c.Num("water.added") * gallon / c.Num("load.volume")
				after := c.Figure("wcm").Best + more/c.Figure("cementitious").Best
				c.Step("added: %s x %s / %s = %s", Q(c.Num("water.added"), "gal"), Q(gallon, "lb/gal"), Q(c.Num("load.volume"), "yd3"), Q(more, "lb/yd3"))
				c.Step("w/cm = %.3f + %s / %s = %.3f", c.Figure("wcm").Best, Q(more, "lb/yd3"), Q(c.Figure("cementitious").Best, "lb/yd3"), after)
				return Exact(after), nil
			}}},
		},
	}
}
