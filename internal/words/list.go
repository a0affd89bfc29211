package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// lists gives runs of numbers ("4520, 4310, 3380 and 4450") to the facts that are lists.
func (s *solver) lists() {
	for q := 0; q < len(s.items); q++ {
		run := s.run(q)
		if len(run) < 2 {
			continue
		}
		s.giveRun(run)
		q = run[len(run)-1]
	}
}

// run gives the items of a run of like numbers that begins at item q.
func (s *solver) run(q int) []int {
	if s.items[q].kind != aQuantity || s.used[q] || !s.items[q].num.single() {
		return nil
	}
	run := []int{q}
	for i := q + 1; i < len(s.items); i++ {
		it := &s.items[i]
		switch {
		case it.kind == aQuantity && it.num.single() && !s.used[i] && s.sameUnit(run, i) && (it.num.decimal == s.items[run[0]].num.decimal || len(it.units) > 0):
			run = append(run, i)
		case it.kind == aBreak && it.pause == pauseComma, it.kind == aWord && (it.text == "and" || it.text == "then" || it.text == "psi" || it.text == "or" || ordinals[it.text]):
		default:
			return run
		}
		if i-run[len(run)-1] > 3 {
			return run
		}
	}
	return run
}

// ordinals part the numbers of a list that is told one by one: "the first 4 1/4, the second 6, third one 5".
var ordinals = set([]string{"the", "first", "second", "third", "fourth", "fifth", "last", "one"})

// sameUnit says whether item i can go on with the run: its unit is the same, or it is said for the last one only.
func (s *solver) sameUnit(run []int, i int) bool {
	a, b := s.items[run[0]].units, s.items[i].units
	return len(a) == 0 || len(b) == 0 || a[0] == b[0]
}

func (s *solver) giveRun(run []int) {
	best, points := -1, 0.0
	var text *match
	for f, fact := range s.facts {
		if fact.Kind != job.KindList || !s.allFit(run, fact) || s.has(fact.Path) {
			continue
		}
		for k := range s.nearBy[f] {
			m := &s.nearBy[f][k]
			apart := min(s.apart(m, run[0]), s.apart(m, run[len(run)-1]))
			p := m.use.pattern.weight
			if p == 0 {
				p = pointsNear + pointsWord*float64(m.use.pattern.literals-1)
			}
			if p -= pointsApart * apart; p > points {
				best, points, text = f, p, m
			}
		}
	}
	if best < 0 || points < enough-0.5 {
		if best = s.testRun(run); best < 0 {
			s.giveExtreme(run)
			return
		}
		text = &match{use: &use{}, start: run[0], end: run[len(run)-1] + 1}
	}
	fact := s.facts[best]
	unit := s.runUnit(run, fact)
	var list []any
	for _, q := range run {
		list = append(list, plainNumber(s.items[q].num.low)+" "+unit)
		s.used[q] = true
	}
	s.state(fact.Path, list, s.words(min(run[0], text.start), max(run[len(run)-1], text.end-1)), "", s.items[run[0]].start)
}

// testRun is the fact that a run of three or more strengths belongs to where cores or tests are spoken of anywhere; -1 where none is.
func (s *solver) testRun(run []int) int {
	if len(run) < 3 {
		return -1
	}
	if f := s.byPath["floor.humidity_reading"]; len(s.needBy[f]) > 0 && s.probed(run) {
		return -1
	}
	for _, kind := range []struct {
		path  string
		words map[string]bool
	}{{"strength.cores", coreWords}, {"strength.tests", s.v.testWords}} {
		f := s.byPath[kind.path]
		if s.has(kind.path) || !s.allFit(run, s.facts[f]) || len(s.items[run[0]].units) == 0 && s.items[run[0]].num.low < 500 {
			continue
		}
		for i := range s.items {
			if s.items[i].kind == aWord && kind.words[s.items[i].text] && i < run[len(run)-1] {
				return f
			}
		}
	}
	return -1
}

var coreWords = set([]string{"core", "cores", "cored", "coring"})

