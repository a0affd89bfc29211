package figure

import (
	"maps"
	"math"
	"slices"
)

// Where facts that only sharpen a figure are unknown it is a range. This file computes the ends of that range, and finds
// the facts that make it one.

// run computes one way. Where facts that sharpen it, or a figure it needs, are unknown, it is computed at both ends of
// each and the result is the range of what comes out.
func (s *Sheet) run(f *Figure, w *Way, override map[string]any) *Result {
	ends, missing := s.ends(w, override)
	if len(missing) == 0 {
		return s.once(f, w, override)
	}
	r := &Result{Figure: f, Bounded: true, Missing: sorted(missing)}
	r.Low, r.High = math.Inf(1), math.Inf(-1)
	r.BestLow, r.BestHigh = r.Low, r.High
	for i, end := range ends {
		one := s.once(f, w, end)
		if one.Problem != "" {
			return s.failing(f, w, ends, one, r.Missing)
		}
		r.Low, r.High = math.Min(r.Low, one.Low), math.Max(r.High, one.High)
		r.BestLow, r.BestHigh = math.Min(r.BestLow, one.Best), math.Max(r.BestHigh, one.Best)
		r.Cites, r.Assumed = mergeCites(r.Cites, one.Cites), mergeText(r.Assumed, one.Assumed)
		r.Courses = spread(r.Courses, one.Courses)
		if i == 0 {
			r.Working = slices.Clone(one.Working)
		}
		// Only what holds at every end is working; the rest would show values that nobody stated.
		r.Working = slices.DeleteFunc(r.Working, func(step string) bool { return !slices.Contains(one.Working, step) })
	}
	r.Best = (r.BestLow + r.BestHigh) / 2
	if r.BestLow == r.BestHigh && s.alike(f, w, ends) { // the unknown facts do not matter to it
		r.Known, r.Bounded, r.Missing = true, false, nil
	}
	return r
}

// failing is a way that comes to nothing at an end: unknown, since other values may do better, or not to be computed where
// it fails for the same reason at every end.
func (s *Sheet) failing(f *Figure, w *Way, ends []map[string]any, one *Result, missing []string) *Result {
	same := func(end map[string]any) bool { return s.tried(f, w, end).Problem == one.Problem }
	if slices.ContainsFunc(ends, func(end map[string]any) bool { return !same(end) }) {
		return &Result{Figure: f, Cites: one.Cites, Missing: missing}
	}
	return &Result{Figure: f, Cites: one.Cites, Problem: one.Problem}
}

// alike says whether a way comes out the same at all its ends.
func (s *Sheet) alike(f *Figure, w *Way, ends []map[string]any) bool {
	first := s.tried(f, w, ends[0]).Value
	return !slices.ContainsFunc(ends, func(end map[string]any) bool { return s.tried(f, w, end).Value != first })
}

// Lacks lists the facts that could still change a figure, sorted: the missing ones, without those that make no difference
// at either end of a range.
func (s *Sheet) Lacks(name string) []string {
	return s.lacks(name, func(a, b Value) bool { return a == b })
}

// LacksForBest lists those of them that could still change its best value.
func (s *Sheet) LacksForBest(name string) []string {
	return s.lacks(name, func(a, b Value) bool { return a.Best == b.Best })
}

// LacksTo lists those that could still change whether a figure meets a condition, and not only move it on one side of it.
// Where no fact turns it alone, it is all of Lacks.
func (s *Sheet) LacksTo(name string, holds func(Value) bool) []string {
	if turning := s.lacks(name, func(a, b Value) bool { return holds(a) == holds(b) }); len(turning) > 0 {
		return turning
	}
	return s.Lacks(name)
}

// lacks lists the facts that could still change a figure in more than is the same, without those that can have no value.
func (s *Sheet) lacks(name string, same func(a, b Value) bool) []string {
	return slices.DeleteFunc(sorted(s.mattering(s.Result(name), same)), func(fact string) bool { return s.never(fact) != "" })
}

func (s *Sheet) mattering(r *Result, same func(a, b Value) bool) []string {
	if !r.Bounded {
		return r.Missing
	}
	var matter []string
	for i := range r.Figure.Ways {
		w := &r.Figure.Ways[i]
		if missing, why := s.missing(w, nil); len(missing) == 0 && why == "" {
			matter = append(matter, s.matter(r.Figure, w, r.Missing, same)...)
		}
	}
	return matter
}

