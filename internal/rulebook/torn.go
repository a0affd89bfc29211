package rulebook

import (
	"context"
	"fmt"
	"maps"
	"slices"
)

// mostTorn is how many readings of facts that nearly agree are held against each other, beyond one figure at a time.
const mostTorn = 16

// hold judges a practice again with every other way that its figures could be computed in and that comes out a little
// otherwise: facts that say the same thing and differ by rounding. Where the answer hangs on that, it is not given: the
// facts contradict each other here, which is said.
func (c *court) hold(ctx context.Context, one *Judgement) error {
	for _, ways := range readings(c.sheet.Torn(one.Practice.below...)) {
		other := &court{book: c.book, job: c.job, sheet: c.sheet.Choosing(ways)}
		if c.alike(other, one.Practice.figures) {
			continue
		}
		two, err := other.status(ctx, one.Practice)
		if err != nil {
			return err
		}
		if two.Status != one.Status || !slices.Equal(two.Reasons, one.Reasons) {
			c.undecide(one, two, slices.Sorted(maps.Keys(ways)), other)
			return nil
		}
	}
	return nil
}

// alike says that the figures that were needed come out the same on both sheets.
func (c *court) alike(other *court, names []string) bool {
	return !slices.ContainsFunc(names, func(name string) bool {
		a := c.sheet.Computed(name)
		if a == nil {
			return false
		}
		b := other.sheet.Result(name)
		return a.Known != b.Known || a.Bounded != b.Bounded || a.Value != b.Value || a.BestLow != b.BestLow || a.BestHigh != b.BestHigh
	})
}

// undecide leaves open a practice that comes out one way or the other by which of the facts is believed.
func (c *court) undecide(one, two *Judgement, names []string, other *court) {
	one.Status, one.Reasons, one.Concerns = Ask, nil, one.Concerns && two.Concerns
	o := Open{Reason: "it comes out otherwise by which of the facts is taken"}
	for _, name := range names {
		a, b := c.sheet.Result(name), other.sheet.Result(name)
		o.NoFigure = append(o.NoFigure, fmt.Sprintf("the facts contradict each other: they give a %s of %s and of %s, and the answer hangs on which; correct one of them",
			a.Figure.Title, a.Said(), b.Said()))
	}
	one.Open = append(one.Open, o)
}

// readings lists the choices of ways to try: every combination, or where those are too many, one figure at a time and all.
func readings(torn map[string][]int) []map[string]int {
	all := []map[string]int{{}}
	names := slices.Sorted(maps.Keys(torn))
	for _, name := range names {
		var more []map[string]int
		for _, choice := range all {
			for _, way := range torn[name] {
				with := maps.Clone(choice)
				with[name] = way
				more = append(more, with)
			}
		}
		if all = append(all, more...); len(all) > mostTorn {
			return oneByOne(torn)
		}
	}
	return all[1:]
}

func oneByOne(torn map[string][]int) []map[string]int {
	var all []map[string]int
	together := map[string]int{}
	for name, ways := range torn {
		for _, way := range ways {
			all = append(all, map[string]int{name: way})
		}
		together[name] = ways[0]
	}
	return append(all, together)
}