// giveExtreme gives the highest or lowest of a run of readings to a fact that takes it ("probes read 96, 91 and 89").
func (s *solver) giveExtreme(run []int) {
	if len(run) == 2 && !s.joined(run) {
		return // "#4 at 18, 5 inch slab"
	}
	list := s.candidates(run[0])
	if f := s.byPath["floor.humidity_reading"]; (len(list) == 0 || list[0].points < enough) && s.probed(run) && !s.has("floor.humidity_reading") {
		list = []fit{{q: run[0], fact: f, points: enough, unit: "%"}}
	}
	for _, q := range run {
		if len(s.items[q].units) > 0 {
			list = s.candidates(q)
		}
	}
	if len(list) == 0 || list[0].points < enough {
		return
	}
	fact := s.facts[list[0].fact]
	if s.has(fact.Path) || !s.allFit(run, fact) {
		return
	}
	if fact.takes == "mean" {
		s.giveMean(run, fact, list[0].unit)
		return
	}
	if fact.takes != "high" && fact.takes != "low" {
		return
	}
	best := run[0]
	for _, q := range run {
		s.used[q] = true
		if n := s.items[q].num.low; fact.takes == "high" && n > s.items[best].num.low || fact.takes == "low" && n < s.items[best].num.low {
			best = q
		}
	}
	s.state(fact.Path, strings.TrimSpace(plainNumber(s.items[best].num.low)+" "+list[0].unit), s.words(run[0], run[len(run)-1]),
		"", s.items[run[0]].start)
	if fact.Path == "floor.humidity_reading" || fact.Path == "floor.emission_reading" {
		s.readings = len(run)
	}
}

// probed says whether a run of three or more numbers can be the readings of humidity probes that are spoken of.
func (s *solver) probed(run []int) bool {
	if len(run) < 3 || len(s.items[run[0]].units) > 0 && s.items[run[0]].units[0] != "%" {
		return false
	}
	for _, q := range run {
		if n := s.items[q].num; n.low < 50 || n.low > 100 {
			return false
		}
	}
	for i := 0; i < run[0]; i++ {
		switch s.items[i].text {
		case "probe", "probes", "sleeves", "holes", "rh":
			return true
		}
	}
	return false
}

// giveMean gives the mean of a run of measurements of one thing ("unit weights 145.2, 145.6 and 145.1").
func (s *solver) giveMean(run []int, fact *saying, unit string) {
	sum := 0.0
	for _, q := range run {
		s.used[q] = true
		sum += s.items[q].num.low
	}
	mean := round(sum / float64(len(run)))
	s.state(fact.Path, strings.TrimSpace(plainNumber(mean)+" "+unit), s.words(run[0], run[len(run)-1]),
		fmt.Sprintf("“%s” is taken as their mean, %s", s.words(run[0], run[len(run)-1]), quantity.Quantity{Value: mean, Unit: unit}.Print(quantity.US)), s.items[run[0]].start)
}

// joined says whether the two numbers of a run are one thing said twice: in the same unit, or with "and" between them.
func (s *solver) joined(run []int) bool {
	if len(s.items[run[0]].units) == len(s.items[run[1]].units) {
		return true
	}
	for i := run[0]; i < run[1]; i++ {
		if s.items[i].kind == aWord && (s.items[i].text == "and" || s.items[i].text == "or") {
			return true
		}
	}
	return false
}

func (s *solver) runUnit(run []int, fact *saying) string {
	for _, q := range run {
		for _, u := range s.items[q].units {
			if quantity.SameKind(u, fact.Unit) {
				return u
			}
		}
	}
	return s.bareUnit(fact.bare)
}

func (s *solver) allFit(run []int, fact *saying) bool {
	unit := s.runUnit(run, fact)
	if unit == "" {
		return false
	}
	low, high := math.Inf(1), 0.0
	for _, q := range run {
		low, high = min(low, s.items[q].num.low), max(high, s.items[q].num.low)
	}
	if high > 4*low {
		return false // "4000, three-test average" is no list
	}
	for _, q := range run {
		if u := s.items[q].units; len(u) > 0 && u[0] != "deg?" && !slices.ContainsFunc(u, func(one string) bool { return quantity.SameKind(one, fact.Unit) }) {
			return false
		}
		v, ok := convert(s.items[q].num, unit, fact.Unit)
		if !ok || fact.Possible != nil && !fact.Possible.Contains(v.low) || fact.Usual != nil && !fact.Usual.Contains(v.low) {
			return false
		}
	}
	return true
}
