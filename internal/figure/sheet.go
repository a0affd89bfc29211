package figure

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"hearsay/internal/limit"
)

// Facts is where figures find what is known. *job.Job is one.
type Facts interface {
	Value(path string) (any, bool)
}

// Sheet computes figures for one job, each at most once.
type Sheet struct {
	set     *Set
	facts   Facts
	results []*Result         // by the place of the figure
	busy    []bool            // by the place of the figure
	chosen  map[string]int    // figure to the way that counts, where it is not the first
	torn    map[string][]int  // figure to the ways that come out otherwise than the one that counts
	memory  map[string]memory // of slow computations, by all they depend on
	draws   bool              // courses are wanted
	terse   bool              // no working is wanted

	never func(fact string) string // why a fact can have no value here; "" where it may
}

type memory struct {
	value any
	err   error
}

// Sheet starts the figures of one job. It is not safe for use by several goroutines at once.
func (s *Set) Sheet(facts Facts) *Sheet {
	return &Sheet{set: s, facts: facts, results: make([]*Result, len(s.order)), busy: make([]bool, len(s.order)), torn: map[string][]int{}, memory: map[string]memory{},
		never: func(string) string { return "" }}
}

// Without has the sheet ask for no fact that can have no value in this job, and compute nothing by a way that needs one. never
// says why that is so, and "" for every other fact.
func (s *Sheet) Without(never func(fact string) string) *Sheet {
	s.never = never
	return s
}

// Tersely has the sheet leave the working out.
func (s *Sheet) Tersely() *Sheet {
	s.terse = true
	return s
}

// Result computes a figure by name. An unknown name gives a result with a Problem.
func (s *Sheet) Result(name string) *Result { return s.result(name, nil) }

// All computes every figure.
func (s *Sheet) All() []*Result {
	all := make([]*Result, 0, len(s.set.order))
	for _, n := range s.set.order {
		all = append(all, s.Result(n))
	}
	return all
}

func (s *Sheet) result(name string, override map[string]any) *Result {
	f, ok := s.set.figures[name]
	if !ok {
		return &Result{Problem: "there is no figure " + name}
	}
	if r := s.results[f.place]; r != nil && override == nil {
		return r
	}
	if s.busy[f.place] {
		return &Result{Figure: f, Problem: "it needs itself"}
	}
	s.busy[f.place] = true
	r := s.compute(f, override)
	s.busy[f.place] = false
	if override == nil {
		s.results[f.place] = r
	}
	return r
}

// compute takes the first way that comes to a result, and holds the others that do against it. Where there is none the
// result is unknown, and lacks the facts of the way that lacks fewest; only where no way lacks any, or one
// that is final fails, can it not be computed.
func (s *Sheet) compute(f *Figure, override map[string]any) *Result {
	var lacking [][]string
	var problem string
	var failed, final *Result
	var came []outcome
	for i := range f.Ways {
		w := &f.Ways[i]
		missing, why := s.missing(w, override)
		switch {
		case why != "":
			problem = why
		case len(missing) > 0:
			lacking = append(lacking, missing)
		default:
			if r := s.run(f, w, override); r.Problem != "" {
				failed = r
				if w.Final {
					final = r
				}
			} else if r.Known || r.Bounded {
				came = append(came, outcome{i, r})
			} else {
				lacking = append(lacking, r.Missing)
			}
		}
	}
	if len(came) > 0 {
		return s.settle(f, came, override)
	}
	if final != nil {
		return final
	}
	r := &Result{Figure: f, Cites: f.Cites}
	if len(lacking) == 0 {
		if failed != nil {
			return failed
		}
		r.Problem = problem
		return r
	}
	sort.SliceStable(lacking, func(i, j int) bool { return len(lacking[i]) < len(lacking[j]) })
	r.Missing = sorted(lacking[0])
	return r
}

// sharper says whether a way tells more than another: a value more than a range, a narrow range more than a wide one.
func sharper(a, b *Result) bool {
	return !b.Known && (a.Known || a.Bounded && (!b.Bounded || a.High-a.Low < b.High-b.Low))
}

