package rulebook

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/job"
)

// look computes every figure of every job of the pool and notes which limits each read.
func (s *search) look() {
	needs := map[string][]string{}
	for _, f := range s.book.Figures.Figures() {
		needs[f.Name] = s.book.Figures.Needs(f.Name)
	}
	for _, facts := range s.pool {
		j, err := s.jobOf(facts)
		if err != nil {
			continue
		}
		sheet := s.book.Figures.Sheet(j)
		for _, f := range s.book.Figures.Figures() {
			r := sheet.Result(f.Name)
			for _, cite := range r.Cites {
				if cite.Limit != "" && (r.Known || r.Bounded) {
					s.reads[cite.Limit] = append(s.reads[cite.Limit], reading{f.Name, only(j, needs[f.Name])})
				}
			}
		}
	}
	for _, all := range s.reads {
		slices.SortStableFunc(all, func(a, b reading) int { return len(needs[a.figure]) - len(needs[b.figure]) })
	}
	for limit, all := range s.reads {
		seen := map[string]bool{}
		s.reads[limit] = slices.DeleteFunc(all, func(r reading) bool {
			key := fmt.Sprint(r.figure, r.facts)
			defer func() { seen[key] = true }()
			return seen[key]
		})
	}
	s.looked = true
}

// ofFigure looks for jobs in which a figure shows the number: one for both sides of it, or one for each.
func (s *search) ofFigure(c cell) []edge {
	if !s.looked {
		s.look()
	}
	found := map[bool]edge{}
	s.each(c, func(name string, facts map[string]any) bool {
		one, ok := s.at(edge{Figure: name}, facts)
		if !ok || !one.known && s.random.IntN(3) > 0 { // one that is known is plainer
			return false
		}
		up, down := s.shows(c, true, one), s.shows(c, false, one)
		switch {
		case up && down:
			found = map[bool]edge{true: s.shortest(c, one, true, false)}
			return true
		case up && found[true].Figure == "":
			found[true] = s.shortest(c, one, true)
		case down && found[false].Figure == "":
			found[false] = s.shortest(c, one, false)
		}
		return len(found) == 2
	})
	var all []edge
	for _, up := range []bool{true, false} {
		if e, ok := found[up]; ok {
			all = append(all, e)
		}
	}
	return all
}

// shortest leaves out of a job what is not needed to show the number changed to these sides.
func (s *search) shortest(c cell, was check, sides ...bool) edge {
	facts := s.shrink(was.facts, func(less map[string]any) bool {
		one, ok := s.at(was.edge, less)
		return ok && (one.known || !was.known) && !slices.ContainsFunc(sides, func(up bool) bool { return !s.shows(c, up, one) })
	})
	small, _ := s.at(was.edge, facts)
	e := small.edge
	e.Job, e.Gives = facts, small.want
	return e
}

func (s *search) late() bool { return time.Now().After(s.deadline) }

// each tries the jobs in which a figure is known to read the limit; then such jobs with the facts that lead to the number's place
// in its table; then those with one more fact moved, and with several.
func (s *search) each(c cell, try func(figure string, facts map[string]any) bool) {
	readings := few(s.reads[c.path], 3)
	for _, r := range readings {
		if s.late() || try(r.figure, r.facts) {
			return
		}
	}
	for _, move := range []bool{false, true} {
		for _, r := range few(readings, 1) {
			for _, facts := range s.led(c, r) {
				if s.late() || try(r.figure, facts) {
					return
				}
				if move && s.moved(c, reading{r.figure, facts}, try) {
					return
				}
			}
		}
	}
	for len(readings) > 0 && !s.late() {
		r := readings[s.random.IntN(len(readings))]
		if try(r.figure, s.draw(r.facts, s.book.Figures.Needs(r.figure), 10+s.random.IntN(60))) {
			return
		}
	}
}

