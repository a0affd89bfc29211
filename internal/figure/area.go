package figure

import "hearsay/internal/limit"

// areaFigure is the area of the slab.
func areaFigure() Figure {
	return Figure{
		Name: "area", Title: "area", Unit: "ft2",
		Method: "as stated, or length times width",
		Cites:  []limit.Cite{{Source: "navy", Where: "NAVEDTRA 14071, chapter 17, take-off", Basis: limit.Published}},
		Ways: []Way{
			{Needs: []string{"member.area"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("member.area")), nil }},
			{Needs: []string{"member.length", "member.width"}, Compute: func(c *Calc) (Value, error) {
				length, width := c.Num("member.length"), c.Num("member.width")
				c.Step("%s × %s = %s", Q(length, "ft"), Q(width, "ft"), Q(length*width, "ft2"))
				return Exact(length * width), nil
			}},
		},
	}
}
