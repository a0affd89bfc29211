package figure

import (
	"math"

	"hearsay/internal/limit"
)

// shrinkageTimeFigures are those of drying shrinkage at the age when joints are filled: how much of it is over, and how
// much is still to come.
func shrinkageTimeFigures() []Figure {
	cured := Bound{Fact: "cure.days", Lowest: 0.0, Highest: 365.0}
	return []Figure{
		{
			Name: "shrinkage_to_come_aci209", Title: "share of the drying shrinkage still to come by ACI 209", Unit: "%",
			Method: "35 / (35 + days of drying): moist-cured concrete of any thickness",
			Cites:  []limit.Cite{aci209("209.2R-08, A.1.1")},
			Ways: []Way{{Needs: []string{"joints.filled_after"}, Sharpens: []Bound{cured}, Compute: func(c *Calc) (Value, error) {
				days := dryingDays(c)
				share := 100 * 35 / (35 + days)
				c.Step("35 / (35 + %.3g days of drying) = %s", days, Q(share, "%"))
				return Exact(share), nil
			}}},
		},
		{
			Name: "shrinkage_to_come_mc90", Title: "share of the drying shrinkage still to come by CEB MC90-99", Unit: "%",
			Method: "1 - (t / (350 × (volume to surface / 50 mm)² + t))^½, t the days of drying",
			Cites:  []limit.Cite{{Source: "ceb-mc90", Where: "drying part, as in ACI 209.2R-08, A.3", Basis: limit.Memory}, aci209("209.2R-08, appendix C (worked example)")},
			Ways: []Way{{
				Needs:    []string{"joints.filled_after", "member.thickness"},
				Sharpens: []Bound{cured, {Fact: "floor.drying_sides", Lowest: "both", Highest: "one"}},
				Compute: func(c *Calc) (Value, error) {
					days, size := dryingDays(c), dryingDepth(c)*millimeter/50
					share := 100 * (1 - math.Sqrt(days/(350*size*size+days)))
					c.Step("1 - (%.3g / (350 × %.2f² + %.3g))^½ = %s", days, size, days, Q(share, "%"))
					return Exact(share), nil
				},
			}},
		},
		{
			Name: "shrinkage_to_come", Title: "share of the drying shrinkage still to come when the joints are filled", Unit: "%",
			Method: "the range over ACI 209 and CEB MC90-99, best their mean; the second lets thick slabs dry more slowly",
			Ways: []Way{{Needs: []string{"figure.shrinkage_to_come_aci209", "figure.shrinkage_to_come_mc90"}, Compute: func(c *Calc) (Value, error) {
				a, m := c.Figure("shrinkage_to_come_aci209").Best, c.Figure("shrinkage_to_come_mc90").Best
				c.Step("ACI 209: %s; CEB MC90-99: %s", Q(a, "%"), Q(m, "%"))
				return Between(math.Min(a, m), (a+m)/2, math.Max(a, m)), nil
			}}},
		},
		{
			Name: "shrinkage_then", Title: "drying shrinkage reached when the joints are filled", Unit: "millionths",
			Method: "ultimate drying shrinkage less the share still to come, by ACI 209 and by CEB MC90-99; best their mean",
			Ways: []Way{{
				Needs: []string{"figure.shrinkage_aci209", "figure.shrinkage_mc90", "figure.shrinkage_to_come_aci209", "figure.shrinkage_to_come_mc90"},
				Compute: func(c *Calc) (Value, error) {
					a := c.Figure("shrinkage_aci209").Best * (1 - c.Figure("shrinkage_to_come_aci209").Best/100)
					m := c.Figure("shrinkage_mc90").Best * (1 - c.Figure("shrinkage_to_come_mc90").Best/100)
					c.Step("ACI 209: %s; CEB MC90-99: %s", Q(a, "millionths"), Q(m, "millionths"))
					return Between(math.Min(a, m), (a+m)/2, math.Max(a, m)), nil
				},
			}},
		},
	}
}

// dryingDays counts from the end of curing.
func dryingDays(c *Calc) float64 { return math.Max(0, c.Num("joints.filled_after")-c.Num("cure.days")) }
