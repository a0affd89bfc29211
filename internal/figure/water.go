package figure

import (
	"fmt"
	"math"

	"hearsay/internal/limit"
)

// waterFigures are those of water that goes in at the site: how much may, and when.
func waterFigures() []Figure {
	return []Figure{
		{
			Name: "ticket_water", Title: "water the ticket allows on the load", Unit: "gal",
			Method: "what the ticket says may still be added, or what was held back at the plant",
			Cites:  []limit.Cite{{Source: "nrmca-cip", Where: "CIP 26", Basis: limit.Published}},
			Ways: []Way{
				{Needs: []string{"water.allowed"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("water.allowed")), nil }},
				{Needs: []string{"water.withheld"}, Compute: func(c *Calc) (Value, error) {
					c.Step("held back at the plant: %s", Q(c.Num("water.withheld"), "gal"))
					return Exact(c.Num("water.withheld")), nil
				}},
			},
		},
		{
			Name: "water_added_per_yard", Title: "water added to each yard", Unit: "gal/yd3",
			Method: "water added at the site divided by the yards it goes into", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"water.added", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				v := c.Num("water.added") / c.Num("load.volume")
				c.Step("%s / %s = %s", Q(c.Num("water.added"), "gal"), Q(c.Num("load.volume"), "yd3"), Q(v, "gal/yd3"))
				return Exact(v), nil
			}}},
		},
		{
			Name: "ticket_water_left", Title: "held-back water left, gallons still allowed after what is added", Unit: "gal",
			Method: "water the ticket allows less the water added; never below none",
			Ways: []Way{{Needs: []string{"figure.ticket_water", "water.added"}, Compute: func(c *Calc) (Value, error) {
				ticket, added := c.Figure("ticket_water").Best, c.Num("water.added")
				c.Step("%s - %s = %s", Q(ticket, "gal"), Q(added, "gal"), Q(ticket-added, "gal"))
				return Exact(math.Max(0, ticket-added)), nil
			}}},
		},
		{
			Name: "ratio_water", Title: "water the water-cement ratio still allows on the load", Unit: "gal",
			Method: "ratio ordered less ratio of the mix, times the cementitious material of the load; never below none", Cites: ratioByMass,
			Ways: []Way{{Needs: []string{"figure.wcm", "figure.cementitious", "order.ratio_limit", "load.volume"}, Compute: ratioWater}},
		},
		{
			Name: "water_allowed", Title: "water still allowed on the load", Unit: "gal",
			Method: "the lesser of what the ratio ordered and what the ticket allow; where only one of them is known, no more than that", Cites: ratioByMass,
			Within: noContradiction, // what one of them allows is no contradiction to the lesser of both
			Ways: []Way{
				{Needs: []string{"figure.ratio_water", "figure.ticket_water"}, Compute: func(c *Calc) (Value, error) {
					ratio, ticket := c.Figure("ratio_water").Best, c.Figure("ticket_water").Best
					c.Step("the ratio allows %s, the ticket %s: the lesser counts", Q(ratio, "gal"), Q(ticket, "gal"))
					return Exact(math.Min(ratio, ticket)), nil
				}},
				atMost("ratio_water", "what the ticket allows is not known and may be less"),
				atMost("ticket_water", "what the ratio allows is not known and may be less"),
			},
		},
		{
			Name: "share_discharged", Title: "share of the load discharged before the water went in", Unit: "%",
			Method: "yards discharged divided by the yards of the load",
			Cites:  []limit.Cite{{Source: "astm-c94", Where: "clause on water added at the site", Edition: "about 2012", Basis: limit.Published}},
			Ways: []Way{{Needs: []string{"water.discharged", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				if _, err := leftInDrum(c); err != nil {
					return Value{}, err
				}
				share := 100 * c.Num("water.discharged") / c.Num("load.volume")
				c.Step("%s of %s = %.0f %%", Q(c.Num("water.discharged"), "yd3"), Q(c.Num("load.volume"), "yd3"), share)
				return Exact(share), nil
			}}},
		},
		{
			Name: "revolutions_since", Title: "revolutions at mixing speed after the addition", Unit: "rev",
			Method: "as counted, or minutes of mixing times the speed of the drum",
			Cites:  []limit.Cite{{Source: "astm-c94", Where: "section 11.7; mixing speed", Edition: "C94-90", Basis: limit.Published}},
			Ways: []Way{
				{Needs: []string{"water.revolutions_after"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("water.revolutions_after")), nil }},
				{
					Needs:    []string{"water.minutes_after"},
					Sharpens: []Bound{{Fact: "water.mixing_speed", Lowest: 1.0, Highest: 30.0}},
					Compute: func(c *Calc) (Value, error) {
						turned := c.Num("water.minutes_after") * c.Num("water.mixing_speed")
						c.Step("%s x %s = %s", Q(c.Num("water.minutes_after"), "min"), Q(c.Num("water.mixing_speed"), "rpm"), Q(turned, "rev"))
						return Exact(turned), nil
					},
				},
			},
		},
		{
			Name: "revolutions_still_to_turn", Title: "revolutions still to turn", Unit: "rev",
			Method: "least revolutions after an addition less those turned; never below none",
			Ways: []Way{{Needs: []string{"figure.revolutions_since"}, Compute: func(c *Calc) (Value, error) {
				least, turned := c.Of("water.remix_revolutions"), c.Figure("revolutions_since").Best
				still := math.Max(0, least-turned)
				c.Step("%s - %s = %s", Q(least, "rev"), Q(turned, "rev"), Q(still, "rev"))
				return Exact(still), nil
			}}},
		},
		{
			Name: "remix_minutes", Title: "minutes of mixing that an addition needs", Unit: "min",
			Method: "least revolutions after an addition divided by the speed of the drum",
			Ways: []Way{{Needs: []string{"water.mixing_speed"}, Compute: func(c *Calc) (Value, error) {
				least := c.Of("water.remix_revolutions")
				v := least / c.Num("water.mixing_speed")
				c.Step("%s / %s = %s", Q(least, "rev"), Q(c.Num("water.mixing_speed"), "rpm"), Q(v, "min"))
				return Exact(v), nil
			}}},
		},
	}
}

