// Package figure owns what can be computed from the facts of a job: each figure with its needs, unit, method, working
// and source. One file holds the figures of one field.
package figure

import (
	"fmt"
	"maps"
	"slices"
	"sort"

	"hearsay/internal/limit"
)

// Figure is one number that can be computed. The rules read it as input.figure.<Name>, its range as
// input.range.<Name>.low and .high.
type Figure struct {
	Name    string // snake case
	Title   string // a noun phrase: "water-cement ratio after the water added"
	Unit    string // as the rules read it; "" for a plain ratio
	Method  string // one sentence: how it is computed
	Cites   []limit.Cite
	Ways    []Way   // the first whose needs are known is used
	Within  float64 // how far two ways may differ, in Unit, without contradicting each other; 0: 3 %
	Overlap bool    // two ways contradict each other only where their ranges have nothing in common
	Private bool    // an intermediate that only other figures read; not listed

	place int // in the order of the fields
}

// Way is one manner of computing a figure.
type Way struct {
	// Needs are fact paths ("order.slump") and figures ("figure.wcm"), all of which must be known.
	Needs []string
	// Sharpens are facts that may be unknown: the figure is then known only as a range, between what the value for the
	// lowest and the value for the highest result give. A rule that the whole range decides is decided.
	Sharpens []Bound
	// Assumes are facts that are used where they are stated; otherwise something usual is assumed, and said so. Nobody is
	// asked for them.
	Assumes []string
	// Final says that where this way has all it needs and fails, another would fail, too: its reason is given, and nothing
	// is asked for.
	Final   bool
	Compute func(c *Calc) (Value, error)
}

// Bound gives, for a fact that may be unknown, the values that make the figure lowest and highest.
type Bound struct {
	Fact            string
	Lowest, Highest any // float64 in the fact's unit, string or bool
	// Apart says that the other facts decide which of the two values gives the lowest result: both are tried with each
	// end of the others.
	Apart bool
	// Also are further values to try, where the result can lie outside what the two ends give. The fact then stands apart.
	Also []any
}

// Value is what a computation gives: a best value in the range Low to High. An exact value has all three equal.
type Value struct{ Best, Low, High float64 }

// Exact is a value without a range.
func Exact(v float64) Value { return Value{v, v, v} }

// Between is a range with its best value.
func Between(low, best, high float64) Value { return Value{best, low, high} }

// Result is a figure as it came out for one job.
type Result struct {
	Figure  *Figure
	Known   bool // Value can be used
	Bounded bool // not known, but known to lie between Value.Low and Value.High
	Value
	// BestLow and BestHigh are the ends of what Value.Best can be, where it is bounded.
	BestLow, BestHigh float64
	Working           []string
	Assumed           []string // what was taken for granted, in words
	Cites             []limit.Cite
	Missing           []string // facts that would make it known, sorted; empty when it is known or cannot be computed
	Problem           string   // why it cannot be computed although its needs are known
	Courses           []Course // of a result that Drawn gives
}

// Set holds every figure there is.
type Set struct {
	limits  *limit.Book
	figures map[string]*Figure
	order   []string
}

// New gathers the figures of every field. It fails on two figures of one name and on a citation of an unknown work.
func New(limits *limit.Book) (*Set, error) {
	s := &Set{limits: limits, figures: map[string]*Figure{}}
	for _, field := range fields() {
		for i := range field {
			f := field[i]
			if _, ok := s.figures[f.Name]; ok {
				return nil, fmt.Errorf("two figures are called %s", f.Name)
			}
			for _, c := range f.Cites {
				if err := limits.CheckCite(c); err != nil {
					return nil, fmt.Errorf("figure %s: %w", f.Name, err)
				}
			}
			f.place = len(s.order)
			s.figures[f.Name] = &f
			s.order = append(s.order, f.Name)
		}
	}
	return s, nil
}

// Find gives the figure of this name.
func (s *Set) Find(name string) (*Figure, bool) {
	f, ok := s.figures[name]
	return f, ok
}

// Figures lists them in the order of the fields.
func (s *Set) Figures() []*Figure {
	all := make([]*Figure, 0, len(s.order))
	for _, n := range s.order {
		all = append(all, s.figures[n])
	}
	return all
}

// Needs lists every fact a figure can hang on, through other figures too, sorted.
func (s *Set) Needs(name string) []string {
	found := map[string]bool{}
	s.needs(name, found, map[string]bool{})
	paths := make([]string, 0, len(found))
	for p := range found {
		paths = append(paths, p)
	}
	sort.Strings(paths)
	return paths
}

// Below lists these figures and every figure they need, through others too, sorted.
func (s *Set) Below(names ...string) []string {
	seen := map[string]bool{}
	for _, name := range names {
		s.needs(name, map[string]bool{}, seen)
	}
	return slices.Sorted(maps.Keys(seen))
}

func (s *Set) needs(name string, found, seen map[string]bool) {
	f, ok := s.figures[name]
	if !ok || seen[name] {
		return
	}
	seen[name] = true
	for _, w := range f.Ways {
		for _, n := range w.Needs {
			if inner, ok := figureName(n); ok {
				s.needs(inner, found, seen)
			} else {
				found[n] = true
			}
		}
		for _, b := range w.Sharpens {
			found[b.Fact] = true
		}
		for _, p := range w.Assumes {
			found[p] = true
		}
	}
}
