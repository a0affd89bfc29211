package words

import "slices"

// roles finds the role that each number plays from the words that lead to it ("ordered 4, got 5 1/2") or follow it ("a 4
// inch order"). A role goes on over "and", and more weakly over commas, until another role is named.
func (s *solver) roles() {
	for q := range s.items {
		if s.items[q].kind == aQuantity {
			s.roleOf[q] = s.roleAt(q)
		}
	}
}

// roleReach is how many items a role word may stand away from its number.
const roleReach = 30

func (s *solver) roleAt(q int) role {
	best := role{index: -1}
	if i := s.against(q); i != 0 {
		return role{i - 1, pointsRole + 0.5}
	}
	nearest := 1e9
	for k := range s.roleHits {
		m := &s.roleHits[k]
		if m.end < q-roleReach || m.start > q+roleReach {
			continue
		}
		if m.unsure && m.denied {
			continue
		}
		switch {
		case m.use.role == useBefore && m.end <= q:
			apart := s.roleApart(m.end, q)
			if s.looksBack(m) || apart >= 12 || apart >= nearest || apart >= weakReach && m.end == m.start+1 && weakRoles[s.items[m.start].text] {
				continue
			}
			nearest = apart
			best = role{m.use.target, max(0.4, pointsRole-0.17*apart)}
		case m.use.role == useAfter && m.start > q && !s.leadsOn(m):
			apart := s.apart(m, q)
			if apart > 2.2 || s.numberBetween(q+1, m.start) || apart >= nearest {
				continue
			}
			nearest = apart
			best = role{m.use.target, pointsRole + 0.3}
		}
	}
	return best
}

// weakRoles are words that give a role to the number right after them alone, for people say them of much else: "Got a text".
var weakRoles = set([]string{"got", "was", "were", "gave", "hit", "show", "shows", "still", "check", "checked", "go", "pulled"})

// weakReach is how far they reach.
const weakReach = 4.0

// looksBack says whether a role word belongs to the number before it alone: "0.45 max, 12 yards".
func (s *solver) looksBack(m *match) bool {
	if m.end < len(s.items) && s.items[m.end].kind != aBreak {
		return false
	}
	for i := m.start - 1; i >= 0 && i >= m.start-4; i-- {
		switch s.items[i].kind {
		case aQuantity:
			return true
		case aBreak:
			return false
		}
	}
	return false
}

// pairedTopic is the topic of the number that item q is set against: "air 6.2 for 6 ordered", "5 1/2 on a 4 inch order".
func (s *solver) pairedTopic(q int) string {
	linked := false
	for i := q - 1; i >= 0 && i > q-7; i-- {
		it := &s.items[i]
		switch {
		case it.kind == aQuantity && linked && len(s.fits[i]) > 0:
			for _, f := range s.fits[i] {
				if topic := s.facts[f.fact].topic; topic != "" {
					return topic
				}
			}
			return ""
		case it.kind == aBreak && it.pause == pauseComma && s.roleOf[q].index >= 0:
			linked = true
			continue
		case it.kind != aWord:
			return ""
		case s.roleOf[q].index >= 0 && asking[it.text]:
			continue
		case it.text == "for" || it.text == "against" || it.text == "on" || it.text == "vs" || it.text == "versus" || it.text == "of":
			linked = true
		case !it.filler:
			return ""
		}
	}
	return ""
}

// asking are the words between a measurement and what was asked for: "air came back 8.4, we ordered 5.5".
var asking = set([]string{"ordered", "order", "spec", "specs", "spec's", "specified", "called", "asked", "wanted", "limit", "limit's", "max", "says", "ticket", "design", "target", "allows"})

// leadsOn says whether a number follows right after a role word, which it then belongs to: "slump 3 1/2 ordered 4".
func (s *solver) leadsOn(m *match) bool {
	for i := m.end; i < len(s.items); i++ {
		if s.items[i].kind == aQuantity {
			return true
		}
		if !s.items[i].filler {
			return false
		}
	}
	return false
}

func (s *solver) pauseBetween(from, to int) bool {
	for i := from; i < to; i++ {
		if s.items[i].kind == aBreak {
			return true
		}
	}
	return false
}

func (s *solver) numberBetween(from, to int) bool {
	for i := from; i < to; i++ {
		if k := s.items[i].kind; k == aQuantity || k == aSize {
			return true
		}
	}
	return false
}

// roleApart is the distance from a role word to a number, in which the numbers between them count little.
func (s *solver) roleApart(from, q int) float64 {
	d := s.items[q].cost - s.costTo(from)
	for i := from; i < q; i++ {
		switch it := &s.items[i]; {
		case it.kind == aQuantity:
			d -= costNumber - 0.5
		case it.kind == aWord && it.text == "and":
			d -= costAnd - 0.5
		case it.kind == aBreak && it.pause >= pauseSentence:
			d += 4
		case it.kind == aWord && (it.text == "but" || it.text == "then" || it.text == "so" || it.text == "while"):
			d += 3
		}
	}
	return d
}

// against says whether the number at item q is set against another of its sort ("air 5.8 for six", "3 inches against a 4 inch order"): it gives
// one more than the index of the role that it plays, measured before the word and ordered after it, and 0 where it is not.
func (s *solver) against(q int) int {
	other, before := s.opposite(q, 1), true
	if other < 0 {
		other, before = s.opposite(q, -1), false
	}
	if other < 0 {
		return 0
	}
	name := "ordered"
	if before {
		name = "measured"
	}
	return slices.Index(s.Reader.roles, name) + 1
}

// opposite is the number on the other side of "for", "on", "against" or "versus" in one direction from item q, with at most an article
// between; -1 where there is none.
func (s *solver) opposite(q, step int) int {
	linked := false
	for i := q + step; i >= 0 && i < len(s.items) && i != q+5*step; i += step {
		it := &s.items[i]
		switch {
		case it.kind == aQuantity:
			a, b := &s.items[q], it
			if !linked || len(a.units) > 0 && len(b.units) > 0 && a.units[0] != b.units[0] || a.glue || b.glue || b.num.high > 3*a.num.low || a.num.high > 3*b.num.low || a.num.high > 15 || !s.sized(a) || !s.sized(b) {
				return -1
			}
			return i
		case it.kind != aWord:
			return -1
		case it.text == "for" || it.text == "against" || it.text == "on" || it.text == "vs" || it.text == "versus" || it.text == "over":
			linked = true
		case it.text == "a" || it.text == "an" || it.text == "the" || it.text == "arrival" || it.text == "site" || it.text == "slump" || it.text == "air" || it.text == "percent" || it.text == "inch":
		default:
			return -1
		}
	}
	return -1
}

// sized says whether a number can be a slump or an air content.
func (s *solver) sized(it *item) bool {
	return len(it.units) == 0 || it.units[0] == "in" || it.units[0] == "%"
}
