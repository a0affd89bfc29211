package rulebook

import (
	"maps"
	"math"
	"slices"

	"hearsay/internal/job"
)

// ofRule looks for an edge at which a practice turns on a number that its rule reads: in what it says of the job, or else in a
// number of its finding or in its correction.
func (s *search) ofRule(c cell) []edge {
	for _, p := range s.readers[c.path] {
		bases := s.bases(c, p)
		for _, base := range bases {
			if e, ok := s.turn(c, p, base); ok {
				return []edge{e}
			}
		}
		for range 250 {
			if s.late() {
				break
			}
			base := s.draw(bases[s.random.IntN(len(bases))], p.hangs, 5+s.random.IntN(40))
			if e, ok := s.turn(c, p, base); ok {
				return []edge{e}
			}
		}
	}
	for _, p := range s.readers[c.path] {
		if e, ok := s.document(c, p); ok {
			return []edge{e}
		}
	}
	return nil
}

// bases gives jobs to start from: the two of the practice, with the facts that lead to the number's place in its table.
func (s *search) bases(c cell, p *Practice) []map[string]any {
	var bases []map[string]any
	for _, base := range s.own[p.ID] {
		if j, err := s.jobOf(base); err == nil {
			bases = append(bases, only(j, p.hangs))
		}
	}
	for _, key := range c.keys {
		var next []map[string]any
		for _, path := range p.hangs {
			f, _ := s.book.Facts.Fact(path)
			if f.Kind != job.KindChoice || !slices.ContainsFunc(f.Choices, func(choice job.Choice) bool { return choice.Value == key }) {
				continue
			}
			for _, base := range bases {
				with := maps.Clone(base)
				with[path] = key
				next = append(next, with)
			}
		}
		if len(next) > 0 {
			bases = next
		}
	}
	return bases
}

// turn looks for a fact of a job that can be moved to where the practice turns on the number.
func (s *search) turn(c cell, p *Practice, base map[string]any) (edge, bool) {
	e := edge{Practice: p.ID}
	one, ok := s.at(e, base)
	if !ok || !s.matters(c, one) {
		return e, false
	}
	for _, path := range s.order(p, base) {
		f, _ := s.book.Facts.Fact(path)
		if f.Kind != job.KindQuantity || base[path] == nil && !slices.Contains(p.Reads, path) {
			continue
		}
		if s.late() {
			break
		}
		if e, ok := s.cross(c, e, base, f); ok {
			return e, true
		}
	}
	return e, false
}

// matters says whether the job comes out otherwise with the number anywhere else.
func (s *search) matters(c cell, one check) bool {
	for _, v := range []float64{-1e6, 0, c.value * 0.3, c.value * 0.8, c.value * 1.25, c.value * 3, 1e6} {
		got := ""
		s.with(c, v, func() { got = s.come(one) })
		if got != one.want && got != unsaid {
			return true
		}
	}
	return false
}

// order puts the facts that the rule itself reads first, then those its figures need; among them, those that are stated.
func (s *search) order(p *Practice, base map[string]any) []string {
	paths := slices.Clone(p.hangs)
	rank := func(path string) int {
		r := 0
		if !slices.Contains(p.Reads, path) {
			r++
		}
		if base[path] == nil {
			r += 2
		}
		return r
	}
	slices.SortStableFunc(paths, func(a, b string) int { return rank(a) - rank(b) })
	return paths
}

// cross moves one fact through its range and looks at each place where the practice says something else.
func (s *search) cross(c cell, e edge, base map[string]any, f *job.Fact) (edge, bool) {
	outcome := func(x float64) string {
		one, _ := s.at(e, with(base, f, x))
		return one.want
	}
	xs := grid(f, c)
	before := outcome(xs[0])
	for i := 1; i < len(xs); i++ {
		now := outcome(xs[i])
		if now != before && now != "" && before != "" && now != unsaid && before != unsaid {
			low, high := xs[i-1], xs[i]
			for range 30 {
				middle := (low + high) / 2
				if outcome(middle) == before {
					low = middle
				} else {
					high = middle
				}
			}
			if found, ok := s.sides(c, e, base, f, (low+high)/2); ok {
				return found, true
			}
		}
		before = now
	}
	return e, false
}

