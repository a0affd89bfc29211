package figure

import (
	"fmt"
	"math"
	"slices"

	"hearsay/internal/limit"
)

// toleranceFigures are the bands in which what is measured of a load must lie.
func toleranceFigures() []Figure {
	meaning := []Bound{{Fact: "order.slump_meaning", Lowest: "maximum", Highest: "target"}}
	spread := []limit.Cite{{Source: "astm-c94", Where: "tolerances in slump", Basis: limit.Memory}}
	return []Figure{
		{
			Name: "slump_least", Title: "least slump within tolerance", Unit: "in",
			Method: "slump ordered less the tolerance for a target or for a maximum",
			Ways:   []Way{{Needs: []string{"order.slump"}, Sharpens: meaning, Compute: func(c *Calc) (Value, error) { return slumpBand(c, -1) }}},
		},
		{
			Name: "slump_most", Title: "largest slump within tolerance", Unit: "in",
			Method: "slump ordered, with the tolerance above it where it is a target",
			Ways:   []Way{{Needs: []string{"order.slump"}, Sharpens: meaning, Compute: func(c *Calc) (Value, error) { return slumpBand(c, 1) }}},
		},
		{
			Name: "slump_spread", Title: "spread of slump between trucks", Unit: "in",
			Method: "largest less smallest measured slump, this truck's included",
			Cites:  spread,
			Ways: []Way{{Needs: []string{"load.slump", "load.other_slumps"}, Compute: func(c *Calc) (Value, error) {
				return slumpSpread(c, append(slices.Clone(c.List("load.other_slumps")), c.Num("load.slump")))
			}}},
		},
		{
			Name: "slump_spread_of_others", Title: "spread of slump between the other trucks", Unit: "in",
			Method: "largest less smallest measured slump of the other trucks",
			Cites:  spread,
			Ways: []Way{{Needs: []string{"load.other_slumps"}, Compute: func(c *Calc) (Value, error) {
				return slumpSpread(c, c.List("load.other_slumps"))
			}}},
		},
		{
			Name: "slump_most_of_others", Title: "largest slump of the other trucks", Unit: "in",
			Method: "the largest measured slump of the other trucks",
			Cites:  spread,
			Ways: []Way{{Needs: []string{"load.other_slumps"}, Compute: func(c *Calc) (Value, error) {
				return Exact(slices.Max(c.List("load.other_slumps"))), nil
			}}},
		},
		{
			Name: "slump_spread_allowed", Title: "largest spread of slump between trucks", Unit: "in",
			Method: "from the least to the largest slump within tolerance",
			Ways: []Way{{Needs: []string{"figure.slump_least", "figure.slump_most"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Figure("slump_most").Best - c.Figure("slump_least").Best), nil
			}}},
		},
		{
			Name: "air_least", Title: "least air accepted, within tolerance", Unit: "%",
			Method: "air content ordered less its tolerance",
			Ways:   []Way{{Needs: []string{"order.air"}, Compute: func(c *Calc) (Value, error) { return airBand(c, -1) }}},
		},
		{
			Name: "air_most", Title: "largest air accepted, within tolerance", Unit: "%",
			Method: "air content ordered and its tolerance",
			Ways:   []Way{{Needs: []string{"order.air"}, Compute: func(c *Calc) (Value, error) { return airBand(c, 1) }}},
		},
	}
}

func slumpSpread(c *Calc, all []float64) (Value, error) {
	least, most := slices.Min(all), slices.Max(all)
	c.Step("%s - %s = %s", Q(most, "in"), Q(least, "in"), Q(most-least, "in"))
	return Exact(most - least), nil
}

// slumpBand gives one end of the band: below the slump ordered for sign -1, above it for 1.
func slumpBand(c *Calc, sign float64) (Value, error) {
	ordered, meaning := c.Num("order.slump"), c.Text("order.slump_meaning")
	if meaning == "maximum" && sign > 0 {
		c.Step("a maximum has no tolerance above it: %s", Q(ordered, "in"))
		return Exact(ordered), nil
	}
	table, err := c.Table("delivery.slump_tolerance", meaning)
	if err != nil {
		return Value{}, err
	}
	rows, err := rowsOf(table)
	if err != nil {
		return Value{}, err
	}
	for _, r := range rows {
		if ordered <= r.key {
			end := math.Max(0, ordered+sign*r.value)
			c.Step("%s as a %s: tolerance %s, so %s", Q(ordered, "in"), meaning, Q(r.value, "in"), Q(end, "in"))
			return Exact(end), nil
		}
	}
	return Value{}, fmt.Errorf("there is no tolerance for a slump of %s", Q(ordered, "in"))
}

func airBand(c *Calc, sign float64) (Value, error) {
	tolerance, err := c.Limit("delivery.air_tolerance")
	if err != nil {
		return Value{}, err
	}
	end := math.Max(0, c.Num("order.air")+sign*tolerance)
	c.Step("%s ordered, tolerance %s: %s", Q(c.Num("order.air"), "%"), Q(tolerance, "%"), Q(end, "%"))
	return Exact(end), nil
}
