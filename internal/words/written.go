package words

import (
	"fmt"
	"strings"

	"hearsay/internal/quantity"
)

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
		case "far": // from what is wanted: either end may be out of it
			value, taken = n.high, "the higher"
			if v, ok := convert(n, f.unit, "F"); ok && wantedCuring-v.low > v.high-wantedCuring {
				value, taken = n.low, "the lower"
			}
		}
		note = fmt.Sprintf("“%s” is a range: %s, %s, is taken as the %s", s.words(f.q, f.q), taken,
			quantity.Quantity{Value: value, Unit: f.unit}.Print(quantity.US), s.facts[f.fact].Name)
	}
	return strings.TrimSpace(plainNumber(value) + " " + f.unit), note
}

// wantedCuring is the middle of the temperatures in °F in which cylinders are kept at first.
const wantedCuring = 70

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