// agree says whether two ways of computing a figure say the same: their best values, to within so much or, where that is 0, to
// 3 %; or their ranges, where the figure asks for no more. A way that only gives a range agrees with what lies in it, and two
// that do agree unless they lie wholly apart.
func agree(f *Figure, a, b *Result) bool {
	if b.Known && !a.Known {
		a, b = b, a
	}
	if f.Overlap && (a.Known || a.Bounded) && (b.Known || b.Bounded) {
		rounding := 1e-9 * (math.Abs(a.High) + math.Abs(b.High))
		return a.Low <= b.High+rounding && b.Low <= a.High+rounding
	}
	if a.Bounded && !a.Known && b.Bounded {
		within := slack(f, math.Max(math.Abs(a.BestLow), math.Abs(b.BestLow)))
		return a.BestLow <= b.BestHigh+within && b.BestLow <= a.BestHigh+within
	}
	if !a.Known || !b.Known && !b.Bounded {
		return true
	}
	if b.Known {
		return math.Abs(a.Best-b.Best) <= slack(f, math.Max(math.Abs(a.Best), math.Abs(b.Best)))
	}
	within := slack(f, math.Abs(a.Best))
	return a.Best >= b.BestLow-within && a.Best <= b.BestHigh+within
}

// slack is how far two ways may lie apart without contradicting each other, at a value of the figure.
func slack(f *Figure, at float64) float64 {
	if f.Within > 0 {
		return f.Within
	}
	return 0.03*at + 1e-9
}

// missing lists the facts a way lacks; why is set when a figure it needs cannot be computed at all.
func (s *Sheet) missing(w *Way, override map[string]any) (missing []string, why string) {
	for _, n := range w.Needs {
		inner, isFigure := figureName(n)
		if !isFigure {
			if _, ok := override[n]; ok {
				continue
			}
			if _, ok := s.facts.Value(n); !ok {
				if why := s.never(n); why != "" {
					return nil, why
				}
				missing = append(missing, n)
			}
			continue
		}
		r := s.result(inner, override)
		if r.Known || r.Bounded {
			continue
		}
		if r.Problem != "" {
			return nil, r.Problem
		}
		missing = append(missing, r.Missing...)
	}
	return missing, ""
}

func (s *Sheet) once(f *Figure, w *Way, override map[string]any) *Result {
	c := &Calc{sheet: s, figure: f, way: w, override: override}
	v, err := w.Compute(c)
	if c.failed != nil {
		err = c.failed
	}
	r := &Result{Figure: f, Cites: slices.Clip(f.Cites), Working: c.working, Assumed: mergeText(c.assumed, nil), Courses: c.courses}
	if len(c.cites) > 0 {
		r.Cites = slices.Concat(f.Cites, c.cites)
	}
	switch {
	case err != nil:
		r.Problem = err.Error()
	case math.IsNaN(v.Best) || math.IsInf(v.Best, 0) || math.IsNaN(v.Low) || math.IsNaN(v.High):
		r.Problem = fmt.Sprintf("the %s comes to no number from these facts", f.Title)
	default:
		r.Known, r.Value = true, v
	}
	return r
}

// tried is once for a value alone, where nobody reads the working.
func (s *Sheet) tried(f *Figure, w *Way, override map[string]any) *Result {
	terse := s.terse
	s.terse = true
	defer func() { s.terse = terse }()
	return s.once(f, w, override)
}

func figureName(need string) (string, bool) {
	if len(need) > 7 && need[:7] == "figure." {
		return need[7:], true
	}
	return "", false
}

func sorted(lists ...[]string) []string {
	var all []string
	for _, l := range lists {
		all = append(all, l...)
	}
	sort.Strings(all)
	return slices.Compact(all)
}

func mergeCites(lists ...[]limit.Cite) []limit.Cite {
	var all []limit.Cite
	for _, l := range lists {
		for _, c := range l {
			if !slices.Contains(all, c) {
				all = append(all, c)
			}
		}
	}
	return all
}

func mergeText(lists ...[]string) []string {
	var all []string
	for _, l := range lists {
		for _, t := range l {
			if !slices.Contains(all, t) {
				all = append(all, t)
			}
		}
	}
	return all
}
