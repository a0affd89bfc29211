package words

import "math"

// alone is how well the unit alone points to the fact. It says nothing for a bare number.
func (s *solver) alone(f *fit) float64 {
	fact := s.facts[f.fact]
	units := s.items[f.q].units
	if len(units) == 0 {
		n := s.items[f.q].num
		if s.barePart(f.q) && fact.Path == "order.aggregate" {
			return enough + 0.4
		}
		if len(fact.plain) == 2 && n.single() && n.low >= fact.plain[0] && n.low <= fact.plain[1] && (math.Mod(n.low, 100) == 0 || n.decimal) {
			return enough + 0.4
		}
		return 0
	}
	if points, ok := fact.units[f.unit]; ok {
		if fact.Path == "member.thickness" && !s.member() || fact.Path == "mix.cementitious" && units[0] == "lb" && !s.cementSaid() {
			return 0
		}
		return points
	}
	if units[0] != f.unit && units[0] != "deg?" {
		return 0
	}
	return fact.alone
}

// barePart says whether the number at item q is a fraction such as 3/4 or 3/8 that stands alone between pauses, as the size
// of the stone does in an order that is told in figures.
func (s *solver) barePart(q int) bool {
	it := &s.items[q]
	if !it.num.part || it.num.decimal || it.num.spelled || it.num.low < 0.37 || it.num.high > 1.6 || len(it.units) > 0 {
		return false
	}
	before := q == 0 || s.items[q-1].kind == aBreak
	after := q+1 == len(s.items) || s.items[q+1].kind == aBreak
	others := 0
	for i := range s.items {
		others += one(i != q && s.items[i].kind == aQuantity)
	}
	return before && after && others >= 2
}

// said gives the points of the best phrase of the fact that holds the number.
func (s *solver) said(f *fit) float64 {
	best := 0.0
	for k := range s.saidBy[f.fact] {
		m := &s.saidBy[f.fact][k]
		if m.at != f.q || m.denied {
			continue
		}
		p := m.use.pattern.weight
		if p == 0 {
			p = pointsSaid + pointsWord*float64(m.use.pattern.literals-1)
		}
		if m.use.pattern.far && p > pointsNear {
			if n := s.crossed(m, f.q); n > 0 {
				p = max(pointsNear, p-pointsBetween*float64(n))
			}
		}
		best = max(best, p)
	}
	return best
}

// crossed counts the numbers of the same sort that stand inside a match between its beginning or end and the number it is about.
func (s *solver) crossed(m *match, q int) int {
	n := 0
	for i := m.start; i < m.end; i++ {
		if i != q && s.alike(i, q) {
			n++
		}
	}
	for _, e := range m.use.pattern.elements {
		if e.what == 'n' || e.what == 'r' {
			n--
		}
	}
	return max(n, 0)
}

// background gives the points of what is spoken of around the number where the fact is likely to be told.
func (s *solver) background(f *fit) float64 {
	best := 0.0
	for k := range s.contextBy[f.fact] {
		m := &s.contextBy[f.fact][k]
		if apart := s.apart(m, f.q); apart <= topicReach {
			best = max(best, m.use.pattern.near()-pointsApart*apart, pointsTopic)
		}
	}
	return best
}

// near gives the points of the best phrase of the fact near the number, and how far it stands apart.
func (s *solver) near(f *fit) (points, reach float64) {
	for k := range s.nearBy[f.fact] {
		m := &s.nearBy[f.fact][k]
		apart := s.apart(m, f.q)
		if apart > topicReach || len(s.items[f.q].units) == 0 && m.start > f.q && s.pauseBetween(f.q, m.start) {
			continue
		}
		p := m.use.pattern.near()
		p -= pointsApart*apart + pointsBetween*float64(s.between(m, f.q))
		if s.items[f.q].num.part && len(s.items[f.q].units) == 0 && m.start > f.q {
			p -= 0.1
		}
		if s.taken(m, f.q) {
			p -= pointsTaken
		}
		if p = max(p, pointsTopic); p > points {
			points, reach, f.near = p, apart, m
		}
	}
	return points, reach
}

// never gives what is to be taken off because of a phrase that speaks against the fact.
func (s *solver) never(f *fit) float64 {
	off := 0.0
	for k := range s.neverBy[f.fact] {
		m := &s.neverBy[f.fact][k]
		switch {
		case m.at == f.q:
			return pointsNever
		case m.at < 0 && s.apart(m, f.q) < neverReach:
			off = pointsNever
		}
	}
	return off
}

// member says whether something that has a thickness is spoken of.
func (s *solver) member() bool {
	if s.has("member.use") || s.has("member.kind") {
		return true
	}
	for i := range s.items {
		if it := &s.items[i]; it.kind == aSize || it.kind == aWord && (flat[it.text] || flatwork[it.text] || it.text == "thick" || it.text == "topping" || it.text == "wall" || it.text == "flatwork" || it.text == "forms" || it.text == "poured" || it.text == "panels") {
			return true
		}
	}
	return false
}

// cementSaid says whether cement or a mix is spoken of.
func (s *solver) cementSaid() bool {
	for i := range s.items {
		if it := &s.items[i]; it.kind == aWord && mixWords[it.text] || it.kind == aQuantity && len(it.units) > 0 && it.units[0] == "bags/yd3" {
			return true
		}
	}
	return false
}

var mixWords = set([]string{"cement", "cementitious", "binder", "powder", "portland", "mix", "ash", "slag", "w/c", "wcratio"})
