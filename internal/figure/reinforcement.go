package figure

import (
	"fmt"
	"strconv"

	"hearsay/internal/limit"
)

// reinforcementFigures are those of the steel that is there.
func reinforcementFigures() []Figure {
	return []Figure{
		{
			Name: "steel_area", Title: "steel area provided", Unit: "in2/ft",
			Method: "as stated, or area of a bar or wire over its spacing",
			Cites:  []limit.Cite{{Source: "crsi", Where: "examples of slabs on ground", Basis: limit.Published}},
			Ways: []Way{
				{Needs: []string{"steel.area"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("steel.area")), nil }},
				{Needs: []string{"steel.bar_size", "steel.spacing"}, Compute: func(c *Calc) (Value, error) {
					bar, err := barArea(c)
					v := bar * 12 / c.Num("steel.spacing")
					c.Step("a #%.0f bar of %s in every %s = %s", c.Num("steel.bar_size"), Q(bar, "in2"), Q(c.Num("steel.spacing"), "in"), Q(v, "in2/ft"))
					return Exact(v), err
				}},
				{Needs: []string{"steel.wire", "steel.spacing"}, Compute: func(c *Calc) (Value, error) {
					per, err := c.Limit("steel.wire_area")
					v := c.Num("steel.wire") * per * 12 / c.Num("steel.spacing")
					c.Step("a W%.4g wire of %s in every %s = %s", c.Num("steel.wire"), Q(c.Num("steel.wire")*per, "in2"), Q(c.Num("steel.spacing"), "in"), Q(v, "in2/ft"))
					return Exact(v), err
				}},
			},
		},
		{
			Name: "steel_ratio", Title: "steel ratio", Unit: "%",
			Method: "steel area over the area of the concrete",
			Cites:  []limit.Cite{{Source: "ascc-steel", Where: "worked example", Basis: limit.Published}},
			Ways: []Way{{
				Needs:    []string{"figure.steel_area"},
				Sharpens: []Bound{{Fact: "member.thickness", Lowest: thickestSlab, Highest: thinnestSlab}},
				Compute: func(c *Calc) (Value, error) {
					area, t := c.Figure("steel_area").Best, c.Num("member.thickness")
					v := 100 * area / (12 * t)
					c.Step("%s over %s of concrete = %s", Q(area, "in2/ft"), Q(t, "in"), Q(v, "%"))
					return Exact(v), nil
				},
			}},
		},
		{
			Name: "steel_through_joints", Title: "steel ratio through the contraction joints", Unit: "%",
			Method: "steel ratio times the share of the steel that runs through",
			Cites:  []limit.Cite{{Source: "aci-360", Where: "6.2", Basis: limit.Memory}},
			Ways: []Way{{
				Needs:    []string{"figure.steel_ratio"},
				Sharpens: []Bound{{Fact: "steel.through_joints", Lowest: "cut", Highest: "continuous"}},
				Compute: func(c *Calc) (Value, error) {
					share := map[string]float64{"continuous": 1, "half": 0.5, "cut": 0}[c.Text("steel.through_joints")]
					v := c.Figure("steel_ratio").Best * share
					c.Step("%s × %.1f = %s", Q(c.Figure("steel_ratio").Best, "%"), share, Q(v, "%"))
					return Exact(v), nil
				},
			}},
		},
		{
			Name: "steel_depth", Title: "depth below the top at which the steel belongs", Unit: "in",
			Method: "in the upper third or {2 in} below the top, with enough concrete over it, and never below the middle",
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) {
				l, t := lookup{c: c}, c.Num("member.thickness")
				best := min(l.number("steel.depth_below_top"), t/2)
				low := min(l.number("steel.least_top_cover"), best)
				c.Step("slab %s: upper third to %s, middle at %s", Q(t, "in"), Q(t/3, "in"), Q(t/2, "in"))
				return Between(low, best, max(best, t/3)), l.err
			}}},
		},
		{
			Name: "mid_depth", Title: "middle of the slab below its top", Unit: "in",
			Method: "half the thickness",
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("member.thickness") / 2), nil
			}}},
			Private: true,
		},
		{
			Name: "least_cover", Title: "least concrete cover", Unit: "in",
			Method: "by what the covered face meets, the bar and the member",
			Ways: []Way{{
				Sharpens: []Bound{
					{Fact: "steel.cover_against", Lowest: "indoors", Highest: "cast on ground"},
					{Fact: "steel.bar_size", Lowest: 3.0, Highest: 18.0},
					{Fact: "member.kind", Lowest: "slab on ground", Highest: "beam"},
				},
				Compute: leastCover,
			}},
		},
	}
}

// barArea is the area of the bar that the job states, in in².
func barArea(c *Calc) (float64, error) {
	size := c.Num("steel.bar_size")
	area, err := c.Limit("steel.bar_area", strconv.FormatFloat(size, 'f', -1, 64))
	if err != nil {
		return 0, fmt.Errorf("there is no bar #%g: bars go from #2 to #11, #14 and #18", size)
	}
	return area, nil
}

// The largest bars that the smaller cover of each exposure is enough for.
const (
	smallBarWeather = 5
	smallBarIndoors = 11
)

func leastCover(c *Calc) (Value, error) {
	against, bar, kind := c.Text("steel.cover_against"), c.Num("steel.bar_size"), c.Text("member.kind")
	path := "steel.cover_ground"
	switch {
	case against == "weather" && bar > smallBarWeather:
		path = "steel.cover_weather_large"
	case against == "weather":
		path = "steel.cover_weather_small"
	case against == "indoors" && (bar > smallBarIndoors || kind == "beam" || kind == "column"):
		path = "steel.cover_indoors_large"
	case against == "indoors":
		path = "steel.cover_indoors_small"
	}
	v, err := c.Limit(path)
	return Exact(v), err
}
