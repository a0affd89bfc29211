package rulebook

// decide judges by a plain practice whose answer hangs on nothing unknown. It says false, and leaves the judgement as it was,
// where the rule is not plain or the answer is open; of an open answer of a plain rule it leaves whether it surely concerns the job.
func (c *court) decide(one *Judgement) bool {
	p, ok := c.book.plain[one.Practice.ID]
	if !ok {
		return false
	}
	here := p.here(c)
	if here == fails {
		return true
	}
	one.Concerns = here == holds
	reasons, open := map[string]bool{}, false
	for _, r := range p.reasons {
		switch r.when(c) {
		case unsettled:
			open = true
		case holds:
			reasons[r.text] = true
		}
	}
	switch {
	case len(reasons) > 0:
		one.Status, one.Reasons, one.Concerns = Wrong, keys(reasons), true
	case open:
		return false
	default:
		one.Status = Right
	}
	return true
}

// documents gives the numbers and the mends of a plain practice, made of what is known. It says false where two rules
// give the same name two values: the evaluator then says what is wrong with them.
func (c *court) documents(p *plain) (numbers, mends map[string]any, ok bool) {
	c.closed = true
	defer func() { c.closed = false }()
	numbers, mends = map[string]any{}, map[string]any{}
	for name, ways := range p.numbers {
		for i, way := range ways {
			if entry := way.entry(c); entry != nil {
				if numbers[name] != nil && i > 0 {
					return nil, nil, false
				}
				numbers[name] = entry
			}
		}
	}
	for path, ways := range p.mends {
		for i, way := range ways {
			if v := way.whole(c); v != nil {
				if mends[path] != nil && i > 0 {
					return nil, nil, false
				}
				mends[path] = v
			}
		}
	}
	return numbers, mends, true
}

// entry is a line of the number document, or nothing where it does not hold or lacks a side.
func (n plainNumber) entry(c *court) any {
	if n.when(c) != holds {
		return nil
	}
	entry := map[string]any{}
	for side, read := range n.sides {
		v := read(c)
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
	case v.when(c) != holds:
		return nil
	case v.value != nil:
		return v.value(c).plain()
	}
	var items []any
	for _, read := range v.items {
		item := read(c)
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
