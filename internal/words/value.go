package words

import (
	"sort"
	"strings"

	"hearsay/internal/job"
)

// values reads the facts that phrases state: choices, flags, and numbers that a phrase stands for. Of two values of one
// fact, the one stated by the longer phrase counts; when both have the same length, the fact is a question.
func (s *solver) values() {
	facts := make([]int, 0, len(s.valueBy))
	for f := range s.valueBy {
		if kind := s.facts[f].Kind; kind == job.KindChoice || kind == job.KindFlag {
			facts = append(facts, f)
		}
	}
	sort.Ints(facts)
	for _, f := range facts {
		s.value(f)
	}
}

// hasUnit says whether some number is said in one of the units.
func (s *solver) hasUnit(units map[string]bool) bool {
	for i := range s.items {
		if len(s.items[i].units) > 0 && units[s.items[i].units[0]] {
			return true
		}
	}
	return false
}

type claim struct {
	value  string
	points float64
	m      *match
}

func (s *solver) value(f int) {
	if s.facts[f].gated && len(s.contextBy[f]) == 0 && !s.hasUnit(s.facts[f].gateUnits) {
		return // what its phrases need to mean it is nowhere spoken of
	}
	best := map[string]claim{}
	for k := range s.valueBy[f] {
		m := &s.valueBy[f][k]
		c, ok := s.claimOf(f, m)
		if !ok {
			continue
		}
		if old, ok := best[c.value]; !ok || c.points > old.points || c.points == old.points && m.start < old.m.start {
			best[c.value] = c
		}
	}
	list := make([]claim, 0, len(best))
	for _, c := range best {
		list = append(list, c)
	}
	sort.Slice(list, func(i, j int) bool {
		if s.facts[f].takes == "first" && list[i].points >= 1 && list[j].points >= 1 && !overlap(list[i].m, list[j].m) {
			return list[i].m.start < list[j].m.start
		}
		if list[i].points != list[j].points {
			return list[i].points > list[j].points
		}
		if overlap(list[i].m, list[j].m) {
			return list[i].m.end > list[j].m.end // "retaining wall footing" is a footing
		}
		return list[i].m.start < list[j].m.start
	})
	if len(list) == 0 {
		return
	}
	win := list[0]
	fact := s.facts[f]
	if len(list) > 1 && list[1].points == win.points && fact.takes != "first" && !overlap(win.m, list[1].m) {
		s.out.Unread = append(s.out.Unread, Unread{Text: s.words(min(win.m.start, list[1].m.start), max(win.m.end, list[1].m.end)-1),
			Meanings: []string{fact.Name + ": " + s.nameOf(f, win.value), fact.Name + ": " + s.nameOf(f, list[1].value)}, at: s.items[win.m.start].start})
		return
	}
	s.state(fact.Path, win.value, s.words(win.m.start, win.m.end-1), "", s.items[win.m.start].start)
}

// ruledOut says whether a phrase that speaks of something else ("frost wall") holds part of the phrase.
func (s *solver) ruledOut(f int, m *match) bool {
	for k := range s.neverBy[f] {
		n := &s.neverBy[f][k]
		inside := n.at >= 0 && n.start > m.start && n.end <= m.end // "wrote the eight on the ticket" says more than "eight on the ticket"
		if overlap(n, m) && !inside {
			return true
		}
	}
	return false
}

func overlap(a, b *match) bool { return a.start < b.end && b.start < a.end }

// claimOf says which value a phrase states where it stands: a flag that is denied is turned round, a choice that is denied
// says nothing.
func (s *solver) claimOf(f int, m *match) (claim, bool) {
	if m.unsure && s.facts[f].takes != "first" || s.ruledOut(f, m) {
		return claim{}, false
	}
	value := m.use.value
	if m.denied && s.facts[f].takes != "first" {
		if s.facts[f].Kind != job.KindFlag {
			return claim{}, false
		}
		value = map[string]string{"yes": "no", "no": "yes"}[value]
	}
	return claim{value, m.use.pattern.points(), m}, true
}

func (s *solver) nameOf(f int, value string) string {
	if c, ok := s.facts[f].Choice(value); ok {
		return c.Name
	}
	return value
}

// fixed reads the numbers that a phrase stands for ("pea gravel", "not a drop"), where no number was said for the fact.
func (s *solver) fixed() {
	facts := make([]int, 0, len(s.valueBy))
	for f := range s.valueBy {
		if s.facts[f].Kind == job.KindQuantity && !s.has(s.facts[f].Path) && (!s.facts[f].needy || len(s.needBy[f]) > 0) {
			facts = append(facts, f)
		}
	}
	sort.Ints(facts)
	for _, f := range facts {
		for k := range s.valueBy[f] {
			m := &s.valueBy[f][k]
			if m.denied || m.unsure || s.has(s.facts[f].Path) || s.ruledOut(f, m) {
				continue
			}
			s.state(s.facts[f].Path, strings.TrimSpace(m.use.value), s.words(m.start, m.end-1), "", s.items[m.start].start)
			if m.at >= 0 {
				s.used[m.at] = true
			}
		}
	}
}
