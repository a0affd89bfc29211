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
				{Needs: []string{"member.use"}, Sharpens: bounds, Compute: func(c *Calc) (Value, error) { return leastStrength(c, c.Text("member.use")) }},
				// Formed members of one kind all need the same, whatever their use; slabs do not.
				{Needs: []string{"member.kind"}, Sharpens: bounds, Compute: func(c *Calc) (Value, error) {
					kind := c.Text("member.kind")
					if !slices.Contains([]string{"wall", "footing", "column", "beam"}, kind) {
						return Value{}, fmt.Errorf("what it is for is not said (member.use)")
					}
					return leastStrength(c, kind)
				}},
			},
		},
		{
			Name: "ratio_to_order", Title: "w/cm to order", Unit: "",
			Method: "the least that frost, salt or the exposure classes of a structural member allow; where none of them bears, the ratio that gives the least strength", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.least_strength"}, Sharpens: downward(bounds), Compute: ratioToOrder}},
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

func leastStrength(c *Calc, use string) (Value, error) {
	v := mostOf(c, 0, c.Of("order.use_strength", use), "for the use")
	if !c.Flag("exposure.structural") {
		v = mostOf(c, v, c.Of("order.frost_strength", use, frost(c)), "for the frost")
		if salted(c) {
			v = mostOf(c, v, c.Of("order.salt_strength", c.Text("job.residential_code")), "for salt, by ACI "+c.Text("job.residential_code"))
		}
		return Exact(v), nil
	}
	for _, class := range classesOf(c) {
		psi, err := byEdition(c, "durability.class_strength", class)
		if err != nil {
			return Value{}, err
		}
		v = math.Max(v, psi.Best)
	}
	return Exact(v), nil
}

func mostOf(c *Calc, so, one float64, why string) float64 {
	c.Step("%s: %s", why, Q(one, "psi"))
	return math.Max(so, one)
}

func salted(c *Calc) bool { return c.Flag("exposure.freezes") && c.Flag("exposure.salted") }

// classesOf are the exposure classes of a structural member for frost, salt and water. Sulfate is judged by itself.
func classesOf(c *Calc) []string {
	var classes []string
	switch wet := frost(c); {
	case salted(c):
		classes = append(classes, "F3")
	case wet != "dry":
		classes = append(classes, map[string]string{"sometimes": "F1", "often": "F2"}[wet])
	}
	if c.Flag("exposure.external_chloride") && !c.Flag("exposure.plain") { // which follows from sea water and from salt
		classes = append(classes, "C2")
	}
	if c.Flag("member.watertight") {
		classes = append(classes, "W")
	}
	return classes
}

func ratioToOrder(c *Calc) (Value, error) {
	most := math.Inf(1)
	switch {
	case c.Flag("exposure.structural"):
		for _, class := range classesOf(c) {
			ratio, err := byEdition(c, "durability.class_ratio", class)
			if err != nil {
				return Value{}, err
			}
			most = math.Min(most, ratio.Best)
		}
	case salted(c):
		most = c.Of("durability.salted_ratio")
		c.Step("where it is salted, at most %.2f", most)
	case frost(c) != "dry":
		most = c.Of("durability.wet_ratio")
		c.Step("where it freezes while wet, at most %.2f", most)
	}
	if !math.IsInf(most, 1) {
		return Exact(most), nil
	}
	ratio, err := ratioFor(c, c.Figure("least_strength").Best, false)
	return Exact(ratio), err
}
