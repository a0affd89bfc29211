package figure

import (
	"math"

	"hearsay/internal/limit"
)

// takeOff is where volumes of slabs and walls are reckoned.
var takeOff = []limit.Cite{
	{Source: "nhie", Where: "slab quantities", Edition: "2018", Basis: limit.Published},
	{Source: "navy", Where: "material estimates", Basis: limit.Published},
}

// volumeFigures are those of the volume to order.
func volumeFigures() []Figure {
	return []Figure{
		{
			Name: "forms_volume", Title: "volume of the forms", Unit: "yd3",
			Method: "length times width times thickness for slabs and footings, length times height times thickness for walls, or area times thickness", Cites: takeOff,
			Ways: []Way{
				{Needs: []string{"member.area"}, Sharpens: sideBounds[2:], Compute: func(c *Calc) (Value, error) {
					v := c.Num("member.area") * c.Num("member.thickness") / 12 / c.Of("mix.yard")
					c.Step("%s x %s = %s", Q(c.Num("member.area"), "ft2"), Q(c.Num("member.thickness"), "in"), Q(v, "yd3"))
					return Exact(v), nil
				}},
				{Needs: []string{"member.kind", "member.length"}, Sharpens: sideBounds, Compute: box},
				{Needs: []string{"member.forms_volume"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("member.forms_volume")), nil }},
			},
		},
		{
			Name: "allowance", Title: "allowance for uneven grade and waste", Unit: "yd3",
			Method: "a share of the volume of the forms: the least, what is usual on an even base, and the most",
			Ways: []Way{{Needs: []string{"figure.forms_volume"}, Compute: func(c *Calc) (Value, error) {
				v := c.Figure("forms_volume").Best / 100
				least, usual, most := c.Of("order.allowance_least"), c.Of("order.allowance"), c.Of("order.allowance_most")
				c.Step("allowance of %s (%s to %s) = %s (%s to %s)", Q(usual, "%"), Q(least, "%"), Q(most, "%"), Q(v*usual, "yd3"), Q(v*least, "yd3"), Q(v*most, "yd3"))
				return Between(v*least, v*usual, v*most), nil
			}}},
		},
		{
			Name: "least_volume", Title: "volume of the forms with the least allowance", Unit: "yd3",
			Method: "volume of the forms and the least allowance",
			Ways: []Way{{Needs: []string{"figure.forms_volume", "figure.allowance"}, Compute: func(c *Calc) (Value, error) {
				v := c.Figure("forms_volume").Best + c.Figure("allowance").Low
				c.Step("with the least allowance %s", Q(v, "yd3"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "volume_to_order", Title: "volume to order", Unit: "yd3",
			Method: "volume of the forms and the allowance, rounded up to the step in which concrete is ordered", Cites: takeOff,
			Ways: []Way{{Needs: []string{"figure.forms_volume", "figure.allowance"}, Compute: func(c *Calc) (Value, error) {
				forms, more, step := c.Figure("forms_volume").Best, c.Figure("allowance"), c.Of("order.increment")
				v := Between(up(forms+more.Low, step), up(forms+more.Best, step), up(forms+more.High, step))
				c.Step("%s + %s = %s, rounded up to %s: %s (%s to %s)", Q(forms, "yd3"), Q(more.Best, "yd3"), Q(forms+more.Best, "yd3"), Q(step, "yd3"),
					Q(v.Best, "yd3"), Q(v.Low, "yd3"), Q(v.High, "yd3"))
				return v, nil
			}}},
		},
		{
			Name: "truckloads", Title: "truckloads", Unit: "truck",
			Method: "volume to order divided by what a truck brings, rounded up",
			Ways: []Way{{Needs: []string{"figure.volume_to_order"}, Compute: func(c *Calc) (Value, error) {
				v, most, usual, least := c.Figure("volume_to_order").Best, c.Of("order.truck", "most"), c.Of("order.truck", "usual"), c.Of("order.truck", "least")
				c.Step("%s in trucks of %s (%s to %s)", Q(v, "yd3"), Q(usual, "yd3"), Q(least, "yd3"), Q(most, "yd3"))
				return Between(math.Ceil(v/most), math.Ceil(v/usual), math.Ceil(v/least)), nil
			}}},
		},
	}
}

// sideBounds leave open the sides of a block: from the least to the largest that a job may state.
var sideBounds = []Bound{
	{Fact: "member.width", Lowest: 0.3, Highest: 5000.0},
	{Fact: "member.height", Lowest: 0.2, Highest: 300.0},
	{Fact: "member.thickness", Lowest: 0.5, Highest: 240.0},
}

// box multiplies the sides that the kind of member has.
func box(c *Calc) (Value, error) {
	length, width, height, thick := c.Num("member.length"), c.Num("member.width"), c.Num("member.height"), c.Num("member.thickness")
	yard := c.Of("mix.yard")
	switch c.Text("member.kind") {
	case "wall":
		v := length * height * thick / 12 / yard
		c.Step("%s x %s x %s = %s", Q(length, "ft"), Q(height, "ft"), Q(thick, "in"), Q(v, "yd3"))
		return Exact(v), nil
	case "column":
		v := length * width * height / yard
		c.Step("%s x %s x %s = %s", Q(length, "ft"), Q(width, "ft"), Q(height, "ft"), Q(v, "yd3"))
		return Exact(v), nil
	}
	v := length * width * thick / 12 / yard
	c.Step("%s x %s x %s = %s", Q(length, "ft"), Q(width, "ft"), Q(thick, "in"), Q(v, "yd3"))
	return Exact(v), nil
}
