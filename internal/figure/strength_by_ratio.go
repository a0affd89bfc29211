package figure

import "math"

// airBound leaves open whether the concrete is air-entrained.
var airBound = Bound{Fact: "order.entrained_air", Lowest: true, Highest: false, Apart: true}

// ratioFigures are those of strength by the water-cement ratio, and back.
func ratioFigures() []Figure {
	return []Figure{
		{
			Name: "strength_at_ratio", Title: "strength at 28 days that the water-cement ratio gives", Unit: "psi",
			Method: "average strength by water-cement ratio, interpolated in the table",
			Ways: []Way{{Needs: []string{"figure.wcm"}, Sharpens: []Bound{airBound}, Compute: func(c *Calc) (Value, error) {
				return strengthAt(c, c.Figure("wcm").Best)
			}}},
		},
		{
			Name: "strength_after_water", Title: "strength at 28 days that the ratio after the water gives", Unit: "psi",
			Method: "average strength by water-cement ratio, interpolated in the table",
			Ways: []Way{{Needs: []string{"figure.wcm_after_water"}, Sharpens: []Bound{airBound}, Compute: func(c *Calc) (Value, error) {
				return strengthAt(c, c.Figure("wcm_after_water").Best)
			}}},
		},
		strengthDrop("strength_lost_by_ratio", "strength lost by the water added, by the change of ratio", "wcm_after_water"),
		strengthDrop("moisture_strength", "strength that the moisture takes", "wcm_uncorrected"),
		{
			Name: "ratio_for_strength", Title: "water-cement ratio for the strength ordered", Unit: "",
			Method: "water-cement ratio by strength, interpolated in the table, the strength taken as the average wanted",
			Ways: []Way{{Needs: []string{"order.strength"}, Sharpens: []Bound{airBound}, Compute: func(c *Calc) (Value, error) {
				ratio, err := ratioFor(c, c.Num("order.strength"), c.Flag("order.entrained_air"))
				return Exact(ratio), err
			}}},
		},
		{
			Name: "wcm_from_bags", Title: "water-cement ratio that the cement ordered may get", Unit: "",
			Method: "mixing water for the slump, the aggregate and the air, from rounded gravel to angular stone, divided by the cement", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.cementitious", "figure.water_for_slump"}, Compute: func(c *Calc) (Value, error) {
				cement, water := c.Figure("cementitious").Best, c.Figure("water_for_slump")
				c.Step("w/cm = %s / %s = %.2f to %s / %s = %.2f", Q(water.Low, "lb/yd3"), Q(cement, "lb/yd3"), water.Low/cement, Q(water.High, "lb/yd3"), Q(cement, "lb/yd3"), water.High/cement)
				return Between(water.Low/cement, water.Best/cement, water.High/cement), nil
			}}},
		},
		{
			Name: "strength_from_bags", Title: "strength at 28 days that the cement ordered may give", Unit: "psi",
			Method: "strength by the water-cement ratio, at both ends of ordinary water; past the end of the table the strength falls on at its last rate, and above it counts as its first row",
			Ways:   []Way{{Needs: []string{"figure.wcm_from_bags"}, Sharpens: []Bound{airBound}, Compute: strengthFromBags}},
		},
	}
}

func airKey(entrained bool) string {
	if entrained {
		return "entrained"
	}
	return "plain"
}

func airWords(entrained bool) string {
	if entrained {
		return "air-entrained"
	}
	return "not air-entrained"
}

// strengthDrop is the strength at the ratio of the mix less that at a wetter one.
func strengthDrop(name, title, wetter string) Figure {
	return Figure{Name: name, Title: title, Unit: "psi", Method: "strength at the ratio of the mix less strength at the ratio with the water, both by the table of strength and ratio",
		Ways: []Way{{Needs: []string{"figure.wcm", "figure." + wetter}, Sharpens: []Bound{airBound}, Compute: func(c *Calc) (Value, error) {
			before, err := strengthAt(c, c.Figure("wcm").Best)
			if err != nil {
				return Value{}, err
			}
			after, err := strengthAt(c, c.Figure(wetter).Best)
			if err != nil {
				return Value{}, err
			}
			c.Step("%s - %s = %s", Q(before.Best, "psi"), Q(after.Best, "psi"), Q(before.Best-after.Best, "psi"))
			return Exact(before.Best - after.Best), nil
		}}}}
}

// strengthAt reads the table of strength at a ratio. Before its first row it fails; after its last the strength falls on at
// the last rate, which is then said.
func strengthAt(c *Calc, wcm float64) (Value, error) {
	air := c.Flag("order.entrained_air")
	table, err := c.Table("mix.strength_by_ratio", airKey(air))
	if err != nil {
		return Value{}, err
	}
	rows, err := rowsOf(table)
	if err != nil {
		return Value{}, err
	}
	if last := rows[len(rows)-1]; wcm > last.key {
		c.Assume("the table of strength ends at w/cm %.2f: past it the strength falls on at its last rate", last.key)
	} else if _, err := along(table, wcm, "of water-cement ratio", ""); err != nil {
		return Value{}, err
	}
	psi := carriedOn(rows, wcm)
	c.Step("at w/cm %.3f, %s: %s", wcm, airWords(air), Q(psi, "psi"))
	return Exact(psi), nil
}

// ratioFor reads the strength table the other way.
func ratioFor(c *Calc, psi float64, air bool) (float64, error) {
	table, err := c.Table("mix.strength_by_ratio", airKey(air))
	if err != nil {
		return 0, err
	}
	if table, err = turned(table); err != nil {
		return 0, err
	}
	ratio, err := along(table, psi, "of strength", "psi")
	if err != nil {
		return 0, err
	}
	c.Step("for %s, %s: w/cm %.3f", Q(psi, "psi"), airWords(air), ratio)
	return ratio, nil
}

func strengthFromBags(c *Calc) (Value, error) {
	wcm := c.Figure("wcm_from_bags")
	air := c.Flag("order.entrained_air")
	table, err := c.Table("mix.strength_by_ratio", airKey(air))
	if err != nil {
		return Value{}, err
	}
	rows, err := rowsOf(table)
	if err != nil {
		return Value{}, err
	}
	c.Assume("the table is that of portland cement concrete kept moist; a break at one plant can differ")
	v := Between(carriedOn(rows, wcm.High), carriedOn(rows, wcm.Best), carriedOn(rows, wcm.Low))
	c.Step("%s: w/cm %.2f gives %s, w/cm %.2f gives %s", airWords(air), wcm.Low, Q(v.High, "psi"), wcm.High, Q(v.Low, "psi"))
	return v, nil
}

// carriedOn reads a strength off the table; before its first row the first counts, since more is not known, and after its
// last the strength falls on by the same share for each hundredth of the ratio as between the last two.
func carriedOn(rows []row, wcm float64) float64 {
	if wcm <= rows[0].key {
		return rows[0].value
	}
	for i := 1; i < len(rows); i++ {
		if a, b := rows[i-1], rows[i]; wcm <= b.key {
			return a.value + (b.value-a.value)*(wcm-a.key)/(b.key-a.key)
		}
	}
	a, b := rows[len(rows)-2], rows[len(rows)-1]
	return b.value * math.Exp(math.Log(b.value/a.value)*(wcm-b.key)/(b.key-a.key))
}
