package figure

import (
	"math"

	"hearsay/internal/heat"
	"hearsay/internal/limit"
)

// jointCutFigures are those of how deep a joint is, when it is sawn, and the dowels across it.
func jointCutFigures() []Figure {
	saw := Bound{Fact: "joints.saw", Lowest: "early-entry", Highest: "conventional"}
	air := Bound{Fact: "weather.air", Lowest: 135.0, Highest: -70.0}
	stretched := limit.Cite{Source: "freiesleben", Where: "rate of hardening by temperature", Basis: limit.Memory}
	return []Figure{
		{
			Name: "least_joint_depth", Title: "least depth of the joint", Unit: "in",
			Method: "a quarter of the slab; an early-entry saw has its own least depth, and so has a groover",
			Ways:   []Way{{Needs: []string{"member.thickness"}, Sharpens: []Bound{saw}, Compute: leastJointDepth}},
		},
		{
			Name: "saw_latest", Title: "latest time to saw after finishing", Unit: "h",
			Method: "the latest hour of this saw at {60 F} and warmer; in colder air longer by as much as hardening is slower",
			Cites:  []limit.Cite{stretched},
			Ways: []Way{{Sharpens: []Bound{saw, air}, Compute: func(c *Calc) (Value, error) {
				return sawTime(c, "latest", "joints.saw_cool")
			}}},
		},
		{
			Name: "saw_first", Title: "earliest time to saw after finishing", Unit: "h",
			Method: "the earliest hour of this saw at {90 F} and warmer; in cooler air longer by as much as hardening is slower",
			Cites:  []limit.Cite{stretched},
			Ways: []Way{{Sharpens: []Bound{saw, air}, Compute: func(c *Calc) (Value, error) {
				return sawTime(c, "first", "joints.saw_hot")
			}}},
		},
		{
			Name: "dowel_diameter", Title: "diameter of dowels", Unit: "in",
			Method: "by thickness from UFC 3-260-02; ACI 360R and an older table for floors are the ends of the range, since the three disagree",
			Ways:   []Way{{Needs: []string{"member.thickness"}, Compute: dowels}},
		},
	}
}

func leastJointDepth(c *Calc) (Value, error) {
	l, t := lookup{c: c}, c.Num("member.thickness")
	v := l.number("joints.least_depth_share") * t
	switch saw := c.Text("joints.saw"); {
	case saw == "early-entry" && t <= l.number("joints.thickest_early_entry"):
		v = l.number("joints.least_early_entry")
		c.Step("early-entry saw: %s", Q(v, "in"))
	case saw == "groover":
		c.Step("the larger of %s and a quarter of %s", Q(l.number("joints.least_groove"), "in"), Q(t, "in"))
		v = math.Max(v, l.number("joints.least_groove"))
	default:
		c.Step("a quarter of %s = %s", Q(t, "in"), Q(v, "in"))
	}
	return Exact(v), l.err
}

// sawTime stretches the hour of a saw from the temperature it is given for to the colder air of the job.
func sawTime(c *Calc, end, given string) (Value, error) {
	l, saw := lookup{c: c}, c.Text("joints.saw")
	if saw == "groover" {
		saw = "conventional"
	}
	hours, from := l.number("joints.saw_window", saw, end), l.number(given)
	air := math.Max(c.Num("weather.air"), l.number("joints.saw_coldest"))
	if air >= from {
		c.Step("%s saw: %s", saw, Q(hours, "h"))
		return Exact(hours), l.err
	}
	slower := heat.FreieslebenHansen(celsius(from)) / heat.FreieslebenHansen(celsius(air))
	c.Step("%s saw: %s at %s; at %s concrete hardens %.2f times slower: %s", saw, Q(hours, "h"), Q(from, "F"), Q(air, "F"), slower, Q(hours*slower, "h"))
	return Exact(hours * slower), l.err
}

func dowels(c *Calc) (Value, error) {
	l, t := lookup{c: c}, c.Num("member.thickness")
	row := l.below("joints.dowels_ufc", t)
	best := row["diameter"]
	low, high := best, best
	c.Step("UFC 3-260-02: %s diameter, %s long, every %s", Q(best, "in"), Q(row["length"], "in"), Q(row["spacing"], "in"))
	for _, other := range []struct{ path, name string }{{"joints.dowels_aci", "ACI 360R"}, {"joints.dowels_floor", "older table for floors"}} {
		o := lookup{c: c}
		row := o.from(other.path, t)
		if o.err != nil || t > 11 {
			continue
		}
		low, high = math.Min(low, row["diameter"]), math.Max(high, row["diameter"])
		c.Step("%s: %s diameter, %s long, every %s", other.name, Q(row["diameter"], "in"), Q(row["length"], "in"), Q(row["spacing"], "in"))
	}
	return Between(low, best, high), l.err
}
