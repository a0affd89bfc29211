package figure

import (
	"errors"

	"hearsay/internal/limit"
)

// freeMoisture is where the correction for wet aggregates is worked.
var freeMoisture = []limit.Cite{{Source: "navy", Where: "NAVEDTRA 14070, chapter 17: adjusting for moisture", Basis: limit.Published}}

// moistureFigures are those of free moisture on the aggregates, in per cent of their saturated surface-dry weight.
// Negative moisture soaks water up.
func moistureFigures() []Figure {
	both := []string{"mix.fine_aggregate", "mix.fine_moisture", "mix.coarse_aggregate", "mix.coarse_moisture"}
	carried := inYard("water_in_aggregates")
	return []Figure{
		{
			Name: "free_water", Title: "free water on the aggregates of a yard", Unit: "lb/yd3",
			Method: "sand and stone, saturated surface-dry, times their free moisture", Cites: freeMoisture,
			Ways: []Way{{Needs: both, Compute: func(c *Calc) (Value, error) {
				sand, stone := onAggregate(c, "mix.fine_aggregate", "mix.fine_moisture"), onAggregate(c, "mix.coarse_aggregate", "mix.coarse_moisture")
				c.Step("together %s", Q(sand+stone, "lb/yd3"))
				return Exact(sand + stone), nil
			}}, {Needs: []string{both[0], both[1], both[3]}, Compute: func(c *Calc) (Value, error) { // dry stone need not be weighed
				if c.Num("mix.coarse_moisture") != 0 {
					return Value{}, errors.New("the stone carries water, and its weight is not known: give the stone in a yard")
				}
				return Exact(onAggregate(c, "mix.fine_aggregate", "mix.fine_moisture")), nil
			}}},
		},
		{
			Name: "water_in_aggregates", Title: "water that the aggregates carry", Unit: "gal/yd3",
			Method: "free water on the aggregates divided by the weight of a gallon", Cites: freeMoisture,
			Ways: []Way{{Needs: []string{"figure.free_water"}, Compute: func(c *Calc) (Value, error) {
				lb, gallon := c.Figure("free_water").Best, c.Of("water.gallon")
				c.Step("%s / %s = %s", Q(lb, "lb/yd3"), Q(gallon, "lb/gal"), Q(lb/gallon, "gal/yd3"))
				return Exact(lb / gallon), nil
			}}},
		},
		{
			Name: "water_on_sand", Title: "water that the sand carries", Unit: "gal/yd3",
			Method: "sand, saturated surface-dry, times its free moisture, divided by the weight of a gallon", Cites: freeMoisture,
			Ways: []Way{{Needs: both[:2], Compute: func(c *Calc) (Value, error) {
				lb, gallon := onAggregate(c, "mix.fine_aggregate", "mix.fine_moisture"), c.Of("water.gallon")
				c.Step("%s / %s = %s", Q(lb, "lb/yd3"), Q(gallon, "lb/gal"), Q(lb/gallon, "gal/yd3"))
				return Exact(lb / gallon), nil
			}}},
		},
		{
			Name: "batch_water", Title: "water to batch with wet aggregates", Unit: "lb/yd3",
			Method: "mixing water less the free water on the aggregates", Cites: freeMoisture,
			Ways: []Way{{Needs: []string{"mix.water", "figure.free_water"}, Compute: func(c *Calc) (Value, error) {
				v := c.Num("mix.water") - c.Figure("free_water").Best
				c.Step("%s - %s = %s", Q(c.Num("mix.water"), "lb/yd3"), Q(c.Figure("free_water").Best, "lb/yd3"), Q(v, "lb/yd3"))
				return Exact(v), nil
			}}},
		},
		wetWeight("sand_to_batch", "wet sand to batch", "mix.fine_aggregate", "mix.fine_moisture"),
		wetWeight("stone_to_batch", "wet stone to batch", "mix.coarse_aggregate", "mix.coarse_moisture"),
		{
			Name: "wcm_uncorrected", Title: "water-cement ratio with the moisture left in", Unit: "",
			Method: "mixing water and the free water on the aggregates, divided by the cementitious material", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.wcm", "figure.cementitious", "figure.free_water"}, Compute: func(c *Calc) (Value, error) {
				wcm, cement, free := c.Figure("wcm").Best, c.Figure("cementitious").Best, c.Figure("free_water").Best
				c.Step("w/cm = %.3f + %s / %s = %.3f", wcm, Q(free, "lb/yd3"), Q(cement, "lb/yd3"), wcm+free/cement)
				return Exact(wcm + free/cement), nil
			}}},
		},
		slumpGain("moisture_slump", "slump that the moisture adds", carried),
	}
}

func onAggregate(c *Calc, weight, moisture string) float64 {
	lb := c.Num(weight) * c.Num(moisture) / 100
	c.Step("%s of %s = %s", Q(c.Num(moisture), "%"), Q(c.Num(weight), "lb/yd3"), Q(lb, "lb/yd3"))
	return lb
}

// wetWeight is what the scale must show for an aggregate that carries free water.
func wetWeight(name, title, weight, moisture string) Figure {
	return Figure{Name: name, Title: title, Unit: "lb/yd3", Method: "saturated surface-dry weight and its free water", Cites: freeMoisture,
		Ways: []Way{{Needs: []string{weight, moisture}, Compute: func(c *Calc) (Value, error) {
			v := c.Num(weight) + onAggregate(c, weight, moisture)
			c.Step("to batch %s", Q(v, "lb/yd3"))
			return Exact(v), nil
		}}}}
}
