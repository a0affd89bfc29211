package figure

import "math"

// moistureTestFigures are how many moisture tests a floor takes and how deep its probes sit.
func moistureTestFigures() []Figure {
	return []Figure{
		{
			Name: "moisture_tests_needed", Title: "moisture tests for this area", Unit: "1",
			Method: "three for the first 1,000 square feet and one for each further 1,000 or part of it",
			Ways: []Way{{Needs: []string{"figure.area"}, Compute: func(c *Calc) (Value, error) {
				return testsFor(c, c.Figure("area").Best)
			}}},
		},
		{
			Name: "probe_depth", Title: "depth of the probes", Unit: "in",
			Method: "share of the thickness, by the faces it dries from",
			Ways: []Way{{
				Needs: []string{"member.thickness"}, Sharpens: []Bound{{Fact: "floor.drying_sides", Lowest: "both", Highest: "one"}, {Fact: "member.kind", Lowest: "suspended slab", Highest: "slab on ground"}},
				Compute: func(c *Calc) (Value, error) {
					share := c.Of("moisture.probe_share", driesFrom(c))
					v := share / 100 * c.Num("member.thickness")
					c.Step("%s of %s = %s", Q(share, "%"), Q(c.Num("member.thickness"), "in"), Q(v, "in"))
					return Exact(v), nil
				},
			}},
		},
	}
}

func testsFor(c *Calc, area float64) (Value, error) {
	per := c.Of("moisture.area_per_test")
	tests := c.Of("moisture.first_tests") + math.Max(0, math.Ceil((area-per)/per-1e-9))
	c.Step("%s: %.0f for the first %s and one for each more, %.0f", Q(area, "ft2"), c.Of("moisture.first_tests"), Q(per, "ft2"), tests)
	return Exact(tests), nil
}
