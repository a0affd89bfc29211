package figure

import (
	"fmt"

	"hearsay/internal/limit"
)

// slumpFigures are those of a higher slump: what water would make of it, and what an admixture does instead.
func slumpFigures() []Figure {
	return []Figure{
		{
			Name: "slump_sought", Title: "slump that the water is to give", Unit: "in",
			Method: "the slump the crew wants, or the slump ordered where the water is to reach that",
			Cites:  []limit.Cite{{Source: "nrmca-cip", Where: "CIP 26", Basis: limit.Published}},
			Ways: []Way{
				{Needs: []string{"load.slump_wanted"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("load.slump_wanted")), nil }},
				{Needs: []string{"water.purpose", "order.slump"}, Compute: func(c *Calc) (Value, error) {
					if p := c.Text("water.purpose"); p != "to the slump ordered" && p != "lost to heat" {
						return Value{}, fmt.Errorf("how wet it is to become is not said (load.slump_wanted)")
					}
					c.Step("the water is to bring it to the slump ordered, %s", Q(c.Num("order.slump"), "in"))
					return Exact(c.Num("order.slump")), nil
				}},
			},
		},
		{
			Name: "slump_rise", Title: "slump wanted less slump measured", Unit: "in",
			Method: "the slump that the water is to give less the slump measured",
			Cites:  []limit.Cite{{Source: "astm-c143", Basis: limit.Published}},
			Ways: []Way{{Needs: []string{"figure.slump_sought", "load.slump"}, Compute: func(c *Calc) (Value, error) {
				want, have := c.Figure("slump_sought").Best, c.Num("load.slump")
				c.Step("%s - %s = %s", Q(want, "in"), Q(have, "in"), Q(want-have, "in"))
				return Exact(want - have), nil
			}}},
		},
		rise("water_for_rise", "water that the slump wanted would take", []string{"figure.slump_rise"}, func(c *Calc) float64 { return c.Figure("slump_rise").Best }),
		strengthOfRise("strength_cost_of_rise", "strength that the slump wanted would cost if water made it", "water_for_rise"),
		{
			Name: "slump_after_water", Title: "slump after the water added", Unit: "in",
			Method: "measured slump and the slump that the water gives",
			Ways: []Way{{Needs: []string{"load.slump", "figure.slump_gained"}, Compute: func(c *Calc) (Value, error) {
				have, gain := c.Num("load.slump"), c.Figure("slump_gained")
				c.Step("%s + %s to %s", Q(have, "in"), Q(gain.Low, "in"), Q(gain.High, "in"))
				return Between(have+gain.Low, have+gain.Best, have+gain.High), nil
			}}},
		},
		rise("extra_water_for_slump", "water that the slump ordered would take beyond the usual slump", []string{"order.slump", "member.kind"}, func(c *Calc) float64 {
			usual := c.NumOr("mix.slump", c.Of("order.watered_slump", c.Text("member.kind")))
			more := max(0, c.Num("order.slump")-usual)
			c.Step("%s ordered, %s or less is made with water for this work: %s more", Q(c.Num("order.slump"), "in"), Q(usual, "in"), Q(more, "in"))
			return more
		}, "mix.slump"),
		strengthOfRise("strength_cost_of_slump", "strength that the slump ordered would cost if water made it", "extra_water_for_slump"),
		{
			Name: "reducer_slump_gain", Title: "slump that a water reducer gives without water", Unit: "in",
			Method: "by the kind of reducer; where none is in the mix yet, from the normal to the high-range kind",
			Ways:   []Way{{Sharpens: []Bound{{Fact: "order.reducer", Lowest: "normal", Highest: "high"}}, Compute: reducerGain}},
		},
	}
}

// rise is the water that a rise of slump takes, by the gallon in a yard.
func rise(name, title string, needs []string, inches func(c *Calc) float64, assumes ...string) Figure {
	return Figure{Name: name, Title: title, Unit: "gal/yd3", Method: "inches of slump divided by the slump that a gallon gives: more water in stiff concrete, less in wet",
		Ways: []Way{{Needs: needs, Assumes: assumes, Compute: func(c *Calc) (Value, error) {
			more := inches(c)
			least, usual, most := more/c.Of("water.slump_per_gallon_most"), more/c.Of("water.slump_per_gallon"), more/c.Of("water.slump_per_gallon_least")
			c.Step("%s at %s a gallon (%s to %s) = %s (%s to %s)", Q(more, "in"), Q(c.Of("water.slump_per_gallon"), "in"), Q(c.Of("water.slump_per_gallon_least"), "in"),
				Q(c.Of("water.slump_per_gallon_most"), "in"), Q(usual, "gal/yd3"), Q(min(least, most), "gal/yd3"), Q(max(least, most), "gal/yd3"))
			return Between(min(least, most), usual, max(least, most)), nil
		}}}}
}

// strengthOfRise is the strength that the water of a rise costs. The spread is that of the strength a gallon costs, since
// the same rise needs more water where a gallon costs less.
func strengthOfRise(name, title, water string) Figure {
	return strengthLoss(name, title, inYard(water))
}

func reducerGain(c *Calc) (Value, error) {
	kind := c.Text("order.reducer")
	if kind == "none" {
		v := Between(c.Of("water.reducer_gain_normal", "least"), c.Of("water.reducer_gain_mid", "most"), c.Of("water.reducer_gain_high", "most"))
		c.Step("a normal reducer gives from %s, a high-range one up to %s", Q(v.Low, "in"), Q(v.High, "in"))
		return v, nil
	}
	low, high := c.Of("water.reducer_gain_"+kind, "least"), c.Of("water.reducer_gain_"+kind, "most")
	c.Step("a reducer of this kind gives %s to %s", Q(low, "in"), Q(high, "in"))
	return Between(low, (low+high)/2, high), nil
}
