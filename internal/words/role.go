package words

// roles finds the role that each number plays from the words that lead to it ("ordered 4, got 5 1/2") or follow it ("a 4
// inch order"). A role goes on over "and", and more weakly over commas, until another role is named.
func (s *solver) roles() {
	for q := range s.items {
		if s.items[q].kind == aQuantity {
			s.roleOf[q] = s.roleAt(q)
		}
	}
}

func (s *solver) roleAt(q int) role {
	best := role{index: -1}
	nearest := 1e9
	for k := range s.roleHits {
		m := &s.roleHits[k]
		if m.unsure && m.denied {
			continue
		}
		switch {
		case m.use.role == useBefore && m.end <= q:
			apart := s.roleApart(m.end, q)
			if apart >= 12 || apart >= nearest {
				continue
			}
			nearest = apart
			best = role{m.use.target, max(0.4, pointsRole-0.17*apart)}
		case m.use.role == useAfter && m.start > q:
			apart := s.apart(m, q)
			if apart > 2.2 || s.between(m, q) > 0 || apart >= nearest {
				continue
			}
			nearest = apart
			best = role{m.use.target, pointsRole + 0.3}
		}
	}
	return best
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
		}
	}
	return d
}
