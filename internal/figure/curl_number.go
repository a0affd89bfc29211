package figure

import (
	"fmt"
	"math"

	"hearsay/internal/limit"
)

// Radius of curvature in inches of a floor with curl number 1.
const curlRadius = 3182400

// curlNumberFigures are those of a curled floor whose curl number was measured: how much of it stands on the ground.
func curlNumberFigures() []Figure {
	cites := []limit.Cite{{Source: "face", Where: "part II, curl number", Basis: limit.Published}}
	return []Figure{
		{
			Name: "curl_support_radius", Title: "radius of the part of a curled panel that stands on the ground", Unit: "in",
			Method: "the panel is part of a ball of radius {3182400 in} over the curl number, pressed a little into its base",
			Cites:  cites,
			Ways: []Way{{Needs: []string{"joints.curl_number"}, Compute: func(c *Calc) (Value, error) {
				settled, err := c.Limit("joints.curl_settlement")
				if err == nil && c.Num("joints.curl_number") == 0 {
					err = fmt.Errorf("a floor with curl number 0 is flat and stands on the ground everywhere")
				}
				v := math.Sqrt(2 * curlRadius * settled / c.Num("joints.curl_number"))
				c.Step("√(2 × {3182400 in} / %.4g × %s) = %s", c.Num("joints.curl_number"), Q(settled, "in"), Q(v, "in"))
				return Exact(v), err
			}}},
		},
		{
			Name: "curl_unsupported", Title: "share of a curled panel that stands off the ground", Unit: "%",
			Method: "all but the disc that stands on the ground",
			Cites:  cites,
			Ways: []Way{{Needs: []string{"figure.curl_support_radius", "joints.panel_length", "joints.panel_width"}, Compute: func(c *Calc) (Value, error) {
				r, panel := c.Figure("curl_support_radius").Best/12, c.Num("joints.panel_length")*c.Num("joints.panel_width")
				disc := math.Min(panel, math.Pi*r*r)
				v := 100 * (1 - disc/panel)
				c.Step("1 - %s / %s = %s", Q(disc, "ft2"), Q(panel, "ft2"), Q(v, "%"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "curl_corner_gap", Title: "gap under the corners of a curled panel", Unit: "in",
			Method: "half the diagonal squared over twice the radius of curvature, less what is pressed into the base",
			Cites:  cites,
			Ways: []Way{{Needs: []string{"joints.curl_number", "joints.panel_length", "joints.panel_width"}, Compute: func(c *Calc) (Value, error) {
				settled, err := c.Limit("joints.curl_settlement")
				z := math.Hypot(c.Num("joints.panel_length"), c.Num("joints.panel_width")) * 12 / 2
				v := math.Max(0, z*z*c.Num("joints.curl_number")/(2*curlRadius)-settled)
				c.Step("%s² × %.4g / (2 × {3182400 in}) - %s = %s", Q(z, "in"), c.Num("joints.curl_number"), Q(settled, "in"), Q(v, "in"))
				return Exact(v), err
			}}},
		},
		{
			Name: "curl_gradient", Title: "strain of the top less that of the bottom in a curled panel", Unit: "millionths",
			Method: "thickness over the radius of curvature, without the weight of the slab; the top is the shorter face",
			Cites:  cites,
			Ways: []Way{{Needs: []string{"joints.curl_number", "member.thickness"}, Compute: func(c *Calc) (Value, error) {
				bend := c.Num("member.thickness") * c.Num("joints.curl_number")
				v := -bend / (curlRadius + bend) * 1e6
				c.Step("-%.4g / (3,182,400 + %.4g) = %s", bend, bend, Q(v, "millionths"))
				return Exact(v), nil
			}}},
		},
	}
}
