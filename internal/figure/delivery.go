package figure

import (
	"fmt"
	"math"

	"hearsay/internal/limit"
)

// deliveryFigures are those of time and trucks; what is measured of a load is in tolerance.go.
func deliveryFigures() []Figure {
	clock := []limit.Cite{{Source: "astm-c94", Where: "time of discharge", Basis: limit.Published}}
	trade := []limit.Cite{{Source: "trade", Where: "spacing of trucks", Basis: limit.Practice}}
	return append(toleranceFigures(), []Figure{
		{
			Name: "load_age", Title: "age of the load at the end of discharge", Unit: "min",
			Method: "as stated, or haul, wait and unloading added up",
			Cites:  clock,
			Ways: []Way{
				{Needs: []string{"load.age"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("load.age")), nil }},
				{Needs: []string{"load.haul"}, Sharpens: []Bound{{Fact: "load.wait", Lowest: 0.0, Highest: 600.0}, {Fact: "load.unloading", Lowest: 1.0, Highest: 600.0}}, Compute: tripTime},
			},
		},
		{
			Name: "time_limit", Title: "time limit for discharge", Unit: "min",
			Method: "the order's, or where it has none the default of the edition of ASTM C94 in force",
			Ways: []Way{
				{Needs: []string{"load.time_limit"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("load.time_limit")), nil }},
				{Needs: []string{"load.limit_source", "job.delivery_standard"}, Compute: defaultLimit},
			},
		},
		{
			Name: "minutes_left", Title: "minutes left to the time limit", Unit: "min",
			Method: "time limit less age at the end of discharge; below zero it is overrun",
			Ways: []Way{{Needs: []string{"figure.time_limit", "figure.load_age"}, Compute: func(c *Calc) (Value, error) {
				most, age := c.Figure("time_limit").Best, c.Figure("load_age").Best
				c.Step("%s - %s = %s", Q(most, "min"), Q(age, "min"), Q(most-age, "min"))
				return Exact(most - age), nil
			}}},
		},
		{
			Name: "wait_allowed", Title: "wait that the time limit still allows", Unit: "min",
			Method: "time limit less haul and unloading, not below zero",
			Ways: []Way{{Needs: []string{"figure.time_limit", "load.haul", "load.unloading"}, Compute: func(c *Calc) (Value, error) {
				return Exact(math.Max(0, c.Figure("time_limit").Best-c.Num("load.haul")-c.Num("load.unloading"))), nil
			}}},
			Private: true,
		},
		{
			Name: "haul_allowed", Title: "haul that the time limit still allows", Unit: "min",
			Method: "time limit less unloading and the wait that is left",
			Ways: []Way{{Needs: []string{"figure.time_limit", "figure.wait_allowed", "load.haul", "load.unloading"}, Compute: func(c *Calc) (Value, error) {
				return Exact(math.Max(0, math.Min(c.Num("load.haul"), c.Figure("time_limit").Best-c.Num("load.unloading")-c.Figure("wait_allowed").Best))), nil
			}}},
			Private: true,
		},
		{
			Name: "knit_minutes", Title: "longest gap over which fresh concrete still knits to what is placed", Unit: "min",
			Method: "a share of the time to initial set, since a vibrator stops sinking in well before that",
			Ways: []Way{{Needs: []string{"figure.set_hours"}, Compute: func(c *Calc) (Value, error) {
				share, err := c.Limit("delivery.knit_share")
				v := c.Figure("set_hours")
				c.Step("%.2f × %s = %s", share, Q(v.Best, "h"), Q(60*share*v.Best, "min"))
				return Between(60*share*v.Low, 60*share*v.Best, 60*share*v.High), err
			}}},
		},
		{
			Name: "placing_rate", Title: "placing rate", Unit: "yd3/h",
			Method: "as stated, or a load over the time to unload it",
			Within: 10, // both are said in round numbers
			Cites:  trade,
			Ways: []Way{
				{Needs: []string{"load.placing_rate"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("load.placing_rate")), nil }},
				{Needs: []string{"load.volume", "load.unloading"}, Compute: func(c *Calc) (Value, error) {
					rate := c.Num("load.volume") / c.Num("load.unloading") * 60
					c.Step("%s / %s = %s", Q(c.Num("load.volume"), "yd3"), Q(c.Num("load.unloading"), "min"), Q(rate, "yd3/h"))
					return Exact(rate), nil
				}},
			},
		},
		{
			Name: "unloading_time", Title: "unloading time of a load", Unit: "min",
			Method: "as stated, or a load over the rate at which the crew places",
			Within: 5, // both are said in round numbers
			Cites:  trade,
			Ways: []Way{
				{Needs: []string{"load.unloading"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("load.unloading")), nil }},
				{Needs: []string{"load.volume", "load.placing_rate"}, Compute: func(c *Calc) (Value, error) {
					minutes := c.Num("load.volume") / c.Num("load.placing_rate") * 60
					c.Step("%s / %s = %s", Q(c.Num("load.volume"), "yd3"), Q(c.Num("load.placing_rate"), "yd3/h"), Q(minutes, "min"))
					return Exact(minutes), nil
				}},
			},
		},
		{
			Name: "truck_spacing_to_order", Title: "truck spacing to order", Unit: "min",
			Method: "the time that the crew takes for a load; somewhat less fills a queue slowly, and up to the longest open face more does no harm",
			Ways: []Way{{Needs: []string{"figure.unloading_time"}, Compute: func(c *Calc) (Value, error) {
				slack, err := c.Limit("delivery.spacing_slack")
				if err != nil {
					return Value{}, err
				}
				open, err := c.Limit("delivery.longest_stop")
				t := c.Figure("unloading_time").Best
				c.Step("one load takes %s; from %s to %s apart will do", Q(t, "min"), Q(t*slack, "min"), Q(t+open, "min"))
				return Between(t*slack, t, t+open), err
			}}},
		},
		{
			Name: "worst_load_age", Title: "age of the worst load", Unit: "min",
			Method: "haul and unloading of the last truck, and its wait for those before it",
			Cites:  trade,
			Ways:   []Way{{Needs: []string{"load.spacing", "figure.unloading_time", "order.volume", "load.volume", "load.haul"}, Compute: worstLoad}},
		},
	}...)
}