// sides takes a fact to just below and just above where the practice turns, as plain numbers, and keeps the pair if it holds
// the number on both sides.
func (s *search) sides(c cell, e edge, base map[string]any, f *job.Fact, x float64) (edge, bool) {
	x = snap(x)
	for _, d := range [][2]float64{{0, 0.02}, {0.02, 0}, {0.01, 0.01}, {0, 0.005}, {0.005, 0}, {0.002, 0.002}, {0.0005, 0.0005}} {
		step := math.Max(math.Abs(x), 1)
		low, high := nice(x-d[0]*step, -1), nice(x+d[1]*step, 1)
		if d[0] == 0 {
			low = x
		}
		if d[1] == 0 {
			high = x
		}
		pair := func(base map[string]any) ([]check, bool) {
			a, ok := s.at(e, with(base, f, low))
			b, ok2 := s.at(e, with(base, f, high))
			both := []check{a, b}
			return both, ok && ok2 && a.want != b.want && s.shows(c, true, both...) && s.shows(c, false, both...)
		}
		if _, ok := pair(base); !ok {
			continue
		}
		small := s.shrink(base, func(less map[string]any) bool { _, ok := pair(less); return ok })
		both, _ := pair(small)
		for _, one := range both {
			switch one.want {
			case Wrong:
				e.Wrong = one.facts
			case Right:
				e.Right = one.facts
			case NotHere:
				e.NotHere = one.facts
			}
		}
		return e, true
	}
	return e, false
}

// snap takes a place found by halving to the plain number it stands for.
func snap(x float64) float64 {
	for digits := 1; digits <= 4; digits++ {
		if r := toDigits(x, digits); math.Abs(r-x) <= 1e-7*math.Max(1, math.Abs(x)) {
			return r
		}
	}
	return toDigits(x, 5)
}

// nice rounds to three digits, down or up.
func nice(x float64, side int) float64 {
	if x == 0 {
		return 0
	}
	unit := math.Pow(10, math.Floor(math.Log10(math.Abs(x)))-2)
	if side < 0 {
		return toDigits(math.Floor(x/unit+1e-9)*unit, 4)
	}
	return toDigits(math.Ceil(x/unit-1e-9)*unit, 4)
}

func with(base map[string]any, f *job.Fact, x float64) map[string]any {
	facts := maps.Clone(base)
	facts[f.Path] = map[string]any{"value": x, "unit": f.Unit}
	if s := quantityText(x, f.Unit); toDigits(x, 5) == x {
		facts[f.Path] = s
	}
	return facts
}

// grid gives the places at which a fact is tried: its usual range, its possible range more coarsely, and around the number.
func grid(f *job.Fact, c cell) []float64 {
	var xs []float64
	for _, r := range []*job.Range{f.Usual, f.Possible} {
		if r != nil {
			for i := range 13 {
				xs = append(xs, toDigits(r.Low+(r.High-r.Low)*float64(i)/12, 3))
			}
		}
	}
	for _, k := range []float64{0.8, 0.97, 1, 1.03, 1.2} {
		xs = append(xs, toDigits(c.value*k, 4))
	}
	slices.Sort(xs)
	return slices.DeleteFunc(slices.Compact(xs), func(x float64) bool {
		return f.Possible != nil && (x < f.Possible.Low || x > f.Possible.High)
	})
}

// document looks for a number of the finding, or a correction, that the limit's number shows in.
func (s *search) document(c cell, p *Practice) (edge, bool) {
	bases := s.bases(c, p)
	for i := range 200 {
		if i > 2*len(bases) && s.late() {
			break
		}
		base := bases[i%len(bases)]
		if i >= len(bases) {
			base = s.draw(base, p.hangs, 5+s.random.IntN(40))
		}
		var edges []edge
		for _, name := range p.Numbers {
			edges = append(edges, edge{Practice: p.ID, Number: name})
		}
		for _, path := range keys(truths(s.book.plain[p.ID].mends)) {
			edges = append(edges, edge{Practice: p.ID, Mend: path})
		}
		for _, e := range edges {
			if e, ok := s.valued(c, e, base); ok {
				return e, true
			}
		}
	}
	return edge{}, false
}

func truths[V any](m map[string]V) map[string]bool {
	all := map[string]bool{}
	for k := range m {
		all[k] = true
	}
	return all
}

// valued keeps a job whose outcome, a value, shows the number changed to either side.
func (s *search) valued(c cell, e edge, base map[string]any) (edge, bool) {
	good := func(facts map[string]any) bool {
		one, ok := s.at(e, facts)
		return ok && s.shows(c, true, one) && s.shows(c, false, one)
	}
	if !good(base) {
		return e, false
	}
	one, _ := s.at(e, s.shrink(base, good))
	e.Job, e.Gives = one.facts, one.want
	return e, true
}
