package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
)

// coverNeededFigures are those of the cover that keeps a placement from freezing.
func coverNeededFigures() []Figure {
	return []Figure{
		{
			Name: "r_needed", Title: "R-value of the cover needed", Unit: "R",
			Method: "least cover, found by trying, under which no place comes down to {35 F} before it has 500 psi by the slowest of three methods; rounded up to a tenth, and {100 R} where none is enough",
			Cites:  curves,
			Within: noContradiction,
			Ways: coldWays(coldNeeds, gainBounds, func(c *Calc) (Value, error) {
				need, err := findCover(c)
				if err == nil && !need.Possible {
					return Exact(noCover), nil
				}
				least, _ := leastInFrost(c)
				out := max(0, roundedR(need.R*(1-0.1*corner(c)))-0.1*corner(c)) // at an end of the unknown facts a little outward
				return Exact(math.Max(out, least)), err
			}),
		},
		{
			Name: "cover_hours_needed", Title: "hours that the cover must stay", Unit: "h",
			Method: "time to 500 psi under the least cover, by the slowest of three methods; rounded up to an hour",
			Cites:  curves,
			Within: noContradiction,
			Ways: coldWays(coldNeeds, gainBounds, func(c *Calc) (Value, error) {
				need, err := findCover(c)
				_, least := leastInFrost(c)
				return Exact(math.Max(math.Ceil(math.Min(need.Hours, window)), least)), err
			}),
		},
		{
			Name: "lowest_with_needed_cover", Title: "lowest slab temperature with the cover needed, until it has 500 psi", Unit: "F",
			Method: runMethod,
			Cites:  curves,
			Within: noContradiction,
			Ways: coldWays(coldNeeds, gainBounds, func(c *Calc) (Value, error) {
				need, err := findCover(c)
				if err == nil && !need.Possible {
					err = fmt.Errorf("no cover alone keeps it from freezing until it has 500 psi: heat it")
				}
				return Exact(fahrenheit(need.Lowest)), err
			}),
		},
	}
}

// leastInFrost is the cover and the hours of it that a thin section gets in hard frost even where it would not freeze: R and h.
func leastInFrost(c *Calc) (r, hours float64) {
	if lowAhead(c) >= c.Of("cold.hard_frost") || c.Num("member.thickness") >= c.Of("cold.section_classes", "thin") {
		return 0, 0
	}
	r, hours = c.Of("cold.least_cover_in_frost"), 24*c.Of("cold.least_days_in_frost")
	c.Step("in hard frost a thin section gets %s for %s at the least", Q(r, "R"), Q(hours, "h"))
	return r, hours
}

// noCover stands for a cover that no thickness is enough of, R: the most that facts.yaml takes as possible.
const noCover = 100.0

func roundedR(si float64) float64 { return math.Ceil(si/rsi*10-1e-9) / 10 }

func findCover(c *Calc) (heat.Need, error) {
	j, err := placement(c)
	if err != nil {
		return heat.Need{}, err
	}
	if j.Gain, err = gain(c, true); err != nil {
		return heat.Need{}, err
	}
	if j.Share, err = safeShare(c); err != nil {
		return heat.Need{}, err
	}
	hold := c.Of("cold.hold_temperature")
	j.Margin = celsius(hold) - j.Section.Concrete.Freezing
	key := fmt.Sprintf("cover %s %+v %g %g", j.key, j.Gain, j.Share, j.Margin)
	found, err := c.remember(key, func() (any, error) { return j.LeastCover() })
	need, _ := found.(heat.Need)
	switch {
	case err != nil:
		return need, err
	case !need.Possible:
		c.Step("no cover alone keeps it above %s until it has 500 psi: warm what it lies on, place it warmer, or heat an enclosure", Q(hold, "F"))
	case need.R == 0:
		c.Step("no cover is needed against freezing")
	default:
		c.Step("a cover of %s holds it above %s until it has its strength after %s", Q(roundedR(need.R), "R"), Q(fahrenheit(need.Lowest), "F"), Q(need.Hours, "h"))
		sayThickness(c, roundedR(need.R))
		c.Assume("corners lose heat on three sides: lay the cover double there and let it reach past them")
	}
	return need, nil
}

// sayThickness says how thick a cover of so much R is, of what covers are made of.
func sayThickness(c *Calc, r float64) {
	inch, err := c.Table("cold.r_per_inch")
	if err != nil {
		return
	}
	c.Step("that is %s of insulating blanket, %s of foam board or %s of dry straw", Q(tenths(r/inch["blankets"]), "in"), Q(tenths(r/inch["foam board"]), "in"), Q(tenths(r/inch["straw"]), "in"))
}

// tenths rounds up to a tenth.
func tenths(v float64) float64 { return math.Ceil(v*10-1e-9) / 10 }
