package figure

import (
	"fmt"

	"hearsay/internal/limit"
)

// proportionFigures are those of what goes into a yard, by absolute volume.
func proportionFigures() []Figure {
	by := []limit.Cite{
		{Source: "aci-211", Where: "section 6.3", Edition: "ACI 211.1-91", Basis: limit.Published},
		{Source: "navy", Where: "NAVEDTRA 14071, chapter 17", Basis: limit.Published},
	}
	return []Figure{
		cementFor("cement_for_strength", "cement for the strength ordered", "figure.ratio_for_strength", func(c *Calc) float64 { return c.Figure("ratio_for_strength").Best }),
		cementFor("cement_for_ratio", "cement for the largest ratio ordered", "order.ratio_limit", func(c *Calc) float64 { return c.Num("order.ratio_limit") }),
		{
			Name: "stone_content", Title: "stone in a yard", Unit: "lb/yd3",
			Method: "volume of dry-rodded stone by its size and the fineness of the sand, times its dry-rodded weight", Cites: by,
			Ways: []Way{{Needs: []string{"order.aggregate", "mix.fineness", "mix.rodded_weight"}, Compute: func(c *Calc) (Value, error) {
				share, err := stoneShare(c, c.Num("order.aggregate"), c.Num("mix.fineness"))
				if err != nil {
					return Value{}, err
				}
				v := share * c.Of("mix.yard") * c.Num("mix.rodded_weight")
				c.Step("stone of %s and sand of fineness %.2f: %.3f of the volume", Q(c.Num("order.aggregate"), "in"), c.Num("mix.fineness"), share)
				c.Step("%.3f x %s x %s = %s", share, Q(c.Of("mix.yard"), "ft3"), Q(c.Num("mix.rodded_weight"), "lb/ft3"), Q(v, "lb/yd3"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "sand_content", Title: "sand that fills the yard", Unit: "lb/yd3",
			Method: "a yard less the absolute volumes of cement, water, stone and air, times the weight of the sand", Cites: by,
			Ways: []Way{{
				Needs: []string{"figure.cementitious", "mix.water", "mix.coarse_aggregate", "mix.coarse_gravity", "mix.fine_gravity", "order.air"},
				Compute: func(c *Calc) (Value, error) {
					left := c.Of("mix.yard") - others(c)
					v := left * c.Num("mix.fine_gravity") * c.Of("mix.water_weight")
					if left <= 0 {
						return Value{}, fmt.Errorf("the rest fills more than a yard: nothing is left for sand")
					}
					c.Step("sand %s x %.2f x %s = %s", Q(left, "ft3"), c.Num("mix.fine_gravity"), Q(c.Of("mix.water_weight"), "lb/ft3"), Q(v, "lb/yd3"))
					return Exact(v), nil
				},
			}},
		},
		{
			Name: "recipe_volume", Title: "volume that the recipe of a yard fills", Unit: "ft3",
			Method: "absolute volumes of cement, water, sand, stone and air added up", Cites: by,
			Ways: []Way{{
				Needs: []string{"figure.cementitious", "mix.water", "mix.fine_aggregate", "mix.fine_gravity", "mix.coarse_aggregate", "mix.coarse_gravity", "order.air"},
				Compute: func(c *Calc) (Value, error) {
					v := others(c) + solid(c, "sand", c.Num("mix.fine_aggregate"), c.Num("mix.fine_gravity"))
					c.Step("together %s", Q(v, "ft3"))
					return Exact(v), nil
				},
			}},
		},
	}
}

// others is the volume of everything but the sand, in cubic feet in a yard.
func others(c *Calc) float64 {
	c.Assume("all the cementitious material weighs as much as portland cement")
	cement := solid(c, "cement", c.Figure("cementitious").Best, c.Of("mix.cement_gravity"))
	water := solid(c, "water", c.Num("mix.water"), 1)
	stone := solid(c, "stone", c.Num("mix.coarse_aggregate"), c.Num("mix.coarse_gravity"))
	air := c.Num("order.air") / 100 * c.Of("mix.yard")
	c.Step("air %s of %s = %s", Q(c.Num("order.air"), "%"), Q(c.Of("mix.yard"), "ft3"), Q(air, "ft3"))
	return cement + water + stone + air
}

// solid is an absolute volume in cubic feet.
func solid(c *Calc, what string, lb, gravity float64) float64 {
	v := lb / (gravity * c.Of("mix.water_weight"))
	c.Step("%s %s / (%.2f x %s) = %s", what, Q(lb, "lb"), gravity, Q(c.Of("mix.water_weight"), "lb/ft3"), Q(v, "ft3"))
	return v
}

func cementFor(name, title, need string, ratio func(c *Calc) float64) Figure {
	return Figure{Name: name, Title: title, Unit: "lb/yd3", Method: "mixing water divided by the water-cement ratio", Cites: ratioByMass,
		Ways: []Way{{Needs: []string{"mix.water", need}, Compute: func(c *Calc) (Value, error) {
			v := c.Num("mix.water") / ratio(c)
			c.Step("%s / %.3f = %s", Q(c.Num("mix.water"), "lb/yd3"), ratio(c), Q(v, "lb/yd3"))
			return Exact(v), nil
		}}}}
}

// stoneShare reads the table of stone volume along the size of the stone and the fineness of the sand.
func stoneShare(c *Calc, size, fineness float64) (float64, error) {
	sizes, err := c.Table("order.nominal_sizes")
	if err != nil {
		return 0, err
	}
	at := map[string]float64{}
	for _, s := range sizes {
		key := fmt.Sprintf("%g", s)
		row, err := c.Table("mix.stone_volume", key)
		if err != nil {
			return 0, err
		}
		if at[key], err = along(row, fineness, "of fineness", ""); err != nil {
			return 0, err
		}
	}
	return along(at, size, "of aggregate", "in")
}
