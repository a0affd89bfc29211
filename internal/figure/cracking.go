package figure

import (
	"math"

	"hearsay/internal/limit"
)

// crackingFigures are those of what concrete stands before it cracks, and of what a slab that is held must take.
func crackingFigures() []Figure {
	return []Figure{
		{
			Name: "modulus_of_rupture", Title: "flexural strength", Unit: "psi",
			Method: "7.5 times the square root of the ordered strength, both in psi",
			Ways: []Way{{Needs: []string{"order.strength"}, Compute: func(c *Calc) (Value, error) {
				k, err := c.Limit("steel.rupture")
				v := k * math.Sqrt(c.Num("order.strength"))
				c.Step("%.3g × √%.5g = %s", k, c.Num("order.strength"), Q(v, "psi"))
				return Exact(v), err
			}}},
		},
		{
			Name: "elastic_modulus", Title: "modulus of elasticity", Unit: "psi",
			Method: "57,000 times the square root of the ordered strength, both in psi",
			Ways: []Way{{Needs: []string{"order.strength"}, Compute: func(c *Calc) (Value, error) {
				k, err := c.Limit("joints.elasticity")
				v := k * math.Sqrt(c.Num("order.strength"))
				c.Step("%.5g × √%.5g = %s", k, c.Num("order.strength"), Q(v, "psi"))
				return Exact(v), err
			}}},
		},
		{
			Name: "cracking_strain", Title: "strain at which concrete cracks", Unit: "millionths",
			Method: "flexural strength over modulus of elasticity, which is the same for every strength",
			Ways: []Way{{Compute: func(c *Calc) (Value, error) {
				l := lookup{c: c}
				v := l.number("steel.rupture") / l.number("joints.elasticity") * 1e6
				c.Step("7.5 √f'c / (57,000 √f'c) = %s", Q(v, "millionths"))
				c.Assume("loaded quickly; what comes slowly is about halved by creep")
				return Exact(v), l.err
			}}},
		},
		{
			Name: "restrained_strain", Title: "strain that a slab held fast must take", Unit: "millionths",
			Method: "all of the drying shrinkage, since held fast it cannot shorten; cooling comes on top",
			Cites:  []limit.Cite{{Source: "pca", Where: "chapter 15", Basis: limit.Memory}},
			Ways: []Way{{Needs: []string{"figure.shrinkage"}, Compute: func(c *Calc) (Value, error) {
				strain := c.Figure("shrinkage").Best
				c.Step("drying shrinkage = %s", Q(strain, "millionths"))
				return Exact(strain), nil
			}}},
		},
		{
			Name: "restrained_stress", Title: "stress in a slab held fast", Unit: "psi",
			Method: "modulus of elasticity times the strain it must take, without creep, which about halves it",
			Ways: []Way{{Needs: []string{"figure.elastic_modulus", "figure.restrained_strain"}, Compute: func(c *Calc) (Value, error) {
				e, strain := c.Figure("elastic_modulus").Best, c.Figure("restrained_strain").Best
				v := e * strain / 1e6
				c.Step("%s × %s = %s", Q(e, "psi"), Q(strain, "millionths"), Q(v, "psi"))
				return Exact(v), nil
			}}},
		},
	}
}
