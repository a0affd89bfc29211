package figure

import (
	"math"

	"hearsay/internal/limit"
)

// jointSpacingFigures are those of how far apart contraction joints may be, and are.
func jointSpacingFigures() []Figure {
	return []Figure{
		{
			Name: "joint_spacing_by_thickness", Title: "largest joint spacing by thickness, aggregate and slump", Unit: "ft",
			Method: "24 thicknesses with small stone, 30 with large stone, 36 with stiff concrete, rounded up to the whole foot from half on as the table has it",
			Ways: []Way{{
				Sharpens: []Bound{
					{Fact: "member.thickness", Lowest: thinnestSlab, Highest: thickestSlab},
					{Fact: "order.aggregate", Lowest: 0.1, Highest: 6.0},
					{Fact: "order.slump", Lowest: 12.0, Highest: 0.0},
				},
				Compute: spacingByThickness,
			}},
		},
		{
			Name: "largest_joint_spacing", Title: "largest joint spacing", Unit: "ft",
			Method: "by thickness, aggregate and slump; no longer than {15 ft}, or than {18 ft} where a low shrinkage is tested",
			Ways: []Way{{
				Needs:    []string{"figure.joint_spacing_by_thickness"},
				Sharpens: []Bound{{Fact: "mix.shrinkage", Lowest: 2500.0, Highest: 50.0}},
				Compute:  largestSpacing,
			}},
		},
		{
			Name: "joint_span", Title: "longest stretch between joints or edges", Unit: "ft",
			Method: "spacing of the contraction joints, or the longer side of the slab where there are none",
			Cites:  []limit.Cite{{Source: "trade", Where: "reading of a joint plan", Basis: limit.Practice}},
			Ways: []Way{{
				Sharpens: []Bound{
					{Fact: "joints.made", Lowest: true, Highest: false},
					{Fact: "joints.spacing", Lowest: 0.5, Highest: 1000.0},
					{Fact: "member.length", Lowest: 0.5, Highest: 5000.0},
					{Fact: "member.width", Lowest: 0.3, Highest: 5000.0},
				},
				Compute: jointSpan,
			}},
		},
		{
			Name: "panels_in_stretch", Title: "number of panels that the longest stretch between joints takes", Unit: "1",
			Method: "longest stretch over the largest joint spacing, rounded up; two stand for two or more, since more make no difference",
			Ways: []Way{{Needs: []string{"figure.joint_span", "figure.largest_joint_spacing"}, Compute: func(c *Calc) (Value, error) {
				span, largest := c.Figure("joint_span").Best, c.Figure("largest_joint_spacing").Best
				c.Step("%s / %s = %.2f", Q(span, "ft"), Q(largest, "ft"), span/largest)
				return Exact(min(2, max(1, math.Ceil(span/largest-1e-9)))), nil
			}}},
			Private: true,
		},
	}
}

// The thicknesses between which that of a slab on ground lies, in inches, where it is not stated.
const thinnestSlab, thickestSlab = 2.0, 240.0

func spacingByThickness(c *Calc) (Value, error) {
	l, t := lookup{c: c}, c.Num("member.thickness")
	kind := "small stone"
	switch {
	case c.Num("order.slump") < l.number("joints.stiff_slump"):
		kind = "stiff"
	case c.Num("order.aggregate") >= l.number("joints.large_stone"):
		kind = "large stone"
	}
	times := l.number("joints.spacing_by_thickness", kind)
	v := times * t / 12
	c.Step("%s: %.0f × %s = %s", kind, times, Q(t, "in"), Q(v, "ft"))
	if whole := math.Round(v); whole > v {
		v = whole
		c.Step("printed as %s", Q(v, "ft"))
	}
	return Exact(v), l.err
}

func largestSpacing(c *Calc) (Value, error) {
	l, v := lookup{c: c}, c.Figure("joint_spacing_by_thickness").Best
	ordinary, low := l.number("joints.longest_spacing"), l.number("joints.longest_spacing_low_shrinkage")
	longest := ordinary
	if c.Num("mix.shrinkage") < l.number("joints.low_shrinkage") {
		longest = low
	}
	if v <= ordinary {
		c.Step("%s by thickness is no longer than %s", Q(v, "ft"), Q(ordinary, "ft"))
	} else {
		c.Step("%s by thickness, no longer than %s: %s", Q(v, "ft"), Q(longest, "ft"), Q(math.Min(v, longest), "ft"))
	}
	return Exact(math.Min(v, longest)), l.err
}

func jointSpan(c *Calc) (Value, error) {
	span := math.Max(c.Num("member.length"), c.Num("member.width"))
	if c.Flag("joints.made") {
		span = c.Num("joints.spacing")
	}
	c.Step("longest stretch without a joint: %s", Q(span, "ft"))
	return Exact(span), nil
}
