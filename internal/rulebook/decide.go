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

// documents gives the numbers and, where they are asked for, the mends of a plain practice, made of what is known. It says
// false where two rules give the same name two values: the evaluator then says what is wrong with them.
func (c *court) documents(p *plain, mending bool) (numbers, mends map[string]any, ok bool) {
	c.closed = true
	defer func() { c.closed = false }()
	numbers, ok = byName(p.numbers, func(n plainNumber) any { return n.entry(c) })
	if ok && mending {
		mends, ok = byName(p.mends, func(v plainValue) any { return v.whole(c) })
	}
	return numbers, mends, ok
}

// byName gives, of each name, what one of its rules makes. It says false where two do.
func byName[T any](rules map[string][]T, made func(T) any) (map[string]any, bool) {
	whole := map[string]any{}
	for name, ways := range rules {
		for i, way := range ways {
			if one := made(way); one != nil {
				if whole[name] != nil && i > 0 {
					return nil, false
				}
				whole[name] = one
			}
		}
	}
	return whole, true
}

// entry is a line of the number document, or nothing where it does not hold or lacks a side.
func (n plainNumber) entry(c *court) any {
	if n.when.truth(c) != holds {
		return nil
	}
	entry := map[string]any{}
	for side, read := range n.sides {
		v := read.value(c)
		if v.kind == absent {
			return nil
		}
		entry[side] = v.plain()
	}
	return entry
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
