package figure

import (
	"fmt"
	"maps"
	"math"
	"slices"
)

// wholeSpacing is how far apart bars of an area in in² may lie to give the steel needed, in whole inches.
func wholeSpacing(c *Calc, bar float64, need Value) (Value, error) {
	farthest, err := c.Limit("steel.farthest_bars")
	at := func(area float64) float64 { return math.Min(farthest, math.Floor(12*bar/area+1e-9)) }
	c.Step("bars of %s for %s: every %s at most", Q(bar, "in2"), Q(need.Best, "in2/ft"), Q(at(need.Best), "in"))
	return Between(at(need.High), at(need.Best), at(need.Low)), err
}

// barsToUse chooses the smallest bar that need not lie closer than a limit, and lists what else would do.
func barsToUse(c *Calc) (Value, error) {
	need := c.Figure("steel_needed")
	l := lookup{c: c}
	closest, farthest := l.number("steel.closest_bars"), l.number("steel.farthest_bars")
	var chosen Value
	for _, size := range []string{"3", "4", "5", "6", "7", "8"} {
		area := l.number("steel.bar_area", size)
		far := math.Floor(12*area/need.Best + 1e-9)
		if l.err != nil || far < closest {
			continue
		}
		at := math.Min(far, farthest)
		c.Step("#%s bars of %s for %s: every %s; every %s gives %s", size, Q(area, "in2"), Q(need.Best, "in2/ft"), Q(far, "in"), Q(at, "in"), Q(12*area/at, "in2/ft"))
		if chosen.Best == 0 {
			chosen = Between(math.Min(farthest, math.Floor(12*area/need.High)), at, math.Min(farthest, math.Floor(12*area/need.Low)))
		}
	}
	mesh(c, need.Best)
	if l.err == nil && chosen.Best == 0 {
		l.err = fmt.Errorf("even #8 bars would lie closer than %g in: this much steel is for an engineer to lay out", closest)
	}
	return chosen, l.err
}

// mesh names the lightest common welded wire mesh that gives an area.
func mesh(c *Calc, area float64) {
	meshes, err := c.Table("steel.mesh_area")
	if err != nil {
		return
	}
	names := slices.SortedFunc(maps.Keys(meshes), func(a, b string) int {
		if meshes[a] != meshes[b] {
			return int(math.Copysign(1, meshes[a]-meshes[b]))
		}
		return len(a) - len(b)
	})
	for _, name := range names {
		if meshes[name] >= area {
			c.Step("or welded wire %s: %s", name, Q(meshes[name], "in2/ft"))
			return
		}
	}
	c.Step("no common welded wire mesh gives that much: the heaviest has %s", Q(meshes[names[len(names)-1]], "in2/ft"))
}
