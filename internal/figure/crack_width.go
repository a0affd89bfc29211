package figure

import (
	"math"

	"hearsay/internal/limit"
)

// crackWidthFigures are those of how far cracks open over steel, and of the bar spacing that keeps them narrow.
func crackWidthFigures() []Figure {
	return []Figure{
		{
			Name: "crack_opening", Title: "opening of a crack with this steel", Unit: "in",
			Method: "the steel takes over the tension that the concrete gives up as it cracks; below its yield strength the formulas of Frosch and of Gergely and Lutz give the width, beyond it the crack opens by all that the slab shortens between its joints",
			Cites: []limit.Cite{
				{Source: "frosch", Where: "crack width from the strain of the steel and the distance to it", Basis: limit.Memory},
				{Source: "aci-224", Where: "Gergely-Lutz formula", Basis: limit.Memory},
			},
			Ways: []Way{{
				Needs: []string{"figure.steel_ratio", "figure.steel_yield", "figure.shrinkage", "figure.joint_span"},
				Sharpens: []Bound{
					{Fact: "order.strength", Lowest: 2500.0, Highest: 6000.0},
					{Fact: "steel.depth", Lowest: 1.0, Highest: 3.0},
					{Fact: "steel.spacing", Lowest: 3.0, Highest: 18.0},
				},
				Compute: crackOpening,
			}},
		},
		{
			Name: "crack_width_reasonable", Title: "crack width taken as reasonable", Unit: "in",
			Method: "from a table, by what reaches the concrete in service; that of dry air where nothing of it is stated",
			Ways: []Way{{
				Assumes: []string{"member.watertight", "exposure.seawater", "exposure.salted", "exposure.moist"},
				Compute: reasonableWidth,
			}},
		},
		{
			Name: "bar_spacing_crack_control", Title: "largest bar spacing for crack control", Unit: "in",
			Method: "15 (40,000 / fs) - 2.5 cover, no more than 12 (40,000 / fs), with two thirds of the yield strength for fs",
			Cites:  []limit.Cite{{Source: "aci-318", Where: "table 24.3.2", Edition: "318-19", Basis: limit.Memory}},
			Ways: []Way{{Needs: []string{"steel.cover", "figure.steel_yield"}, Compute: func(c *Calc) (Value, error) {
				share, err := c.Limit("steel.working_stress")
				stress, cover := share*c.Figure("steel_yield").Best, c.Num("steel.cover")
				v := math.Min(15*40000/stress-2.5*cover, 12*40000/stress)
				c.Step("fs %s: the lesser of 15 × 40,000 / fs - 2.5 × %s and 12 × 40,000 / fs = %s", Q(stress, "psi"), Q(cover, "in"), Q(v, "in"))
				return Exact(v), err
			}}},
		},
	}
}

func reasonableWidth(c *Calc) (Value, error) {
	meets := "dry"
	for _, worst := range []struct{ fact, meets string }{
		{"member.watertight", "water-retaining"}, {"exposure.seawater", "seawater"}, {"exposure.salted", "deicer"}, {"exposure.moist", "humid"},
	} {
		if c.Stated(worst.fact) && c.Flag(worst.fact) {
			meets = worst.meets
			break
		}
	}
	if meets == "dry" && !c.Stated("exposure.moist") {
		c.Assume("it is dry in service")
	}
	v := c.Of("steel.crack_width", meets)
	c.Step("%s: %s", map[string]string{"dry": "dry air", "humid": "moist in service", "deicer": "deicing salt", "seawater": "sea water",
		"water-retaining": "it must keep water in or out"}[meets], Q(v, "in"))
	return Exact(v), nil
}

func crackOpening(c *Calc) (Value, error) {
	l := lookup{c: c}
	tension := l.number("steel.tension") * math.Sqrt(c.Num("order.strength"))
	ratio, yield := c.Figure("steel_ratio").Best/100, c.Figure("steel_yield").Best
	stress := tension / ratio
	c.Step("concrete cracks at %s; steel of %s then takes %s / %.5f = %s", Q(tension, "psi"), Q(100*ratio, "%"), Q(tension, "psi"), ratio, Q(stress, "psi"))
	if stress > yield {
		span, strain := c.Figure("joint_span").Best, c.Figure("shrinkage").Best
		v := span * 12 * strain / 1e6
		c.Step("that is beyond its yield strength of %s: it stretches, and the crack opens by %s × %s = %s", Q(yield, "psi"), Q(span, "ft"), Q(strain, "millionths"), Q(v, "in"))
		c.Assume("one crack takes up all that the slab shortens between its joints or edges")
		return Exact(v), l.err
	}
	depth, spacing := c.Num("steel.depth"), c.Num("steel.spacing")
	frosch := froschWidth(stress, l.number("steel.steel_stiffness"), 1, depth, spacing)
	gergely := gergelyLutzWidth(1, stress, depth, 2*depth*spacing)
	c.Step("Frosch: 2 × %s / Es × √(%s² + (%s / 2)²) = %s", Q(stress, "psi"), Q(depth, "in"), Q(spacing, "in"), Q(frosch, "in"))
	c.Step("Gergely-Lutz: %s", Q(gergely, "in"))
	return Between(math.Min(frosch, gergely), math.Max(frosch, gergely), math.Max(frosch, gergely)), l.err
}

// froschWidth is the crack width in inches by R. J. Frosch, 1999: 2 (fs / Es) β √(dc² + (s/2)²). Stresses in psi, the depth
// dc to the steel and its spacing s in inches; β, the strain at the face over that at the steel, is 1 in pure tension.
func froschWidth(stress, stiffness, beta, depth, spacing float64) float64 {
	return 2 * stress / stiffness * beta * math.Hypot(depth, spacing/2)
}

// gergelyLutzWidth is the crack width in inches by Gergely and Lutz as ACI 224R has it: 0.076 β fs ∛(dc A) × 10⁻³ with fs
// in ksi, here given in psi, dc in inches and A, the concrete around one bar, in in².
func gergelyLutzWidth(beta, stress, depth, area float64) float64 {
	return 0.076 * beta * stress / 1000 * math.Cbrt(depth*area) / 1000
}
