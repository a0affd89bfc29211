package words

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// solver settles which number belongs to which fact.
type solver struct {
	*reading
	degrees   string // F or C, as the text gives its temperatures
	metric    bool   // every quantity said with its unit is metric
	saidBy    map[int][]match
	nearBy    map[int][]match
	neverBy   map[int][]match
	contextBy map[int][]match
	valueBy   map[int][]match
	roleHits  []match
	eventHit  []match
	shareHit  []match
	echoHit   []match
	when      map[int]moment // by event
	roleOf    map[int]role   // by item
	used      map[int]bool   // items that are done with
	holds     map[*match]int
	fits      map[int][]fit // by item
	out       Reading
	stated    map[string]int // path to index in out.Facts
}

// role is the part that a number plays: ordered, measured, a limit. index is -1 where nothing says so.
type role struct {
	index  int
	points float64
}

// settle gives every number, time and phrase to the fact it states.
func (r *reading) settle(found []match) Reading {
	s := r.solver(found)
	s.values()
	s.times()
	s.spanFacts(true)
	s.lists()
	s.sizes()
	s.quantities()
	s.fixed()
	s.derive()
	s.unread()
	sort.SliceStable(s.out.Facts, func(i, k int) bool { return s.out.Facts[i].at < s.out.Facts[k].at })
	sort.SliceStable(s.out.Unread, func(i, k int) bool { return s.out.Unread[i].at < s.out.Unread[k].at })
	return s.out
}

func (r *reading) solver(found []match) *solver {
	s := &solver{reading: r, saidBy: map[int][]match{}, nearBy: map[int][]match{}, neverBy: map[int][]match{}, contextBy: map[int][]match{}, valueBy: map[int][]match{},
		roleOf: map[int]role{}, used: map[int]bool{}, holds: map[*match]int{}, fits: map[int][]fit{}, stated: map[string]int{}, when: map[int]moment{}}
	s.degrees, s.metric = r.system()
	s.sortOut(found)
	return s
}

func (s *solver) sortOut(found []match) {
	for _, m := range found {
		switch m.use.role {
		case useSaid:
			s.saidBy[m.use.target] = append(s.saidBy[m.use.target], m)
		case useNear:
			if m.at < 0 {
				s.nearBy[m.use.target] = append(s.nearBy[m.use.target], m)
			} else {
				s.saidBy[m.use.target] = append(s.saidBy[m.use.target], m)
			}
		case useContext:
			s.contextBy[m.use.target] = append(s.contextBy[m.use.target], m)
		case useNever:
			s.neverBy[m.use.target] = append(s.neverBy[m.use.target], m)
		case useValue:
			s.valueBy[m.use.target] = append(s.valueBy[m.use.target], m)
		case useBefore, useAfter:
			s.roleHits = append(s.roleHits, m)
		case useEvent:
			s.eventHit = append(s.eventHit, m)
		case useEcho:
			s.echoHit = append(s.echoHit, m)
		case useShare:
			if m.at >= 0 && !s.used[m.at] && len(s.items[m.at].units) > 0 && s.items[m.at].units[0] == "%" {
				s.shareHit = append(s.shareHit, m)
				s.used[m.at] = true // no other fact gets it
			}
		case useIgnore:
			if m.at >= 0 && len(s.items[m.at].units) == 0 {
				s.used[m.at] = true
			}
		}
	}
}

// system says in what units the text speaks: the scale of the first temperature that is said with its unit, and whether every
// other quantity is metric.
func (r *reading) system() (degrees string, metric bool) {
	n, customary := 0, 0
	for i := range r.items {
		if len(r.items[i].units) == 0 {
			continue
		}
		switch u := r.items[i].units[0]; u {
		case "F", "C":
			if degrees == "" {
				degrees = u
			}
		case "mm", "MPa", "kg/m3", "km/h", "m3", "L", "kg", "m2", "m/s":
			n++
		case "in", "psi", "lb", "lb/yd3", "ft", "mph", "gal", "ft2", "yd3", "bags/yd3":
			customary++
		}
	}
	metric = customary == 0 && (n > 0 || degrees == "C")
	if degrees == "" {
		degrees = "F"
		if metric {
			degrees = "C"
		}
	}
	return degrees, metric
}

