package figure

import "hearsay/internal/limit"

// yieldFigures are those of the volume delivered, from the unit weight measured.
func yieldFigures() []Figure {
	c138 := []limit.Cite{{Source: "astm-c138", Where: "yield, relative yield, cement content", Basis: limit.Published}}
	recipe := []string{"figure.cementitious", "mix.water", "mix.fine_aggregate", "mix.coarse_aggregate"}
	return []Figure{
		{
			Name: "yard_weight", Title: "weight of what is batched for a yard", Unit: "lb/yd3",
			Method: "all ingredients of a yard added up, or the batch weight of the load divided by its yards", Cites: c138,
			Ways: []Way{
				{Needs: []string{"load.weight", "load.volume"}, Compute: func(c *Calc) (Value, error) {
					v := c.Num("load.weight") / c.Num("load.volume")
					c.Step("%s / %s = %s", Q(c.Num("load.weight"), "lb"), Q(c.Num("load.volume"), "yd3"), Q(v, "lb/yd3"))
					return Exact(v), nil
				}},
				{Needs: recipe, Compute: func(c *Calc) (Value, error) {
					v := c.Figure("cementitious").Best + c.Num("mix.water") + c.Num("mix.fine_aggregate") + c.Num("mix.coarse_aggregate")
					c.Step("cement + water + sand + stone = %s", Q(v, "lb/yd3"))
					return Exact(v), nil
				}},
			},
		},
		{
			Name: "relative_yield", Title: "relative yield", Unit: "",
			Method: "volume that the batch fills by its unit weight, divided by the volume it was batched for", Cites: c138,
			Ways: []Way{{Needs: []string{"figure.yard_weight", "mix.density"}, Compute: func(c *Calc) (Value, error) {
				fills := c.Figure("yard_weight").Best / c.Num("mix.density")
				v := fills / c.Of("mix.yard")
				c.Step("%s / %s = %s", Q(c.Figure("yard_weight").Best, "lb"), Q(c.Num("mix.density"), "lb/ft3"), Q(fills, "ft3"))
				c.Step("%s / %s = %.3f", Q(fills, "ft3"), Q(c.Of("mix.yard"), "ft3"), v)
				return Exact(v), nil
			}}},
		},
		{
			Name: "unit_weight_for_yield", Title: "unit weight at which the batch fills what it was batched for", Unit: "lb/ft3",
			Method: "weight batched for a yard divided by its cubic feet", Cites: c138,
			Ways: []Way{{Needs: []string{"figure.yard_weight"}, Compute: func(c *Calc) (Value, error) {
				v := c.Figure("yard_weight").Best / c.Of("mix.yard")
				c.Step("%s / %s = %s", Q(c.Figure("yard_weight").Best, "lb"), Q(c.Of("mix.yard"), "ft3"), Q(v, "lb/ft3"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "yield", Title: "volume delivered", Unit: "yd3",
			Method: "volume on the ticket times the relative yield", Cites: c138,
			Ways: []Way{{Needs: []string{"load.volume", "figure.relative_yield"}, Compute: func(c *Calc) (Value, error) {
				v := c.Num("load.volume") * c.Figure("relative_yield").Best
				c.Step("%s x %.3f = %s", Q(c.Num("load.volume"), "yd3"), c.Figure("relative_yield").Best, Q(v, "yd3"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "cement_delivered", Title: "cementitious material in a yard as delivered", Unit: "lb/yd3",
			Method: "cementitious material batched for a yard divided by the relative yield", Cites: c138,
			Ways: []Way{{Needs: []string{"figure.cementitious", "figure.relative_yield"}, Compute: func(c *Calc) (Value, error) {
				v := c.Figure("cementitious").Best / c.Figure("relative_yield").Best
				c.Step("%s / %.3f = %s", Q(c.Figure("cementitious").Best, "lb/yd3"), c.Figure("relative_yield").Best, Q(v, "lb/yd3"))
				return Exact(v), nil
			}}},
		},
	}
}
