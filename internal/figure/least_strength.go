package figure

import (
	"fmt"
	"math"
	"slices"
)

// exposureBounds leave open what a strength has to stand beside frost.
var exposureBounds = []Bound{
	{Fact: "exposure.structural", Lowest: false, Highest: true},
	{Fact: "exposure.plain", Lowest: true, Highest: false},
	{Fact: "exposure.external_chloride", Lowest: false, Highest: true},
	{Fact: "member.watertight", Lowest: false, Highest: true},
	{Fact: "job.residential_code", Lowest: "332-14", Highest: "332-20"},
	// Frost alone asks for more in the older code, salt for more in the newer.
	{Fact: "job.concrete_code", Lowest: "318-08", Highest: "318-19", Apart: true},
}

// leastFigures are the least strength and the largest ratio to order.
func leastFigures() []Figure {
	bounds := append(append([]Bound{}, frostBounds...), exposureBounds...)
	return []Figure{
		{
			Name: "least_strength", Title: "least strength for the use and the exposure", Unit: "psi",
			Method: "the largest of what the use, the frost and the salt ask for; of a structural member, what its exposure classes ask for",
			Ways: []Way{
				{Needs: []string{"member.use"}, Sharpens: bounds, Compute: func(c *Calc) (Value, error) { return Exact(leastStrength(c, c.Text("member.use"))), nil }},
				// Formed members of one kind all need the same, whatever their use; slabs do not.
				{Needs: []string{"member.kind"}, Sharpens: bounds, Compute: func(c *Calc) (Value, error) {
					kind := c.Text("member.kind")
					if !slices.Contains([]string{"wall", "footing", "column", "beam"}, kind) {
						return Value{}, fmt.Errorf("what it is for is not said (member.use)")
					}
					return Exact(leastStrength(c, kind)), nil
				}},
			},
		},
		{
			Name: "ratio_to_order", Title: "w/cm to order", Unit: "",
			Method: "what the frost allows where it freezes while wet; elsewhere the ratio that gives the least strength", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.least_strength"}, Sharpens: downward(frostBounds), Compute: func(c *Calc) (Value, error) {
				wet := frost(c)
				if wet == "dry" {
					ratio, err := ratioFor(c, c.Figure("least_strength").Best, false)
					return Exact(ratio), err
				}
				most := c.Of("order.frost_ratio", wet)
				c.Step("where it freezes while wet, at most %.2f", most)
				return Exact(most), nil
			}}},
		},
	}
}

// downward turns bounds round, for a figure that falls where the others rise.
func downward(bounds []Bound) []Bound {
	turned := make([]Bound, len(bounds))
	for i, b := range bounds {
		turned[i] = Bound{Fact: b.Fact, Lowest: b.Highest, Highest: b.Lowest, Apart: b.Apart}
	}
	return turned
}

func leastStrength(c *Calc, use string) float64 {
	wet := frost(c)
	salted := c.Flag("exposure.freezes") && c.Flag("exposure.salted")
	v := most(c, 0, c.Of("order.use_strength", use), "for the use")
	if !c.Flag("exposure.structural") {
		v = most(c, v, c.Of("order.frost_strength", use, wet), "for the frost")
		if salted {
			v = most(c, v, c.Of("order.salt_strength", c.Text("job.residential_code")), "for salt, by ACI "+c.Text("job.residential_code"))
		}
		return v
	}
	if class := frostClass(c, wet, salted); class != "" {
		v = most(c, v, structuralStrength(c, class), "for class "+class)
	}
	if c.Flag("exposure.external_chloride") && !c.Flag("exposure.plain") { // which follows from sea water and from salt
		v = most(c, v, c.Of("order.chloride_strength"), "for class C2")
	}
	if c.Flag("member.watertight") {
		v = most(c, v, c.Of("order.watertight_strength"), "to keep water out")
	}
	return v
}

func most(c *Calc, so, one float64, why string) float64 {
	c.Step("%s: %s", why, Q(one, "psi"))
	return math.Max(so, one)
}

// frostClass is the exposure class F of ACI 318; "" where it does not freeze while wet.
func frostClass(c *Calc, wet string, salted bool) string {
	switch {
	case salted && c.Flag("exposure.plain"):
		return "F3 plain"
	case salted:
		return "F3"
	}
	return map[string]string{"sometimes": "F1", "often": "F2"}[wet]
}

func structuralStrength(c *Calc, class string) float64 {
	if c.Text("job.concrete_code") == "318-19" {
		return c.Of("order.structural_strength_2019", class)
	}
	return c.Of("order.structural_strength", c.Text("job.concrete_code"), class)
}