// atMost is one of the two limits on water where the other is not known.
func atMost(name, caveat string) Way {
	return Way{Needs: []string{"figure." + name}, Compute: func(c *Calc) (Value, error) {
		v := c.Figure(name).Best
		if v > 0 {
			c.Assume("%s", caveat)
		}
		return Between(0, v, v), nil
	}}
}

func ratioWater(c *Calc) (Value, error) {
	wcm, most, cement := c.Figure("wcm").Best, c.Num("order.ratio_limit"), c.Figure("cementitious").Best
	gallon, yards := c.Of("water.gallon"), c.Num("load.volume")
	if wcm >= most {
		c.Step("the mix has %.3f and %.3f is ordered: no room for water", wcm, most)
		return Exact(0), nil
	}
	gallons := down((most-wcm)*cement*yards/gallon, 0.01)
	c.Step("(%.3f - %.3f) x %s x %s / %s = %s", most, wcm, Q(cement, "lb/yd3"), Q(yards, "yd3"), Q(gallon, "lb/gal"), Q(gallons, "gal"))
	return Exact(gallons), nil
}

// leftInDrum is what was not discharged when the water went in, in cubic yards.
func leftInDrum(c *Calc) (float64, error) {
	left := c.Num("load.volume") - c.Num("water.discharged")
	if left <= 0 {
		return 0, fmt.Errorf("%s discharged leaves nothing of a load of %s: correct one of them", Q(c.Num("water.discharged"), "yd3"), Q(c.Num("load.volume"), "yd3"))
	}
	return left, nil
}
