package figure

import "hearsay/internal/limit"

// stoneBounds leave open what holds the largest stone back: ends at which the smallest and a large stone fit.
var stoneBounds = []Bound{
	{Fact: "member.thickness", Lowest: 1.2, Highest: 36.0},
	{Fact: "member.narrowest_form", Lowest: 2.0, Highest: 60.0},
	{Fact: "metal.reinforced", Lowest: true, Highest: false},
	{Fact: "order.clear_bar_spacing", Lowest: 0.5, Highest: 24.0},
}

// aggregateFigures are those of the largest stone that fits.
func aggregateFigures() []Figure {
	where := []limit.Cite{{Source: "aci-211", Where: "section 6.3.2", Basis: limit.Published}}
	return []Figure{
		{
			Name: "stone_by_depth", Title: "largest aggregate by the depth of the slab", Unit: "in",
			Method: "a third of the depth", Cites: where,
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) { return Exact(share(c, "member.thickness", "order.depth_share")), nil }}},
		},
		{
			Name: "stone_by_wall", Title: "largest aggregate by the thickness of the wall", Unit: "in",
			Method: "a fifth of the thickness", Cites: where,
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) { return Exact(share(c, "member.thickness", "order.form_share")), nil }}},
		},
		{
			Name: "stone_by_form", Title: "largest aggregate by the narrowest form", Unit: "in",
			Method: "a fifth of the narrowest width between forms", Cites: where,
			Ways: []Way{{Needs: []string{"member.narrowest_form"}, Compute: func(c *Calc) (Value, error) {
				return Exact(share(c, "member.narrowest_form", "order.form_share")), nil
			}}},
		},
		{
			Name: "stone_by_bars", Title: "largest aggregate by the space between bars", Unit: "in",
			Method: "three quarters of the clear space between bars", Cites: where,
			Ways: []Way{{Needs: []string{"order.clear_bar_spacing"}, Compute: func(c *Calc) (Value, error) {
				v := c.Num("order.clear_bar_spacing") * c.Of("order.bar_share")
				c.Step("%g of %s = %s", c.Of("order.bar_share"), Q(c.Num("order.clear_bar_spacing"), "in"), Q(v, "in"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "largest_aggregate", Title: "largest aggregate that fits", Unit: "in",
			Method: "the least of a third of the depth of a slab, a fifth of the narrowest form and three quarters of the clear space between bars, down to a size that is sold", Cites: where,
			Ways: []Way{{Needs: []string{"member.kind"}, Sharpens: stoneBounds, Compute: largestAggregate}},
		},
	}
}

func share(c *Calc, fact, parts string) float64 {
	v := c.Num(fact) / c.Of(parts)
	c.Step("%s / %g = %s", Q(c.Num(fact), "in"), c.Of(parts), Q(v, "in"))
	return v
}

func largestAggregate(c *Calc) (Value, error) {
	var most float64
	var governs string
	switch c.Text("member.kind") {
	case "slab on ground", "suspended slab", "topping":
		most, governs = share(c, "member.thickness", "order.depth_share"), "the depth of the slab"
	case "wall":
		most, governs = share(c, "member.thickness", "order.form_share"), "the thickness of the wall"
	default:
		most, governs = share(c, "member.narrowest_form", "order.form_share"), "the narrowest form"
	}
	if c.Flag("metal.reinforced") {
		space := c.Num("order.clear_bar_spacing")
		byBars := space * c.Of("order.bar_share")
		c.Step("between bars: %g of %s = %s", c.Of("order.bar_share"), Q(space, "in"), Q(byBars, "in"))
		if byBars < most {
			most, governs = byBars, "the space between bars"
		}
	}
	sizes, err := c.Table("order.nominal_sizes")
	if err != nil {
		return Value{}, err
	}
	size := 0.0
	for _, s := range sizes {
		if s <= most+1e-9 && s > size {
			size = s
		}
	}
	if size == 0 {
		c.Step("%s governs: %s, less than the smallest size sold", governs, Q(most, "in"))
		return Exact(most), nil
	}
	c.Step("%s governs: at most %s, so %s stone", governs, Q(most, "in"), Q(size, "in"))
	return Exact(size), nil
}