// quantities gives each number to a fact, the surest first.
func (s *solver) quantities() {
	s.roles()
	var open []int
	for q := range s.items {
		if s.items[q].kind == aQuantity && !s.used[q] {
			open = append(open, q)
			s.fits[q] = s.candidates(q)
		}
	}
	for len(open) > 0 {
		at := s.surest(open)
		if at < 0 {
			return
		}
		q := open[at]
		open = slices.Delete(open, at, at+1)
		if !s.give(q) {
			continue
		}
		for _, o := range open { // what it has taken counts less for the others
			if s.leans(o, q) {
				s.fits[o] = s.candidates(o)
			}
		}
	}
}

// leans says whether the quantity at item o leans on the phrase that the one at item q has taken, or is set against it.
func (s *solver) leans(o, q int) bool {
	taken := s.fits[q][0].near
	if taken == nil || o-q > 80 || q-o > 80 {
		return false
	}
	return slices.ContainsFunc(s.fits[o], func(f fit) bool { return f.near == taken })
}

// surest is the open quantity with the most points.
func (s *solver) surest(open []int) int {
	best := -1
	for i, q := range open {
		f := s.fits[q]
		if len(f) == 0 || !sure(f) {
			continue
		}
		if best < 0 || f[0].points > s.fits[open[best]][0].points {
			best = i
		}
	}
	return best
}

// sure says whether the best fit is good enough, or well ahead of all others.
func sure(f []fit) bool {
	switch {
	case f[0].points >= enough:
		return true
	case f[0].points < hardly, !f[0].solid:
		return false
	}
	return len(f) == 1 || f[0].points-f[1].points >= ahead
}

// give gives the quantity at item q to its best fact, or lists it as unread when two facts want it alike.
func (s *solver) give(q int) bool {
	list := s.fits[q]
	f := list[0]
	path := s.facts[f.fact].Path
	if i, ok := s.stated[path]; ok {
		if s.facts[f.fact].Kind == job.KindList {
			return s.extend(q, f, i)
		}
		return s.again(q, f, i)
	}
	var rivals []string
	for _, o := range list[1:] {
		if _, ok := s.stated[s.facts[o.fact].Path]; ok || o.points < enough || f.points-o.points >= tooClose {
			continue
		}
		rivals = append(rivals, s.facts[o.fact].Name)
	}
	s.used[q] = true
	if len(rivals) > 0 {
		s.out.Unread = append(s.out.Unread, Unread{Text: s.context(q), Meanings: append([]string{s.facts[f.fact].Name}, rivals...), at: s.items[q].start})
		return false
	}
	value, note := s.written(f)
	s.state(path, value, s.spoken(f), note, s.items[q].start)
	if f.near != nil {
		s.holds[f.near] = q
	}
	return true
}

// extend adds a number to a list that was begun: "test 12 was 3890 and test 13 was 3370".
func (s *solver) extend(q int, f fit, i int) bool {
	value, _ := s.written(f)
	list, ok := s.out.Facts[i].Value.([]any)
	if !ok {
		list = []any{s.out.Facts[i].Value}
	}
	s.used[q] = true
	s.out.Facts[i].Value = append(list, value)
	return true
}

// again handles a number whose fact has one already: the same said twice, a weaker claim, or a contradiction.
func (s *solver) again(q int, f fit, first int) bool {
	value, _ := s.written(f)
	fact := s.facts[f.fact]
	if fact.Same(s.canon(fact, s.out.Facts[first].Value), value) {
		s.used[q] = true
		return false
	}
	if s.another(q, f, value) {
		s.used[q] = true
		return false
	}
	rest := s.fits[q][1:]
	for len(rest) > 0 {
		if _, taken := s.stated[s.facts[rest[0].fact].Path]; !taken {
			break
		}
		rest = rest[1:]
	}
	if len(rest) > 0 && rest[0].points >= enough && f.points-rest[0].points < 1.5 {
		s.fits[q] = rest
		return s.give(q)
	}
	s.used[q] = true
	if f.points >= pointsSaid {
		s.out.Facts = append(s.out.Facts, Read{Path: fact.Path, Value: value, Text: s.spoken(f), at: s.items[q].start})
		return false
	}
	s.out.Unread = append(s.out.Unread, Unread{Text: s.context(q), at: s.items[q].start})
	return false
}

