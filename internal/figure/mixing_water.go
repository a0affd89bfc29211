package figure

import (
	"fmt"
	"math"
)

// slumpBounds, stoneBounds leave slump and aggregate open: the ends of the table of mixing water.
var (
	slumpBound = Bound{Fact: "order.slump", Lowest: 1.0, Highest: 7.0}
	stoneBound = Bound{Fact: "order.aggregate", Lowest: 1.5, Highest: 0.375}
)

// mixingWaterFigures are those of the water that a mix needs.
func mixingWaterFigures() []Figure {
	return []Figure{{
		Name: "water_for_slump", Title: "mixing water for the slump and the aggregate", Unit: "lb/yd3",
		Method: "table of mixing water by slump, aggregate size and air: the upper end is angular stone, the lower end rounded gravel; between the rows of slump it is interpolated",
		Ways: []Way{{
			Sharpens: []Bound{slumpBound, stoneBound, {Fact: "order.entrained_air", Lowest: true, Highest: false}},
			Compute: func(c *Calc) (Value, error) {
				high, err := tableWater(c, c.Num("order.slump"), c.Num("order.aggregate"), c.Flag("order.entrained_air"))
				if err != nil {
					return Value{}, err
				}
				c.Assume("no water reducer and no fly ash, which save water")
				low := high - c.Of("mix.rounded_gravel_water")
				c.Step("with rounded gravel %s less: %s", Q(c.Of("mix.rounded_gravel_water"), "lb/yd3"), Q(low, "lb/yd3"))
				return Between(low, high, high), nil
			},
		}},
	}}
}

// waterRows are the rows of the table of mixing water: the slumps each is for.
var waterRows = []struct {
	name        string
	least, most float64
}{{"1 to 2", 1, 2}, {"3 to 4", 3, 4}, {"6 to 7", 6, 7}}

// tableWater reads the table of mixing water, in lb/yd3. A slump inside a row takes the row; between two it is interpolated.
func tableWater(c *Calc, slump, stone float64, air bool) (float64, error) {
	first, last := waterRows[0].least, waterRows[len(waterRows)-1].most
	if slump < first || slump > last {
		return 0, fmt.Errorf("the table of mixing water is for slumps of %s to %s: a higher one is made with an admixture, a lower one needs trial mixes", Q(first, "in"), Q(last, "in"))
	}
	i := 0
	for i+1 < len(waterRows) && slump >= waterRows[i+1].least {
		i++
	}
	water, err := rowWater(c, i, stone, air)
	if err != nil {
		return 0, err
	}
	if above := slump - waterRows[i].most; above > 0 {
		next, err := rowWater(c, i+1, stone, air)
		if err != nil {
			return 0, err
		}
		water += (next - water) * above / (waterRows[i+1].least - waterRows[i].most)
	}
	water = math.Round(water*100) / 100
	c.Step("slump %s, stone %s, %s: %s of water", Q(slump, "in"), Q(stone, "in"), airWords(air), Q(water, "lb/yd3"))
	return water, nil
}

func rowWater(c *Calc, i int, stone float64, air bool) (float64, error) {
	table, err := c.Table("mix.mixing_water", airKey(air), waterRows[i].name)
	if err != nil {
		return 0, err
	}
	return along(table, stone, "of aggregate", "in")
}
