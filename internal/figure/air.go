package figure

import (
	"hearsay/internal/limit"
)

// frostBounds leave open how the concrete meets frost: from none to salted.
var frostBounds = []Bound{
	{Fact: "exposure.freezes", Lowest: false, Highest: true},
	{Fact: "exposure.wet", Lowest: "dry", Highest: "often"},
	{Fact: "exposure.salted", Lowest: false, Highest: true},
}

// frost says how wet the concrete is when it freezes: "dry" (or no frost), "sometimes" or "often".
func frost(c *Calc) string {
	switch {
	case !c.Flag("exposure.freezes"):
		return "dry"
	case c.Flag("exposure.salted"):
		return "often"
	}
	return c.Text("exposure.wet")
}

// airFigures are those of the air to order.
func airFigures() []Figure {
	sharpens := append([]Bound{stoneAir}, frostBounds...)
	where := []limit.Cite{{Source: "aci-318", Where: "Table 19.3.3.1", Edition: "318-19", Basis: limit.Memory}}
	return []Figure{
		{
			Name: "air_to_order", Title: "air content to order", Unit: "%",
			Method: "total air by aggregate size and by how wet it is when it freezes; where it does not, what stays in without entraining any", Cites: where,
			Ways: []Way{{Sharpens: sharpens, Compute: func(c *Calc) (Value, error) {
				return airFor(c)
			}}},
		},
		orderedAirEnd("air_low", "least air where the truck discharges", -1),
		orderedAirEnd("air_high", "most air where the truck discharges", 1),
	}
}

// stoneAir leaves open the aggregate size: the largest stone takes least air.
var stoneAir = Bound{Fact: "order.aggregate", Lowest: 6.0, Highest: 0.1}

func airFor(c *Calc) (Value, error) {
	stone, wet := c.Num("order.aggregate"), frost(c)
	if wet == "dry" {
		table, err := c.Table("mix.entrapped_air")
		if err != nil {
			return Value{}, err
		}
		v, err := heldAlong(table, stone, "of aggregate", "in")
		c.Step("it does not freeze while wet: none need be entrained; stone of %s leaves about %s", Q(stone, "in"), Q(v, "%"))
		return Exact(v), err
	}
	table, err := c.Table("air.total", wet)
	if err != nil {
		return Value{}, err
	}
	row, err := rowBelow(table, inTable(c, table, stone))
	if err != nil {
		return Value{}, err
	}
	v := table[row]
	words := map[string]string{"sometimes": "wet now and then", "often": "often wet or salted"}
	c.Step("stone of %s, %s when it freezes: %s", Q(stone, "in"), words[wet], Q(v, "%"))
	return Exact(v), nil
}

// orderedAirEnd is one end of the tolerance on the air to order.
func orderedAirEnd(name, title string, sign float64) Figure {
	return Figure{Name: name, Title: title, Unit: "%", Method: "the air to order and the tolerance on it",
		Ways: []Way{{Needs: []string{"figure.air_to_order"}, Compute: func(c *Calc) (Value, error) {
			v := max(0, c.Figure("air_to_order").Best+sign*c.Of("delivery.air_tolerance"))
			c.Step("%s, give or take %s: %s", Q(c.Figure("air_to_order").Best, "%"), Q(c.Of("delivery.air_tolerance"), "%"), Q(v, "%"))
			return Exact(v), nil
		}}}}
}
