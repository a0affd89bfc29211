package figure

import (
	"math"

	"hearsay/internal/limit"
)

// What a gallon does: slump, strength, cement and shrinkage by the water put into a yard. The published rules differ, so
// each is a range.

// dose is an amount of water in a yard: the facts it takes, and the gallons in a yard it makes.
type dose struct {
	needs   []string
	perYard func(c *Calc) float64
}

// onLoad is water poured into a load.
func onLoad(fact string) dose {
	return dose{[]string{fact, "load.volume"}, func(c *Calc) float64 {
		rate := c.Num(fact) / c.Num("load.volume")
		c.Step("%s in %s = %s", Q(c.Num(fact), "gal"), Q(c.Num("load.volume"), "yd3"), Q(rate, "gal/yd3"))
		return rate
	}}
}

// inYard is water known by the yard from another figure, in gal/yd3.
func inYard(name string) dose {
	return dose{[]string{"figure." + name}, func(c *Calc) float64 { return c.Figure(name).Best }}
}

func slumpGain(name, title string, d dose) Figure {
	return Figure{Name: name, Title: title, Unit: "in", Method: "gallons in a yard times the slump that a gallon gives: less in stiff concrete, more in wet",
		Ways: []Way{{Needs: d.needs, Compute: func(c *Calc) (Value, error) {
			v := times(c, d.perYard(c), "in", "water.slump_per_gallon_least", "water.slump_per_gallon", "water.slump_per_gallon_most")
			if cone := c.Of("water.cone"); v.High > cone {
				c.Step("no slump is more than the cone is high, %s", Q(cone, "in"))
				v = Between(min(v.Low, cone), min(v.Best, cone), cone)
			}
			return v, nil
		}}}}
}

func strengthLoss(name, title string, d dose) Figure {
	return Figure{Name: name, Title: title, Unit: "psi", Method: "gallons in a yard times the strength that a gallon costs; the published rules differ",
		Cites: []limit.Cite{{Source: "yeh", Where: "80 plain mixes at 28 days: about 170 psi for a gallon at 4500 psi", Basis: limit.Published}},
		Ways: []Way{{Needs: d.needs, Compute: func(c *Calc) (Value, error) {
			return times(c, d.perYard(c), "psi", "water.strength_per_gallon_least", "water.strength_per_gallon", "water.strength_per_gallon_most"), nil
		}}}}
}

// times multiplies a rate with the least, usual and most effect of one; a negative rate turns the range round.
func times(c *Calc, rate float64, unit, least, usual, most string) Value {
	low, best, high := rate*c.Of(least), rate*c.Of(usual), rate*c.Of(most)
	if low > high {
		low, high = high, low
	}
	c.Step("%s x %s to %s for each = %s to %s", Q(rate, "gal/yd3"), Q(c.Of(least), unit), Q(c.Of(most), unit), Q(low, unit), Q(high, unit))
	return Between(low, best, high)
}

// intoRest is water poured into what is left of a load.
func intoRest() dose {
	return dose{[]string{"water.added", "load.volume", "water.discharged"}, func(c *Calc) float64 {
		left, err := leftInDrum(c)
		if err != nil {
			return math.NaN()
		}
		c.Step("%s in the %s that are left = %s", Q(c.Num("water.added"), "gal"), Q(left, "yd3"), Q(c.Num("water.added")/left, "gal/yd3"))
		return c.Num("water.added") / left
	}}
}

// gallonFigures are the effects of the water added at the site.
func gallonFigures() []Figure {
	added := onLoad("water.added")
	return []Figure{
		slumpGain("slump_gained", "slump gained by the water added", added),
		strengthLoss("strength_lost", "strength lost by the water added", added),
		strengthLoss("rest_strength_lost", "strength lost by the rest of the load", intoRest()),
		strengthLoss("wash_strength_lost", "strength lost by the wash water", onLoad("water.wash")),
		{
			Name: "shrinkage_added", Title: "drying shrinkage added by the water", Unit: "%",
			Method: "gallons in a yard times the drying shrinkage that a gallon adds; best halfway between two rules that disagree",
			Ways: []Way{{Needs: added.needs, Compute: func(c *Calc) (Value, error) {
				rate := added.perYard(c)
				low, high := rate*c.Of("water.shrinkage_per_gallon_least"), rate*c.Of("water.shrinkage_per_gallon_most")
				c.Step("%s to %s more", Q(low, "%"), Q(high, "%"))
				return Between(low, (low+high)/2, high), nil
			}}},
		},
		{
			Name: "cement_wasted", Title: "cement thrown away by the water added", Unit: "lb",
			Method: "cement that would have to go with the water to hold the ratio of the mix, and the rule of a quarter bag for a gallon", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"water.added", "figure.wcm"}, Compute: cementWasted}},
		},
		{
			Name: "cement_wasted_bags", Title: "cement thrown away by the water added, in bags", Unit: "1",
			Method: "pounds of cement thrown away divided by the weight of a bag",
			Ways: []Way{{Needs: []string{"figure.cement_wasted"}, Compute: func(c *Calc) (Value, error) {
				lb, bag := c.Figure("cement_wasted"), c.Of("mix.bag")
				c.Step("%s / %s for a bag = %.2g bags", Q(lb.Best, "lb"), Q(bag, "lb"), lb.Best/bag)
				return Between(lb.Low/bag, lb.Best/bag, lb.High/bag), nil
			}}},
		},
		{
			Name: "cement_wasted_cost", Title: "price of the cement thrown away by the water added", Unit: "$",
			Method: "pounds of cement thrown away times the price of cement", Cites: sum,
			Ways: []Way{{Needs: []string{"figure.cement_wasted", "price.cement"}, Compute: func(c *Calc) (Value, error) {
				lb, price := c.Figure("cement_wasted"), c.Num("price.cement")
				c.Step("%s x %s = %s", Q(lb.Best, "lb"), Q(price, "$/lb"), Q(lb.Best*price, "$"))
				return Between(lb.Low*price, lb.Best*price, lb.High*price), nil
			}}},
		},
	}
}

func cementWasted(c *Calc) (Value, error) {
	gallons, wcm := c.Num("water.added"), c.Figure("wcm").Best
	hold, rule := gallons*c.Of("water.gallon")/wcm, gallons*c.Of("water.quarter_bag")
	c.Step("to hold w/cm %.3f: %s x %s / %.3f = %s", wcm, Q(gallons, "gal"), Q(c.Of("water.gallon"), "lb/gal"), wcm, Q(hold, "lb"))
	c.Step("by the rule of a quarter bag: %s x %s = %s", Q(gallons, "gal"), Q(c.Of("water.quarter_bag"), "lb/gal"), Q(rule, "lb"))
	return Between(min(hold, rule), hold, max(hold, rule)), nil
}
