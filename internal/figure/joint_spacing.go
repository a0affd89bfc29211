package figure

import (
	"math"
	"slices"

	"hearsay/internal/limit"
)

// What the largest joint spacing and the longest stretch between joints hang on. The ends of each go together, so that all
// of them are tried at once.
var (
	thicknessBounds = []Bound{
		{Fact: "member.thickness", Lowest: thinnestSlab, Highest: thickestSlab},
		{Fact: "order.aggregate", Lowest: 0.1, Highest: 6.0},
		{Fact: "order.slump", Lowest: 12.0, Highest: 0.0},
	}
	largestBounds = append(slices.Clone(thicknessBounds), Bound{Fact: "mix.shrinkage", Lowest: 2500.0, Highest: 50.0})
	spanBounds    = []Bound{
		{Fact: "joints.made", Lowest: true, Highest: false, Apart: true},
		{Fact: "joints.spacing", Lowest: 0.5, Highest: 1000.0},
		{Fact: "member.length", Lowest: 0.5, Highest: 5000.0},
		{Fact: "member.width", Lowest: 0.3, Highest: 5000.0},
	}
)

// The thicknesses between which that of a slab on ground lies, in inches, where it is not stated.
const thinnestSlab, thickestSlab = 0.5, 240.0

// turnedRound gives the bounds of a figure for one that falls as that one rises.
func turnedRound(bounds []Bound) []Bound {
	turned := make([]Bound, len(bounds))
	for i, b := range bounds {
		turned[i] = Bound{Fact: b.Fact, Lowest: b.Highest, Highest: b.Lowest, Apart: b.Apart, Also: b.Also}
	}
	return turned
}

// jointSpacingFigures are those of how far apart contraction joints may be, and are.
func jointSpacingFigures() []Figure {
	plan := []limit.Cite{{Source: "trade", Where: "reading of a joint plan", Basis: limit.Practice}}
	return []Figure{
		{
			Name: "joint_spacing_by_thickness", Title: "largest joint spacing by thickness, aggregate and slump", Unit: "ft",
			Method: "24 thicknesses with small stone, 30 with large stone, 36 with stiff concrete, rounded up to the whole foot from half on as the table has it",
			Ways: []Way{{Sharpens: thicknessBounds, Compute: func(c *Calc) (Value, error) {
				l := lookup{c: c}
				v := spacingByThickness(c, &l)
				return Exact(v), l.err
			}}},
		},
		{
			Name: "largest_joint_spacing", Title: "largest joint spacing", Unit: "ft",
			Method: "by thickness, aggregate and slump; no longer than {15 ft}, or than {18 ft} where a low shrinkage is tested",
			Ways: []Way{{Sharpens: largestBounds, Compute: func(c *Calc) (Value, error) {
				l := lookup{c: c}
				v := largestSpacing(c, &l)
				return Exact(v), l.err
			}}},
		},
		{
			Name: "joint_span", Title: "longest stretch between joints or edges", Unit: "ft",
			Method: "spacing of the contraction joints, or the longer side of the slab where there are none",
			Cites:  plan,
			Ways:   []Way{{Sharpens: spanBounds, Compute: func(c *Calc) (Value, error) { return Exact(jointSpan(c)), nil }}},
		},
		{
			Name: "panels_in_stretch", Title: "number of panels that the longest stretch between joints takes", Unit: "1",
			Method: "longest stretch over the largest joint spacing, rounded up; two stand for two or more, since more make no difference",
			Cites:  plan,
			Ways: []Way{{Sharpens: append(slices.Clone(spanBounds), turnedRound(largestBounds)...), Compute: func(c *Calc) (Value, error) {
				l := lookup{c: c}
				span, largest := jointSpan(c), largestSpacing(c, &l)
				c.Step("%s / %s = %.2f", Q(span, "ft"), Q(largest, "ft"), span/largest)
				return Exact(min(2, max(1, math.Ceil(span/largest-1e-9)))), l.err
			}}},
			Private: true,
		},
	}
}

func spacingByThickness(c *Calc, l *lookup) float64 {
	t := c.Num("member.thickness")
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
	return v
}

func largestSpacing(c *Calc, l *lookup) float64 {
	v := spacingByThickness(c, l)
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
	return math.Min(v, longest)
}

func jointSpan(c *Calc) float64 {
	span := math.Max(c.Num("member.length"), c.Num("member.width"))
	if c.Flag("joints.made") {
		span = c.Num("joints.spacing")
	}
	c.Step("longest stretch without a joint: %s", Q(span, "ft"))
	return span
}
