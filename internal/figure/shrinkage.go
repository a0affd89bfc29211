package figure

import (
	"math"

	"hearsay/internal/limit"
)

// shrinkageFigures are those of drying shrinkage: how much in the end by two published models, and how much at an age.
func shrinkageFigures() []Figure {
	humidity := Bound{Fact: "floor.room_humidity", Lowest: 70.0, Highest: 40.0} // of heated and cooled rooms
	return []Figure{
		{
			Name: "shrinkage_aci209", Title: "ultimate drying shrinkage by ACI 209", Unit: "millionths",
			Method: "780 millionths times the factors of ACI 209R for humidity, drying thickness, slump, sand, cement, air and moist curing; a slab that dries from one face counts with its whole thickness",
			Cites:  []limit.Cite{aci209("209.2R-08, A.1"), aci209Memory("209.2R-08, equation A-6 (moist curing)")},
			Ways: []Way{{
				Needs: []string{"member.thickness"},
				Sharpens: []Bound{
					humidity,
					{Fact: "floor.drying_sides", Lowest: "one", Highest: "both"},
					{Fact: "order.slump", Lowest: 1.0, Highest: 8.0},
					{Fact: "mix.fine_share", Lowest: 30.0, Highest: 50.0},
					{Fact: "mix.cementitious", Lowest: 400.0, Highest: 800.0},
					{Fact: "order.air", Lowest: 1.0, Highest: 8.0},
					{Fact: "cure.days", Lowest: 28.0, Highest: 1.0},
				},
				Compute: shrinkageACI209,
			}},
		},
		{
			Name: "shrinkage_mc90", Title: "ultimate drying shrinkage by CEB MC90-99", Unit: "millionths",
			Method: "notional drying shrinkage by strength and cement times the factor for humidity; the mean strength is taken {1160 psi} above the ordered one",
			Cites:  []limit.Cite{{Source: "ceb-mc90", Where: "drying part, as in ACI 209.2R-08, A.3", Basis: limit.Memory}, aci209("209.2R-08, appendix C (worked example)")},
			Ways: []Way{{
				Sharpens: []Bound{humidity, {Fact: "order.strength", Lowest: 6000.0, Highest: 2500.0}, {Fact: "mix.cement_type", Lowest: "IV", Highest: "III"}},
				Compute:  shrinkageMC90,
			}},
		},
		{
			Name: "drying_shrinkage", Title: "drying shrinkage to expect in the end", Unit: "millionths",
			Method: "the range over ACI 209 and CEB MC90-99, best their mean; either may be off by a third",
			Ways: []Way{{Needs: []string{"figure.shrinkage_aci209", "figure.shrinkage_mc90"}, Compute: func(c *Calc) (Value, error) {
				a, m := c.Figure("shrinkage_aci209").Best, c.Figure("shrinkage_mc90").Best
				c.Step("ACI 209: %s; CEB MC90-99: %s", Q(a, "millionths"), Q(m, "millionths"))
				return Between(math.Min(a, m), (a+m)/2, math.Max(a, m)), nil
			}}},
		},
		{
			Name: "shrinkage", Title: "drying shrinkage to reckon with", Unit: "millionths",
			Method: "as tested; untested, anything from {300 millionths} to {1000 millionths}",
			Cites:  []limit.Cite{{Source: "pca", Where: "chapter 15", Basis: limit.Memory}},
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "mix.shrinkage", Lowest: 300.0, Highest: 1000.0}},
				Compute:  func(c *Calc) (Value, error) { return Exact(c.Num("mix.shrinkage")), nil },
			}},
		},
	}
}

func aci209(where string) limit.Cite {
	return limit.Cite{Source: "aci-209", Where: where, Basis: limit.Published}
}

func aci209Memory(where string) limit.Cite {
	return limit.Cite{Source: "aci-209", Where: where, Basis: limit.Memory}
}

func shrinkageACI209(c *Calc) (Value, error) {
	h := c.Num("floor.room_humidity") / 100
	if h < 0.40 {
		c.Assume("the factor for 40 %% humidity, since ACI 209 has none for drier air: the shrinkage is larger than computed")
		h = 0.40
	}
	sand, cement, air := c.Num("mix.fine_share"), c.Num("mix.cementitious"), c.Num("order.air")
	depth, slump, cured := dryingDepth(c), c.Num("order.slump"), math.Max(1, c.Num("cure.days"))
	factors := []float64{
		humidityACI209(h),
		1.2 * math.Exp(-0.12*depth),
		0.89 + 0.041*slump,
		sandACI209(sand),
		0.75 + 0.00036*cement,
		math.Max(1, 0.95+0.008*air),
		1.202 - 0.2337*math.Log10(cured),
	}
	shrinkage := 780.0
	for _, f := range factors {
		shrinkage *= f
	}
	c.Step("humidity %.0f %%: %.3f; drying thickness %s: 1.2 × exp(-0.12 × %.3g inches) = %.3f", 100*h, factors[0], Q(depth, "in"), depth, factors[1])
	c.Step("slump %s: %.3f; sand %.3g %%: %.3f; cement %s: %.3f", Q(slump, "in"), factors[2], sand, factors[3], Q(cement, "lb/yd3"), factors[4])
	c.Step("air %.3g %%: %.3f; moist curing %s: %.3f", air, factors[5], Q(cured, "d"), factors[6])
	c.Step("780 × all seven = %s", Q(shrinkage, "millionths"))
	return Exact(shrinkage), nil
}

// humidityACI209 is the factor for a relative humidity of 0.40 to 1 (equation A-7).
func humidityACI209(h float64) float64 {
	if h <= 0.80 {
		return 1.40 - 1.02*h
	}
	return 3.00 - 3.00*h
}

// sandACI209 is the factor for sand in per cent of the aggregate (equation A-12).
func sandACI209(sand float64) float64 {
	if sand <= 50 {
		return 0.30 + 0.014*sand
	}
	return 0.90 + 0.002*sand
}

// dryingDepth is the ratio of volume to drying surface in inches.
func dryingDepth(c *Calc) float64 {
	if c.Text("floor.drying_sides") == "both" {
		return c.Num("member.thickness") / 2
	}
	return c.Num("member.thickness")
}

const (
	megapascal = 145.0377 // psi in a MPa
	millimeter = 25.4     // mm in an inch
)

// cementMC90 gives the two coefficients of the notional drying shrinkage for slow, normal and rapid cements.
func cementMC90(kind string) (a, b float64) {
	switch kind {
	case "III":
		return 6, 0.12
	case "IV":
		return 3, 0.13
	}
	return 4, 0.12
}

func shrinkageMC90(c *Calc) (Value, error) {
	mean := c.Num("order.strength")/megapascal + 8
	a, b := cementMC90(c.Text("mix.cement_type"))
	notional := (220 + 110*a) * math.Exp(-b*mean/10)
	h := c.Num("floor.room_humidity") / 100
	factor := 1.55 * (1 - h*h*h)
	if h >= 0.99*math.Min(1, math.Pow(35/mean, 0.1)) {
		factor = 0
		c.Assume("air this damp makes concrete swell rather than shrink: counted as no shrinkage")
	}
	c.Step("mean strength %s; (220 + 110 × %.0f) × exp(-%.2f × %.2f) = %s", Q(mean*megapascal, "psi"), a, b, mean/10, Q(notional, "millionths"))
	c.Step("humidity %.0f %%: 1.55 × (1 - %.2f³) = %.3f; together %s", 100*h, h, factor, Q(notional*factor, "millionths"))
	return Exact(notional * factor), nil
}