// another adds the slump of one more truck to the list of the others.
func (s *solver) another(q int, f fit, value string) bool {
	if s.facts[f.fact].Path != "load.slump" || !s.nearLabel(q) && !s.nearLabelOf("load.slump") {
		return false
	}
	const path = "load.other_slumps"
	if i, ok := s.stated[path]; ok {
		list, _ := s.out.Facts[i].Value.([]any)
		s.out.Facts[i].Value = append(list, value)
		return true
	}
	s.state(path, []any{value}, s.spoken(f), "", s.items[q].start)
	return true
}

// nearLabel says whether the name of a truck stands shortly before item q.
func (s *solver) nearLabel(q int) bool {
	for i := q - 1; i >= 0 && i > q-6 && s.items[i].kind != aBreak; i-- {
		if s.items[i].stem == labelStem {
			return true
		}
	}
	return false
}

// nearLabelOf says the same of the number that a fact was read from.
func (s *solver) nearLabelOf(path string) bool {
	at := s.out.Facts[s.stated[path]].at
	for q := range s.items {
		if s.items[q].kind == aQuantity && s.items[q].start == at {
			return s.nearLabel(q)
		}
	}
	return false
}

// canon gives a written value as the fact holds it.
func (s *solver) canon(fact *saying, written any) any {
	v, err := fact.Read(written)
	if err != nil {
		return written
	}
	return v
}

// written is the value of a fit as a job file would write it, with a note where a range was said.
func (s *solver) written(f fit) (string, string) {
	n := s.items[f.q].num
	value, note := n.low, ""
	if !n.single() {
		value = (n.low + n.high) / 2
		taken := "the middle"
		switch s.facts[f.fact].takes {
		case "low":
			value, taken = n.low, "the lower"
		case "high":
			value, taken = n.high, "the higher"
		}
		note = fmt.Sprintf("“%s” is a range: %s, %s, is taken as the %s", s.words(f.q, f.q), taken,
			quantity.Quantity{Value: value, Unit: f.unit}.Print(quantity.US), s.facts[f.fact].Name)
	}
	return strings.TrimSpace(plainNumber(value) + " " + f.unit), note
}

// spoken is the text that a fit was read from: the number, with the phrase that speaks for it where it stands beside it.
func (s *solver) spoken(f fit) string {
	from, to := f.q, f.q
	if f.near != nil && s.apart(f.near, f.q) < costComma {
		from, to = min(from, f.near.start), max(to, f.near.end-1)
	}
	for k := range s.saidBy[f.fact] {
		if m := &s.saidBy[f.fact][k]; m.at == f.q {
			from, to = min(from, m.start), max(to, m.end-1)
		}
	}
	return s.words(from, to)
}

// context is a number with a few words around it.
func (s *solver) context(q int) string {
	from, to := q, q
	for k := 0; k < 3 && from > 0 && s.items[from-1].kind == aWord; k++ {
		from--
	}
	for k := 0; k < 3 && to+1 < len(s.items) && s.items[to+1].kind == aWord; k++ {
		to++
	}
	return s.words(from, to)
}

func (s *solver) state(path string, value any, text, note string, at int) {
	s.stated[path] = len(s.out.Facts)
	s.out.Facts = append(s.out.Facts, Read{Path: path, Value: value, Text: strings.TrimSpace(text), Note: note, at: at})
}

func (s *solver) has(path string) bool {
	_, ok := s.stated[path]
	return ok
}

// taken says whether another number has the phrase already.
func (s *solver) taken(m *match, q int) bool {
	other, ok := s.holds[m]
	return ok && other != q
}

// unread lists the numbers that no fact has taken.
func (s *solver) unread() {
	for q := range s.items {
		it := &s.items[q]
		if s.used[q] || it.kind != aQuantity && it.kind != aSize && it.kind != aClock {
			continue
		}
		if it.kind == aQuantity && len(it.units) == 0 && it.num.spelled && it.num.low < 10 {
			continue // "two guys", "the first one": a small bare number in words is mostly talk
		}
		s.out.Unread = append(s.out.Unread, Unread{Text: s.context(q), at: it.start})
	}
}
