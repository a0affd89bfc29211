package figure

import (
	"fmt"
	"maps"
	"math"
	"slices"
)

// Several ways of computing a figure say the same thing, but for rounding and for what cannot be known so exactly. This file
// settles on one of them, refuses those that contradict each other, and remembers where another one comes out a little
// otherwise, so that an answer which hangs on that little is not given for certain.

// outcome is what one way of a figure came to.
type outcome struct {
	way int
	*Result
}

// settle takes the first way that gives a value, or the narrowest range, and holds the others against it.
func (s *Sheet) settle(f *Figure, came []outcome, override map[string]any) *Result {
	counts := came[0]
	for _, o := range came[1:] {
		if sharper(o.Result, counts.Result) {
			counts = o
		}
	}
	if override == nil { // values tried at an end may well disagree
		for _, o := range came {
			if o.way != counts.way && !agree(f, counts.Result, o.Result) {
				return &Result{Figure: f, Cites: f.Cites, Problem: fmt.Sprintf(
					"the facts contradict each other: they give a %s of %s and of %s", f.Title, counts.Said(), o.Said())}
			}
		}
	}
	if way, ok := s.chosen[f.Name]; ok {
		if i := slices.IndexFunc(came, func(o outcome) bool { return o.way == way }); i >= 0 {
			return came[i].Result
		}
	}
	if override == nil {
		for _, o := range came {
			if o.way != counts.way && !within(counts.Result, o.Result) {
				s.torn[f.Name] = append(s.torn[f.Name], o.way)
			}
		}
	}
	return counts.Result
}

// Said writes what a result comes to, without its unit.
func (r *Result) Said() string {
	if r.Known {
		return fmt.Sprintf("%.4g", r.Best)
	}
	return fmt.Sprintf("%.4g to %.4g", r.BestLow, r.BestHigh)
}

// within says whether nothing that a result says could be otherwise by another one: it lies in its range.
func within(a, b *Result) bool {
	bestLow, bestHigh := ends(a)
	least, most := ends(b)
	rounding := 1e-9 * (math.Abs(a.Low) + math.Abs(a.High))
	inside := func(low, high, least, most float64) bool { return low >= least-rounding && high <= most+rounding }
	return inside(a.Low, a.High, b.Low, b.High) && inside(bestLow, bestHigh, least, most)
}

// ends gives what the best value of a result lies between.
func ends(r *Result) (low, high float64) {
	if r.Known {
		return r.Best, r.Best
	}
	return r.BestLow, r.BestHigh
}

// Computed is the result of a figure that was computed already, or nil.
func (s *Sheet) Computed(name string) *Result {
	if f, ok := s.set.figures[name]; ok {
		return s.results[f.place]
	}
	return nil
}

// Torn lists, of these figures, those that come out otherwise by another way, with these ways. Figures that were not computed
// are not among them.
func (s *Sheet) Torn(names ...string) map[string][]int {
	var torn map[string][]int
	for name, ways := range s.torn {
		if slices.Contains(names, name) {
			if torn == nil {
				torn = map[string][]int{}
			}
			torn[name] = ways
		}
	}
	return torn
}

// Choosing is the same sheet with another way counting for some figures.
func (s *Sheet) Choosing(ways map[string]int) *Sheet {
	other := s.set.Sheet(s.facts).Without(s.never)
	other.chosen, other.memory, other.terse = maps.Clone(ways), s.memory, s.terse
	return other
}
