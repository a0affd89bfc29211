package figure

import (
	"fmt"
	"math"

	"hearsay/internal/layout"
	"hearsay/internal/limit"
)

// panelFigures are those of the panels that joints divide a slab into.
func panelFigures() []Figure {
	plan := limit.Cite{Source: "trade", Where: "even division of a slab into panels", Basis: limit.Practice}
	return []Figure{
		{
			Name: "panels", Title: "panels to lay out", Unit: "1",
			Method: "both sides of the slab divided evenly so that no stretch is longer than the largest joint spacing and no panel too long for its width",
			Cites:  []limit.Cite{plan},
			Ways: []Way{{Needs: []string{"member.length", "member.width", "figure.largest_joint_spacing"}, Compute: func(c *Calc) (Value, error) {
				aspect, err := c.Limit("joints.most_aspect")
				if err != nil {
					return Value{}, err
				}
				length, width, spacing := c.Num("member.length"), c.Num("member.width"), c.Figure("largest_joint_spacing").Best
				along, across := layout.Divide(length, width, spacing, aspect)
				c.Step("%s / %d = %s, %s / %d = %s, none longer than %s", Q(length, "ft"), along, Q(length/float64(along), "ft"),
					Q(width, "ft"), across, Q(width/float64(across), "ft"), Q(spacing, "ft"))
				return Exact(float64(along * across)), nil
			}}},
		},
		{
			Name: "panel_aspect", Title: "length of a panel over its width", Unit: "",
			Method: "longer side over shorter side; a strip narrower than the joint spacing has panels as long as the spacing and as wide as the strip",
			Cites:  []limit.Cite{plan},
			Ways: []Way{
				{Needs: []string{"joints.panel_length", "joints.panel_width"}, Compute: func(c *Calc) (Value, error) {
					a, b := c.Num("joints.panel_length"), c.Num("joints.panel_width")
					v := math.Max(a, b) / math.Min(a, b)
					c.Step("%s / %s = %.2f", Q(math.Max(a, b), "ft"), Q(math.Min(a, b), "ft"), v)
					return Exact(v), nil
				}},
				{Needs: []string{"joints.spacing", "member.length", "member.width"}, Compute: stripAspect},
			},
		},
		{
			Name: "longest_panel", Title: "longest panel of this width", Unit: "ft",
			Method: "width of the panel times the largest length over width",
			Ways: []Way{{Needs: []string{"joints.panel_width", "joints.panel_length"}, Compute: func(c *Calc) (Value, error) {
				aspect, err := c.Limit("joints.most_aspect")
				return Exact(aspect * math.Min(c.Num("joints.panel_width"), c.Num("joints.panel_length"))), err
			}}},
			Private: true,
		},
		{
			Name: "panel_short_side", Title: "shorter side of the panel", Unit: "ft",
			Method: "the smaller of the two that are stated",
			Ways: []Way{{Needs: []string{"joints.panel_width", "joints.panel_length"}, Compute: func(c *Calc) (Value, error) {
				return Exact(math.Min(c.Num("joints.panel_width"), c.Num("joints.panel_length"))), nil
			}}},
			Private: true,
		},
		{
			Name: "longest_strip_panel", Title: "largest joint spacing of a strip of this width", Unit: "ft",
			Method: "width of the strip times the largest length over width",
			Ways: []Way{{Needs: []string{"member.length", "member.width"}, Compute: func(c *Calc) (Value, error) {
				aspect, err := c.Limit("joints.most_aspect")
				return Exact(aspect * math.Min(c.Num("member.width"), c.Num("member.length"))), err
			}}},
			Private: true,
		},
	}
}

func stripAspect(c *Calc) (Value, error) {
	spacing, long, short := c.Num("joints.spacing"), c.Num("member.length"), c.Num("member.width")
	if short > long {
		long, short = short, long
	}
	if spacing < short {
		return Value{}, fmt.Errorf("the slab is wider than the joints are apart: state the longest and the shortest side of a panel")
	}
	v := math.Min(spacing, long) / short
	c.Step("strip %s wide, joints every %s: %.2f", Q(short, "ft"), Q(math.Min(spacing, long), "ft"), v)
	return Exact(v), nil
}
