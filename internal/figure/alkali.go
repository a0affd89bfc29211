package figure

import "hearsay/internal/limit"

// alkaliFigures weigh the alkalis in a yard.
func alkaliFigures() []Figure {
	return []Figure{{
		Name: "alkali_loading", Title: "alkali loading", Unit: "lb/yd3",
		Method: "portland cement in a yard times its alkali content (Na2O equivalent)",
		Cites:  []limit.Cite{{Source: "astm-c1778", Where: "alkali loading", Basis: limit.Memory}},
		Ways: []Way{{Needs: []string{"mix.portland", "mix.alkalis"}, Compute: func(c *Calc) (Value, error) { return loading(c, c.Num("mix.portland")) }},
			{Needs: []string{"mix.cementitious", "mix.alkalis", "figure.scm_share"}, Compute: func(c *Calc) (Value, error) {
				portland := c.Num("mix.cementitious") * (1 - c.Figure("scm_share").Best/100)
				c.Step("portland cement: %s less %s = %s", Q(c.Num("mix.cementitious"), "lb/yd3"), Q(c.Figure("scm_share").Best, "%"), Q(portland, "lb/yd3"))
				return loading(c, portland)
			}}},
	}}
}

func loading(c *Calc, portland float64) (Value, error) {
	v := portland * c.Num("mix.alkalis") / 100
	c.Step("%s x %s = %s", Q(portland, "lb/yd3"), Q(c.Num("mix.alkalis"), "%"), Q(v, "lb/yd3"))
	return Exact(v), nil
}
