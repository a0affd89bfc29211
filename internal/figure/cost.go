package figure

import "hearsay/internal/limit"

// sum cites nothing outside: it is the user's own prices times the job's own quantities.
var sum = []limit.Cite{{Source: "trade", Where: "the prices given, times the quantities of the job", Basis: limit.Practice}}

// costFigures are what a wrong practice costs, from the prices the user gives. Without prices they are unknown, and nobody
// is asked for prices.
func costFigures() []Figure {
	return []Figure{
		product("rejected_load_cost", "price of a load sent back", "load.volume", "yd3", "price.concrete", "$/yd3", 1),
		product("reducer_route_cost", "price of reaching the slump with a water reducer instead", "load.volume", "yd3", "price.reducer", "$/yd3", 1),
		product("truck_waiting_cost", "price of the truck that waits", "load.wait", "min", "price.truck_hour", "$/h", 1.0/60),
		product("crew_waiting_cost", "price of the crew that waits for the gap", "load.gap", "min", "price.crew_hour", "$/h", 1.0/60),
		{
			Name: "short_load_cost", Title: "price of a short load to make up what is missing", Unit: "$",
			Method: "the charge for a short load", Cites: sum,
			Ways: []Way{{Needs: []string{"price.short_load"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("price.short_load")), nil }}},
		},
		{
			Name: "tear_out_cost", Title: "price of tearing it out and placing it again", Unit: "$",
			Method: "area times the price of tearing out and replacing", Cites: sum,
			Ways: []Way{
				{Needs: []string{"member.area", "price.removal"}, Compute: func(c *Calc) (Value, error) {
					return tearOut(c, c.Num("member.area")), nil
				}},
				{Needs: []string{"member.length", "member.width", "price.removal"}, Compute: func(c *Calc) (Value, error) {
					return tearOut(c, c.Num("member.length")*c.Num("member.width")), nil
				}},
			},
		},
	}
}

func tearOut(c *Calc, area float64) Value {
	cost := area * c.Num("price.removal")
	c.Step("%s x %s = %s", Q(area, "ft2"), Q(c.Num("price.removal"), "$/ft2"), Q(cost, "$"))
	return Exact(cost)
}

// product is a figure that multiplies one fact with one price; scale brings the fact to the unit of the price.
func product(name, title, fact, unit, price, priceUnit string, scale float64) Figure {
	return Figure{Name: name, Title: title, Unit: "$", Method: "the quantity times its price", Cites: sum,
		Ways: []Way{{Needs: []string{fact, price}, Compute: func(c *Calc) (Value, error) {
			cost := c.Num(fact) * scale * c.Num(price)
			c.Step("%s x %s = %s", Q(c.Num(fact), unit), Q(c.Num(price), priceUnit), Q(cost, "$"))
			return Exact(cost), nil
		}}}}
}
