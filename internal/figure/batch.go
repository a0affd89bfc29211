package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
	"hearsay/internal/limit"
)

var (
	batchNeeds = []string{"materials.cement_temperature", "materials.aggregate_temperature", "figure.cementitious", "figure.wcm"}
	// What the aggregate weighs and how wet it is moves the temperature little, so the usual is assumed.
	batchAssumes = []string{"mix.fine_aggregate", "mix.coarse_aggregate", "mix.fine_moisture", "mix.coarse_moisture", "materials.ice"}
	heatBalance  = []limit.Cite{
		{Source: "aci-305", Where: "appendix A, heat balance of the ingredients", Basis: limit.Published},
		{Source: "aci-306", Where: "section 3.7 (1988), frozen moisture", Basis: limit.Memory},
	}
)

var deliveryLoss = []limit.Cite{{Source: "aci-306", Where: "section 3.8 (1988), loss of temperature in a drum on the way", Basis: limit.Memory}}

const balanceMethod = "heat balance of the ingredients: 0.22 of the heat of water for cement and aggregate, {144 Btu/lb} to melt ice"

// batchFigures are those of the temperature of concrete from its ingredients.
func batchFigures() []Figure {
	withWater := append(append([]string{}, batchNeeds...), "materials.water_temperature")
	waterFor := func(name, title, target string, assumes ...string) Figure {
		return Figure{Name: name, Title: title, Unit: "F", Method: balanceMethod + ", solved for the water", Cites: heatBalance,
			Ways: []Way{{Needs: append(append([]string{}, batchNeeds...), target), Assumes: append(assumes, batchAssumes...), Compute: func(c *Calc) (Value, error) {
				return mixingWater(c, target)
			}}}}
	}
	return []Figure{
		{
			Name: "mix_temperature", Title: "temperature of the concrete as mixed, from its ingredients", Unit: "F",
			Method: balanceMethod, Cites: heatBalance,
			Ways: []Way{{Needs: withWater, Assumes: batchAssumes, Compute: func(c *Calc) (Value, error) {
				t, err := ingredients(c).Temperature()
				c.Step("heat content over heat capacity = %s", Q(fahrenheit(t), "F"))
				return Exact(fahrenheit(t)), err
			}}},
		},
		waterFor("water_temperature_needed", "mixing-water temperature for the concrete temperature wanted", "materials.wanted_temperature"),
		waterFor("water_temperature_for_least", "mixing-water temperature for the least placing temperature", "figure.least_placing_temperature", "load.haul", "weather.air"),
		{
			Name: "water_temperature_for_most", Title: "mixing-water temperature that keeps within the highest concrete temperature", Unit: "F",
			Method: balanceMethod + ", solved for the water", Cites: heatBalance,
			Ways: []Way{{Needs: batchNeeds, Assumes: batchAssumes, Compute: func(c *Calc) (Value, error) {
				most := c.Of("hot.most_temperature")
				return waterAt(c, most)
			}}},
		},
		{
			Name: "ice_needed", Title: "ice in place of mixing water that keeps within the highest concrete temperature", Unit: "lb/yd3",
			Method: balanceMethod + ", solved for the ice", Cites: heatBalance,
			Ways: []Way{{Needs: withWater, Assumes: batchAssumes, Compute: iceNeeded}},
		},
	}
}

// ingredients gathers the batch of a yard, in lb and °C.
func ingredients(c *Calc) heat.Ingredients {
	cement, wcm := c.Figure("cementitious").Best, c.Figure("wcm").Best
	const usualSand, usualStone = 1250.0, 1800.0
	sand, stone := c.NumOr("mix.fine_aggregate", usualSand), c.NumOr("mix.coarse_aggregate", usualStone)
	if !c.Stated("mix.fine_aggregate") || !c.Stated("mix.coarse_aggregate") {
		c.Assume("aggregates of %s in all", Q(sand+stone, "lb/yd3"))
	}
	free := math.Max(0, sand*c.NumOr("mix.fine_moisture", 0)/100+stone*c.NumOr("mix.coarse_moisture", 0)/100)
	if !c.Stated("mix.fine_moisture") && !c.Stated("mix.coarse_moisture") {
		c.Assume("no free water on the aggregates")
	}
	ice := c.NumOr("materials.ice", 0)
	m := heat.Ingredients{
		Cement: cement, CementAt: celsius(c.Num("materials.cement_temperature")),
		Aggregate: sand + stone, AggregateAt: celsius(c.Num("materials.aggregate_temperature")),
		Moisture: free, Water: math.Max(0, wcm*cement-free-ice), Ice: ice,
	}
	c.Step("cement %s at %s, aggregate %s at %s with %s of water on it, mixing water %s, ice %s", Q(cement, "lb/yd3"), Q(fahrenheit(m.CementAt), "F"),
		Q(m.Aggregate, "lb/yd3"), Q(fahrenheit(m.AggregateAt), "F"), Q(free, "lb/yd3"), Q(m.Water, "lb/yd3"), Q(ice, "lb/yd3"))
	if c.names("materials.water_temperature") {
		m.WaterAt = celsius(c.Num("materials.water_temperature"))
		c.Step("mixing water at %s", Q(c.Num("materials.water_temperature"), "F"))
	}
	return m
}

func mixingWater(c *Calc, target string) (Value, error) {
	if name, ok := figureName(target); ok {
		f := c.Figure(name).Best
		if c.Stated("load.haul") && c.Stated("weather.air") {
			c.Cite(deliveryLoss[0])
			return waterAt(c, leaving(c, f))
		}
		c.Assume("no heat lost on the way from the plant")
		return waterAt(c, f)
	}
	return waterAt(c, c.Num(target))
}

// waterAt is the temperature of the mixing water that gives the concrete a temperature in °F.
func waterAt(c *Calc, f float64) (Value, error) {
	t, err := ingredients(c).WaterFor(celsius(f))
	if err != nil {
		return Value{}, err
	}
	water := fahrenheit(t)
	c.Step("concrete of %s needs water of %s", Q(f, "F"), Q(water, "F"))
	switch {
	case water > 212:
		return Value{}, fmt.Errorf("water alone cannot warm the concrete to %s: it would have to be hotter than it boils; heat the aggregate", Q(f, "F"))
	case water < 32:
		return Value{}, fmt.Errorf("water alone cannot cool the concrete to %s: use ice or cool the aggregate", Q(f, "F"))
	}
	return Exact(water), nil
}

func iceNeeded(c *Calc) (Value, error) {
	most := c.Of("hot.most_temperature")
	share := c.Of("hot.most_ice_share")
	m := ingredients(c)
	ice := m.IceFor(celsius(most))
	c.Step("ice for %s: %s in place of as much water", Q(most, "F"), Q(ice, "lb/yd3"))
	if ice > share/100*m.Water {
		return Value{}, fmt.Errorf("ice alone cannot cool the concrete to %s: it would take more than %s of the mixing water; cool the aggregate or the cement", Q(most, "F"), Q(share, "%"))
	}
	return Exact(ice + m.Ice), nil
}
