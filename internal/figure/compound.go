package figure

import (
	"math"

	"hearsay/internal/limit"
)

// compoundFigures are those of membrane curing compounds.
func compoundFigures() []Figure {
	plain := []limit.Cite{{Source: "aci-308", Where: "application of liquid membrane-forming compounds", Edition: "308R-01", Basis: limit.Memory}}
	return []Figure{
		{
			Name: "compound_coverage_allowed", Title: "widest coverage of curing compound", Unit: "ft2/gal",
			Method: "usual coverage, less where the surface is rough",
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "cure.rough_surface", Lowest: true, Highest: false}},
				Compute: func(c *Calc) (Value, error) {
					name := "compound_coverage"
					if c.Flag("cure.rough_surface") {
						name = "compound_coverage_rough"
					}
					v, err := c.Limit("cure." + name)
					return Exact(v), err
				},
			}},
		},
		{
			Name: "compound_coverage", Title: "coverage of the curing compound", Unit: "ft2/gal",
			Method: "as stated, or the area over the compound planned",
			Cites:  plain,
			Ways: []Way{
				{Needs: []string{"cure.compound_coverage"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("cure.compound_coverage")), nil }},
				{Needs: []string{"figure.area", "cure.compound_volume"}, Compute: func(c *Calc) (Value, error) {
					area, gallons := c.Figure("area").Best, math.Max(c.Num("cure.compound_volume"), 0.01)
					c.Step("%s / %s = %s", Q(area, "ft2"), Q(gallons, "gal"), Q(area/gallons, "ft2/gal"))
					return Exact(area / gallons), nil
				}},
			},
		},
		{
			Name: "compound_planned", Title: "curing compound planned", Unit: "gal",
			Method: "as stated, or the area over the coverage stated",
			Cites:  plain,
			Ways: []Way{
				{Needs: []string{"cure.compound_volume"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("cure.compound_volume")), nil }},
				{Needs: []string{"figure.area", "cure.compound_coverage"}, Compute: func(c *Calc) (Value, error) {
					area, coverage := c.Figure("area").Best, c.Num("cure.compound_coverage")
					c.Step("%s / %s = %s", Q(area, "ft2"), Q(coverage, "ft2/gal"), Q(area/coverage, "gal"))
					return Exact(area / coverage), nil
				}},
			},
		},
		{
			Name: "compound_needed", Title: "curing compound needed", Unit: "gal",
			Method: "area over the widest coverage",
			Ways: []Way{{Needs: []string{"figure.area", "figure.compound_coverage_allowed"}, Compute: func(c *Calc) (Value, error) {
				area, coverage := c.Figure("area").Best, c.Figure("compound_coverage_allowed").Best
				c.Step("%s / %s = %s", Q(area, "ft2"), Q(coverage, "ft2/gal"), Q(area/coverage, "gal"))
				return Exact(area / coverage), nil
			}}},
		},
	}
}
