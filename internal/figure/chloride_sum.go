package figure

import (
	"math"

	"hearsay/internal/limit"
)

// mostOtherChloride is the most chloride that cement, aggregates, water and other admixtures could bring, in per cent of the
// cement: as long as nobody says how much they bring, anything up to it is reckoned with.
const mostOtherChloride = 1.0

// chlorideSumFigures add up the chloride in fresh concrete. The editions of ACI 318 agree on the limits and differ in what they
// are counted by: cement up to 2014, cementitious material since.
func chlorideSumFigures() []Figure {
	other := Bound{Fact: "mix.other_chloride", Lowest: 0.0, Highest: mostOtherChloride}
	return []Figure{
		{
			Name: "chloride_by_cement", Title: "chloride from all sources, by mass of cement", Unit: "%",
			Method: "calcium chloride and all other sources added up", Overlap: true,
			Ways: []Way{
				{Needs: []string{"figure.chloride_added"}, Sharpens: []Bound{other}, Compute: chlorideByCement},
				{Needs: []string{"mix.chloride", "mix.portland", "figure.cementitious"}, Compute: func(c *Calc) (Value, error) {
					v := c.Num("mix.chloride") * c.Figure("cementitious").Best / c.Num("mix.portland")
					c.Step("%s of the cementitious material is %s of the cement", Q(c.Num("mix.chloride"), "%"), Q(v, "%"))
					return Exact(v), nil
				}},
			},
		},
		{
			Name: "chloride_by_cementitious", Title: "chloride from all sources, by mass of cementitious material", Unit: "%",
			Method: "chloride by mass of cement times the share of portland cement; supplementary materials count up to the mass of the cement", Overlap: true,
			Cites: []limit.Cite{{Source: "aci-318", Where: "Table 19.3.2.1, footnote", Edition: "318-19", Basis: limit.Memory}},
			Ways: []Way{
				{Needs: []string{"figure.chloride_added", "mix.portland", "figure.cementitious"}, Sharpens: []Bound{other}, Compute: func(c *Calc) (Value, error) {
					return chlorideShared(c, c.Num("mix.portland"), c.Figure("cementitious").Best)
				}},
				{
					Needs: []string{"figure.chloride_added"},
					Sharpens: []Bound{other, {Fact: "mix.portland", Lowest: 0.0, Highest: 2000.0},
						{Fact: "mix.cementitious", Lowest: 2000.0, Highest: 50.0}},
					Compute: func(c *Calc) (Value, error) {
						return chlorideShared(c, c.Num("mix.portland"), c.Num("mix.cementitious"))
					},
				},
				{Needs: []string{"mix.chloride"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("mix.chloride")), nil }},
			},
		},
		{
			Name: "chloride_limit", Title: "largest chloride in reinforced concrete", Unit: "%",
			Method: "from a table, by moisture and by salt from outside; prestressed concrete may have less still",
			Ways: []Way{{
				Sharpens: []Bound{
					{Fact: "exposure.external_chloride", Lowest: true, Highest: false},
					{Fact: "exposure.moist", Lowest: true, Highest: false},
				},
				Compute: chlorideLimit,
			}},
		},
	}
}

func chlorideByCement(c *Calc) (Value, error) {
	dosed, other := c.Figure("chloride_added").Best, c.Num("mix.other_chloride")
	c.Step("%s + %s from the other sources = %s", Q(dosed, "%"), Q(other, "%"), Q(dosed+other, "%"))
	return Exact(dosed + other), nil
}

func chlorideShared(c *Calc, portland, cementitious float64) (Value, error) {
	least, err := c.Limit("durability.counted_portland")
	if err != nil {
		return Value{}, err
	}
	share := math.Min(1, math.Max(least, portland/cementitious))
	total := c.Figure("chloride_added").Best + c.Num("mix.other_chloride")
	c.Step("%s of the cement x %.2f = %s of the cementitious material", Q(total, "%"), share, Q(total*share, "%"))
	return Exact(total * share), nil
}

func chlorideLimit(c *Calc) (Value, error) {
	class := "dry"
	switch {
	case c.Flag("exposure.external_chloride"):
		class = "salted"
	case c.Flag("exposure.moist"):
		class = "moist"
	}
	most, err := c.Limit("durability.chloride", class)
	c.Step("concrete that is %s: %s", class, Q(most, "%"))
	return Exact(most), err
}