func tripTime(c *Calc) (Value, error) {
	haul, wait, unloading := c.Num("load.haul"), c.Num("load.wait"), c.Num("load.unloading")
	c.Step("%s haul + %s wait + %s unloading = %s", Q(haul, "min"), Q(wait, "min"), Q(unloading, "min"), Q(haul+wait+unloading, "min"))
	return Exact(haul + wait + unloading), nil
}

func defaultLimit(c *Calc) (Value, error) {
	if c.Text("load.limit_source") != "standard" {
		return Value{}, fmt.Errorf("the order or the producer states the limit: state it (load.time_limit)")
	}
	v, err := c.Limit("delivery.default_time_limit", c.Text("job.delivery_standard"))
	if err != nil {
		return Value{}, fmt.Errorf("this edition of ASTM C94 has no limit of its own: the order or the producer sets one")
	}
	return Exact(v), nil
}

func worstLoad(c *Calc) (Value, error) {
	spacing, unloading := c.Num("load.spacing"), c.Figure("unloading_time").Best
	trucks := math.Ceil(c.Num("order.volume")/c.Num("load.volume") - 1e-9)
	queue := math.Max(0, (trucks-1)*(unloading-spacing))
	age := c.Num("load.haul") + queue + unloading
	c.Step("%.0f trucks; each waits %s longer than the one before: the last waits %s", trucks, Q(math.Max(0, unloading-spacing), "min"), Q(queue, "min"))
	c.Step("%s haul + %s wait + %s unloading = %s", Q(c.Num("load.haul"), "min"), Q(queue, "min"), Q(unloading, "min"), Q(age, "min"))
	c.Assume("every truck is loaded when it is due, and none is sent home")
	return Exact(age), nil
}
