package rulebook

import "slices"

// decide judges by a plain practice. It says false, and leaves the judgement as it was, where the rule is not plain, or open in too
// many ways.
func (c *court) decide(one *Judgement) bool {
	p, ok := c.book.plain[one.Practice.ID]
	if !ok {
		return false
	}
	before := *one
	c.tooMany = false
	c.judgePlain(p, one)
	if c.tooMany {
		*one = before
	}
	return !c.tooMany
}

func (c *court) judgePlain(p *plain, one *Judgement) {
	switch p.here.truth(c) {
	case fails:
		return
	case holds:
		one.Concerns = true
	case unsettled:
		here := c.merged(c.residues("", p.here))
		if len(here) == 0 {
			return
		}
		one.Concerns = slices.ContainsFunc(here, certain)
	}
	reasons := map[string]bool{}
	var open []plainReason
	for _, r := range p.reasons {
		switch r.when.truth(c) {
		case unsettled:
			open = append(open, r)
		case holds:
			reasons[r.text] = true
		}
	}
	switch {
	case len(reasons) > 0:
		one.Status, one.Reasons, one.Concerns = Wrong, keys(reasons), true
	case len(open) > 0:
		c.leave(one, open)
	default:
		one.Status = Right
	}
}

// leave leaves a judgement open, with the conditions on which it hangs.
func (c *court) leave(one *Judgement, open []plainReason) {
	var residues []residue
	for _, r := range open {
		residues = append(residues, c.residues(r.text, r.when)...)
	}
	c.settle(one, c.merged(residues))
}

// residues gives what is left of an open clause.
func (c *court) residues(reason string, open clause) []residue {
	var residues []residue
	for _, w := range open.ways(c) {
		residues = append(residues, residue{reason: reason, exprs: w, support: c.apart})
	}
	return residues
}

// documents gives the numbers named and, where they are asked for, the mends of a plain practice, made of what is known. It
// says false where two rules give the same name two values: the evaluator then says what is wrong with them.
func (c *court) documents(p *plain, names []string, mending bool) (numbers []entry, mends map[string]any, ok bool) {
	c.closed = true
	defer func() { c.closed = false }()
	numbers = make([]entry, len(names))
	for i, name := range names {
		for k := range p.numbers[name] {
			if one := p.numbers[name][k].entry(c); one.given {
				if numbers[i].given {
					return nil, nil, false
				}
				numbers[i] = one
			}
		}
	}
	if mending {
		mends, ok = c.mends(p)
		return numbers, mends, ok
	}
	return numbers, nil, true
}

func (c *court) mends(p *plain) (map[string]any, bool) {
	mends := map[string]any{}
	for path, ways := range p.mends {
		for i, way := range ways {
			if v := way.whole(c); v != nil {
				if mends[path] != nil && i > 0 {
					return nil, false
				}
				mends[path] = v
			}
		}
	}
	return mends, true
}

// entry is a line of the number document: numbers, or paths of facts and figures. It is not given where its conditions do not
// hold, or a side of it is not there.
type entry struct {
	given                   bool
	yours, right, low, high any
	unit                    any
}

// side is one of its sides by name; nil for a name that is none.
func (e *entry) side(name string) *any {
	switch name {
	case "yours":
		return &e.yours
	case "right":
		return &e.right
	case "low":
		return &e.low
	case "high":
		return &e.high
	case "unit":
		return &e.unit
	}
	return nil
}

// entryOf reads a line of the number document that the evaluator made.
func entryOf(written any) (e entry) {
	sides, given := written.(map[string]any)
	e.given = given
	for name, v := range sides {
		if side := e.side(name); side != nil {
			*side = v
		}
	}
	return e
}

func (n *plainNumber) entry(c *court) (e entry) {
	if n.when.truth(c) != holds {
		return e
	}
	for _, s := range n.sides {
		v := s.read.value(c)
		if v.kind == absent {
			return entry{}
		}
		if side := e.side(s.name); side != nil {
			*side = v.plain()
		}
	}
	e.given = true
	return e
}

// whole is a value or a list of them, or nothing where it does not hold or is not known.
func (v plainValue) whole(c *court) any {
	switch {
	case v.when.truth(c) != holds:
		return nil
	case v.items == nil:
		return v.value.value(c).plain()
	}
	var items []any
	for _, read := range v.items {
		item := read.value(c)
		if item.kind == absent {
			return nil
		}
		items = append(items, item.plain())
	}
	return items
}

func (v value) plain() any {
	switch v.kind {
	case number:
		return v.number
	case text:
		return v.text
	case flag:
		return v.flag
	}
	return nil
}