// matter picks those of the missing facts of a way that change its result alone, the others being at an end of theirs.
func (s *Sheet) matter(f *Figure, w *Way, missing []string, same func(a, b Value) bool) []string {
	var matter []string
	ends, _ := s.ends(w, nil)
	for _, fact := range missing {
		if slices.ContainsFunc(ends, func(end map[string]any) bool { return s.changes(f, w, fact, end, ends, same) }) {
			matter = append(matter, fact)
		}
	}
	return matter
}

// changes says whether a fact with its value from another end makes a difference at this end.
func (s *Sheet) changes(f *Figure, w *Way, fact string, end map[string]any, ends []map[string]any, same func(a, b Value) bool) bool {
	here := s.tried(f, w, end)
	tried := []any{end[fact]}
	for _, other := range ends {
		if slices.Contains(tried, other[fact]) {
			continue
		}
		tried = append(tried, other[fact])
		changed := maps.Clone(end)
		changed[fact] = other[fact]
		if there := s.tried(f, w, changed); !same(there.Value, here.Value) || there.Problem != here.Problem {
			return true
		}
	}
	return false
}

// ends gives the overrides at which the corners of a way's range lie, and the facts that are unknown there.
func (s *Sheet) ends(w *Way, override map[string]any) (ends []map[string]any, missing []string) {
	ends = []map[string]any{maps.Clone(override)}
	missing = s.split(&ends, w.Sharpens, override)
	for _, n := range w.Needs {
		if inner, ok := figureName(n); ok {
			missing = append(missing, s.splitFigure(&ends, inner, override)...)
		}
	}
	return ends, missing
}

// splitFigure splits at the unknown facts that a needed figure, or one below it, is sharpened by.
func (s *Sheet) splitFigure(ends *[]map[string]any, name string, override map[string]any) []string {
	r := s.result(name, override)
	if !r.Bounded {
		return nil
	}
	var missing []string
	for i := range r.Figure.Ways {
		w := &r.Figure.Ways[i]
		if lacks, why := s.missing(w, override); len(lacks) > 0 || why != "" {
			continue
		}
		missing = append(missing, s.split(ends, w.Sharpens, override)...)
		for _, n := range w.Needs {
			if inner, ok := figureName(n); ok {
				missing = append(missing, s.splitFigure(ends, inner, override)...)
			}
		}
	}
	return missing
}

// split doubles the ends: once with the lowest and once with the highest value of the unknown facts among the bounds, and
// again for each unknown fact that stands apart.
func (s *Sheet) split(ends *[]map[string]any, bounds []Bound, override map[string]any) []string {
	var missing []string
	var joint []Bound
	for _, b := range bounds {
		if _, ok := override[b.Fact]; ok {
			continue
		}
		if _, ok := s.facts.Value(b.Fact); ok {
			continue
		}
		missing = append(missing, b.Fact)
		if _, split := (*ends)[0][b.Fact]; split { // for another figure, with every end of the others
			continue
		}
		if b.Apart || len(b.Also) > 0 {
			*ends = each(*ends, b)
			continue
		}
		joint = append(joint, b)
	}
	if len(joint) > 0 {
		*ends = double(*ends, joint)
	}
	return missing
}

// each gives every end once for each value to try of a fact that stands apart.
func each(ends []map[string]any, b Bound) []map[string]any {
	var all []map[string]any
	for _, end := range ends {
		for _, value := range append([]any{b.Lowest, b.Highest}, b.Also...) {
			one := maps.Clone(end)
			if one == nil {
				one = map[string]any{}
			}
			one[b.Fact] = value
			all = append(all, one)
		}
	}
	return all
}

// double gives every end twice: with the lowest values of these bounds, and with the highest.
func double(ends []map[string]any, bounds []Bound) []map[string]any {
	var both []map[string]any
	for _, end := range ends {
		low, high := map[string]any{}, map[string]any{}
		maps.Copy(low, end)
		maps.Copy(high, end)
		for _, b := range bounds {
			low[b.Fact], high[b.Fact] = b.Lowest, b.Highest
		}
		both = append(both, low, high)
	}
	return both
}
