package words

// How far things stand apart in talk: small words hardly part them, pauses and other numbers do.
const (
	costFiller    = 0.2
	costWord      = 1.0
	costAnd       = 1.6
	costTurn      = 2.6 // but, then, so, because
	costNumber    = 1.5
	costComma     = 2.4
	costColon     = 1.0
	costSemicolon = 6.0
	costSentence  = 9.0
	costParagraph = 14.0
)

// weigh sums up the distances from the beginning of the text.
func (r *reading) weigh() {
	sum := 0.0
	for i := range r.items {
		it := &r.items[i]
		it.cost = sum
		switch it.kind {
		case aWord:
			switch {
			case it.text == "and":
				sum += costAnd
			case r.v.turns[it.text]:
				sum += costTurn
			case it.filler:
				sum += costFiller
			default:
				sum += costWord
			}
		case aBreak:
			sum += [...]float64{0, costComma, costColon, costSemicolon, costSentence, costParagraph}[it.pause]
		default:
			sum += costNumber
		}
	}
}

// apart is the distance between a match and the item q.
func (r *reading) apart(m *match, q int) float64 {
	switch {
	case m.end <= q:
		return r.items[q].cost - r.costTo(m.end)
	case m.start > q:
		return r.items[m.start].cost - r.costTo(q+1)
	}
	return 0
}

func (r *reading) costTo(i int) float64 {
	if i < len(r.items) {
		return r.items[i].cost
	}
	last := &r.items[len(r.items)-1]
	return last.cost
}

// between counts the quantities of the same sort as item q that stand between it and the match.
func (r *reading) between(m *match, q int) int {
	from, to := m.end, q
	if m.start > q {
		from, to = q+1, m.start
	}
	n := 0
	for i := from; i < to; i++ {
		if r.alike(i, q) {
			n++
		}
	}
	return n
}

// alike says whether two items are quantities of the same sort.
func (r *reading) alike(i, q int) bool {
	a, b := &r.items[i], &r.items[q]
	if a.kind != aQuantity || b.kind != aQuantity {
		return false
	}
	if len(a.units) == 0 || len(b.units) == 0 {
		return len(a.units) == len(b.units)
	}
	return a.units[0] == b.units[0]
}
