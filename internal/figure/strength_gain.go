package figure

import (
	"math"
	"sort"

	"hearsay/internal/heat"
	"hearsay/internal/limit"
)

// gainSharpens are the facts that a share of the 28-day strength at an age hangs on: slow ones first. Slow cements overtake
// quick ones after 28 days, so each stands apart.
var gainSharpens = []Bound{
	{Fact: "cure.temperature", Lowest: -20.0, Highest: mostWarmth, Apart: true},
	{Fact: "mix.cement_type", Lowest: "IV", Highest: "III", Also: []any{"I"}},
	{Fact: "cold.accelerator", Lowest: "none", Highest: "calcium chloride"},
}

// strengthGainFigures say how much of its strength concrete has at an age, how much it needs for what is to be done to it,
// and when it has that.
func strengthGainFigures() []Figure {
	aci := limit.Cite{Source: "aci-209", Where: "Table 2.2.1", Edition: "209R-92", Basis: limit.Published}
	eurocode := limit.Cite{Source: "en-1992", Where: "equation 3.2", Basis: limit.Published}
	maturity := limit.Cite{Source: "astm-c1074", Where: "equation 2, activation energies of 33,500 to 45,000 J/mol, larger below 68 °F", Basis: limit.Memory}
	gain := []limit.Cite{aci, eurocode, maturity}
	return []Figure{
		{
			Name: "gained_share", Title: "strength then, of the specified strength", Unit: "%", Overlap: true,
			Method: "measured in place; else 28-day strength by the age at 68 °F that the temperature makes of it, best by ACI 209, with the spread of two published curves, of mixes and of activation energies",
			Cites:  gain,
			Ways: []Way{
				{Needs: []string{"strength.action_after"}, Sharpens: gainSharpens, Compute: func(c *Calc) (Value, error) {
					v := gaining(c)(c.Num("strength.action_after"))
					c.Step("age %s at %s: %s (%s to %s) of the 28-day strength", Q(c.Num("strength.action_after"), "h"), Q(c.Num("cure.temperature"), "F"),
						Q(v.Best, "%"), Q(v.Low, "%"), Q(v.High, "%"))
					c.Assume("the 28-day strength is the specified strength")
					return v, nil
				}},
				{Needs: []string{"figure.in_place_share"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Figure("in_place_share").Best), nil }},
			},
		},
		{
			Name: "in_place_share", Title: "strength measured in place, of the specified strength", Unit: "%", Method: "strength in place over specified strength",
			Ways: []Way{{Needs: []string{"strength.in_place", "order.strength"}, Compute: func(c *Calc) (Value, error) {
				v := 100 * c.Num("strength.in_place") / c.Num("order.strength")
				c.Step("%s / %s = %s", Q(c.Num("strength.in_place"), "psi"), Q(c.Num("order.strength"), "psi"), Q(v, "%"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "needed_share", Title: "strength needed for that, of the specified strength", Unit: "%",
			Method: "usual share for walking and driving a car; for trucks and loads what the designer asks for, from that share to all of it",
			Ways: []Way{{
				Needs: []string{"strength.action"},
				Sharpens: []Bound{{Fact: "strength.needed", Lowest: 0.0, Highest: 20000.0},
					{Fact: "order.strength", Lowest: 20000.0, Highest: 500.0}},
				Compute: neededShare,
			}},
		},
		psiOf("strength_then", "strength then", "gained_share"),
		psiOf("strength_needed", "strength needed for that", "needed_share"),
		{
			Name: "hours_to_needed", Title: "age at which it has the strength needed", Unit: "h", Cites: gain,
			Method: "age at this temperature at which the curves reach the share needed",
			Ways:   []Way{{Needs: []string{"figure.needed_share"}, Sharpens: gainSharpens, Compute: hoursToNeeded}},
		},
		{
			Name: "strip_age", Title: "age in hours at 50 °F", Unit: "h", Cites: []limit.Cite{maturity},
			Method: "age times the speed of hydration at this temperature over that at 50 °F",
			Ways: []Way{{
				Needs: []string{"strength.action_after"}, Sharpens: []Bound{{Fact: "cure.temperature", Lowest: -20.0, Highest: 180.0}},
				Compute: func(c *Calc) (Value, error) {
					speed := stripSpeed(c.Num("cure.temperature"))
					v := c.Num("strength.action_after") * speed
					c.Step("%s x %.2f = %s", Q(c.Num("strength.action_after"), "h"), speed, Q(v, "h"))
					return Exact(v), nil
				},
			}},
		},
		{
			Name: "hours_to_strip", Title: "age at which side forms may come off", Unit: "h", Cites: []limit.Cite{maturity},
			Method: "least age above 50 °F, longer where it is colder and shorter where it is warmer by the speed of hydration",
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "cure.temperature", Lowest: 180.0, Highest: -20.0}},
				Compute: func(c *Calc) (Value, error) {
					v := math.Ceil(10*c.Of("strength.strip_hours")/stripSpeed(c.Num("cure.temperature"))) / 10
					c.Step("%s at %s are %s at %s", Q(c.Of("strength.strip_hours"), "h"), Q(50, "F"), Q(v, "h"), Q(c.Num("cure.temperature"), "F"))
					return Exact(v), nil
				},
			}},
		},
		{
			Name: "strength_from_seven_days", Title: "28-day strength as the seven-day test lets expect", Unit: "psi",
			Method: "seven-day test over the share usual at seven days; an estimate, and no acceptance",
			Ways: []Way{{Needs: []string{"strength.seven_day"}, Compute: func(c *Calc) (Value, error) {
				seven := c.Num("strength.seven_day")
				v := Between(100*seven/c.Of("strength.week_share", "most"), 100*seven/c.Of("strength.week_share", "usual"), 100*seven/c.Of("strength.week_share", "least"))
				c.Step("%s over %s to %s: %s to %s", Q(seven, "psi"), Q(c.Of("strength.week_share", "most"), "%"), Q(c.Of("strength.week_share", "least"), "%"), Q(v.Low, "psi"), Q(v.High, "psi"))
				return v, nil
			}}},
		},
	}
}