func (s *search) moved(c cell, r reading, try func(figure string, facts map[string]any) bool) bool {
	for _, path := range s.book.Figures.Needs(r.figure) {
		for _, v := range s.values(path, c) {
			moved := maps.Clone(r.facts)
			moved[path] = v
			if s.late() || try(r.figure, moved) {
				return true
			}
		}
	}
	return false
}

// led states the facts that can be the keys of a number in its table: the choice of that name, the quantity of that much.
func (s *search) led(c cell, r reading) []map[string]any {
	bases := []map[string]any{r.facts}
	for _, key := range c.keys {
		next := slices.Clone(bases)
		x, err := strconv.ParseFloat(key, 64)
		for _, path := range s.book.Figures.Needs(r.figure) {
			f, _ := s.book.Facts.Fact(path)
			var v any
			switch {
			case f.Kind == job.KindChoice && slices.ContainsFunc(f.Choices, func(choice job.Choice) bool { return choice.Value == key }):
				v = key
			case f.Kind == job.KindQuantity && err == nil && f.Possible != nil && f.Possible.Contains(x):
				v = quantityText(x, f.Unit)
			default:
				continue
			}
			for _, base := range bases {
				with := maps.Clone(base)
				with[path] = v
				next = append(next, with)
			}
		}
		bases = next
	}
	for _, path := range s.book.Figures.Needs(r.figure) {
		if f, _ := s.book.Facts.Fact(path); f.Kind == job.KindFlag && len(bases) < 40 {
			for _, base := range slices.Clone(bases) {
				with := maps.Clone(base)
				with[path] = base[path] != true
				bases = append(bases, with)
			}
		}
	}
	slices.Reverse(bases) // those with most keys first
	return bases
}

// ofWorking looks for a job in which the number shows in the working of a figure alone, such as the mesh that is chosen by it.
func (s *search) ofWorking(c cell) []edge {
	var found []edge
	sides := []bool{true, false}
	s.each(c, func(name string, facts map[string]any) bool {
		for _, line := range s.lines(name, facts) {
			e := edge{Figure: name, Line: line}
			one, ok := s.at(e, facts)
			if !ok {
				continue
			}
			for _, up := range slices.Clone(sides) {
				if s.shows(c, up, one) {
					found = append(found, s.shortest(c, one, up))
					sides = slices.DeleteFunc(sides, func(side bool) bool { return side == up })
				}
			}
		}
		return len(sides) == 0
	})
	return found
}

// lines gives the words that the lines of a figure's working begin with.
func (s *search) lines(name string, facts map[string]any) []string {
	j, err := s.jobOf(facts)
	if err != nil {
		return nil
	}
	words := map[string]bool{}
	for _, line := range s.book.Figures.Sheet(j).Result(name).Working {
		if at := strings.IndexAny(line, "{0123456789"); at > 3 {
			words[line[:at]] = true
		}
	}
	return keys(words)
}

// few takes so many jobs of each figure.
func few(readings []reading, most int) []reading {
	count := map[string]int{}
	var some []reading
	for _, r := range readings {
		if count[r.figure]++; count[r.figure] <= most {
			some = append(some, r)
		}
	}
	return some
}

// values lists what a fact is tried with: every choice, or a few numbers with those that the table is laid out by.
func (s *search) values(path string, c cell) []any {
	f, _ := s.book.Facts.Fact(path)
	var all []any
	switch f.Kind {
	case job.KindChoice:
		for _, choice := range f.Choices {
			all = append(all, choice.Value)
		}
	case job.KindFlag:
		all = []any{true, false}
	case job.KindQuantity:
		xs := grid(f, c)
		for _, k := range c.keys {
			if x, err := strconv.ParseFloat(k, 64); err == nil {
				xs = append(xs, x, toDigits(x*1.01, 4))
			}
		}
		for _, x := range xs {
			all = append(all, quantityText(x, f.Unit))
		}
	}
	return all
}