func psiOf(name, title, share string) Figure {
	return Figure{Name: name, Title: title, Unit: "psi", Method: "share times specified strength",
		Ways: []Way{{Needs: []string{"figure." + share, "order.strength"}, Compute: func(c *Calc) (Value, error) {
			v, f := c.Figure(share), c.Num("order.strength")/100
			c.Step("%s of %s = %s", Q(v.Best, "%"), Q(100*f, "psi"), Q(v.Best*f, "psi"))
			return Between(v.Low*f, v.Best*f, v.High*f), nil
		}}}}
}

func neededShare(c *Calc) (Value, error) {
	action := c.Text("strength.action")
	least, err := c.Limit("strength.needed_share", action)
	if err != nil {
		return Value{}, err
	}
	most, err := c.Limit("strength.most_needed_share", action)
	asked := 100 * c.Num("strength.needed") / c.Num("order.strength")
	share := math.Min(most, math.Max(least, asked))
	if least == most {
		c.Step("usual before that: %s of the specified strength", Q(least, "%"))
	} else {
		c.Step("asked for: %s, from %s to %s of the specified strength: %s", Q(c.Num("strength.needed"), "psi"), Q(least, "%"), Q(most, "%"), Q(share, "%"))
	}
	return Exact(share), err
}

// Activation energies in J/mol: the least and the largest of ASTM C1074 and its common value.
const leastActivation, usualActivation, mostActivation = 33500, 41500, 45000

// mostWarmth is the temperature in °F above which warmth is not counted on for more early strength.
const mostWarmth = 100.0

// gaining gives the share of the 28-day strength at any age in hours, %.
func gaining(c *Calc) func(hours float64) Value {
	at, early := celsius(min(c.Num("cure.temperature"), mostWarmth)), earlyOf(c.Text("mix.cement_type"))
	fastest := early
	if c.Text("cold.accelerator") != "none" {
		fastest = heat.Rapid
	}
	// A mix may lie as far below the curve as the seven-day share of slow mixes below the usual.
	slow := c.Of("strength.week_share", "least") / c.Of("strength.week_share", "usual")
	usual := heat.Arrhenius(usualActivation)(at)
	rates := []float64{heat.Arrhenius(leastActivation)(at), usual, heat.Arrhenius(mostActivation)(at), heat.FreieslebenHansen(at)}
	return func(hours float64) Value {
		v := Between(math.Inf(1), 100*heat.ACI209(hours*usual, early), 0)
		for _, rate := range rates {
			age := hours * rate
			v.Low = min(v.Low, 100*slow*heat.ACI209(age, early), 100*heat.Eurocode(age, early))
			v.High = max(v.High, 100*heat.ACI209(age, fastest), 100*heat.Eurocode(age, fastest))
		}
		return v
	}
}

func earlyOf(cement string) heat.Early {
	switch cement {
	case "III":
		return heat.Rapid
	case "IV", "V", "blended":
		return heat.Slow
	}
	return heat.Ordinary
}

// longestGain is how far ahead the strength needed is looked for, h.
const longestGain = 24 * 365

func hoursToNeeded(c *Calc) (Value, error) {
	need := c.Figure("needed_share").Best
	gained := gaining(c)
	reached := func(of func(Value) float64) float64 { // the first whole hour at which it is there
		return float64(sort.Search(longestGain, func(hour int) bool { return of(gained(float64(hour))) >= need }))
	}
	v := Between(reached(func(v Value) float64 { return v.High }), reached(func(v Value) float64 { return v.Best }), reached(func(v Value) float64 { return v.Low }))
	c.Step("%s of the strength at %s: after %s (%s to %s)", Q(need, "%"), Q(c.Num("cure.temperature"), "F"), Q(v.Best, "h"), Q(v.Low, "h"), Q(v.High, "h"))
	return v, nil
}

// stripSpeed is the speed of hydration at a temperature in °F over that at 50 °F.
func stripSpeed(fahrenheit float64) float64 {
	rate := heat.Arrhenius(usualActivation)
	return rate(celsius(fahrenheit)) / rate(celsius(50))
}
