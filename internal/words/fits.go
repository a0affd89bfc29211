package words

// forward matches the elements from item i on and gives the item after the last.
func (r *reading) forward(es []element, i int, at *int, first bool) (int, bool) {
	if len(es) == 0 {
		return i, true
	}
	e := &es[0]
	if e.what == '*' {
		for k := 0; k <= skips; k++ {
			if end, ok := r.forward(es[1:], i+k, at, false); ok {
				return end, true
			}
			if i+k >= len(r.items) || r.items[i+k].kind != aWord {
				break
			}
		}
		return 0, false
	}
	if e.what == '+' {
		for k := 0; k <= farSkips; k++ {
			if end, ok := r.forward(es[1:], i+k, at, false); ok {
				return end, true
			}
			if i+k >= len(r.items) || r.items[i+k].kind == aBreak && r.items[i+k].pause > pauseComma {
				break
			}
		}
		return 0, false
	}
	for k := 0; ; k++ {
		if n := r.fits(e, i); n > 0 {
			old := *at
			if e.target() {
				*at = i
			}
			if end, ok := r.forward(es[1:], i+n, at, false); ok {
				return end, true
			}
			*at = old
		}
		if first || k >= skips || i >= len(r.items) || !r.items[i].filler {
			break
		}
		i++
	}
	if e.optional {
		return r.forward(es[1:], i, at, first)
	}
	return 0, false
}

// backward matches the elements that stand before the anchor, from item i back, and gives the first item.
func (r *reading) backward(es []element, i int, at *int) (int, bool) {
	if len(es) == 0 {
		return i + 1, true
	}
	e := &es[len(es)-1]
	if e.what == '*' {
		for k := 0; k <= skips; k++ {
			if start, ok := r.backward(es[:len(es)-1], i-k, at); ok {
				return start, true
			}
			if i-k < 0 || r.items[i-k].kind != aWord {
				break
			}
		}
		return 0, false
	}
	if e.what == '+' {
		for k := 0; k <= farSkips; k++ {
			if start, ok := r.backward(es[:len(es)-1], i-k, at); ok {
				return start, true
			}
			if i-k < 0 || r.items[i-k].kind == aBreak && r.items[i-k].pause > pauseComma {
				break
			}
		}
		return 0, false
	}
	for k, j := 0, i; j >= 0; k++ {
		if n := r.fitsBack(e, j); n > 0 {
			old := *at
			if e.target() {
				*at = j
			}
			if start, ok := r.backward(es[:len(es)-1], j-n, at); ok {
				return start, true
			}
			*at = old
		}
		if k >= skips || !r.items[j].filler {
			break
		}
		j--
	}
	if e.optional {
		return r.backward(es[:len(es)-1], i, at)
	}
	return 0, false
}

// fits gives how many items from i on the element takes; 0 when it does not fit.
func (r *reading) fits(e *element, i int) int {
	if i < 0 || i >= len(r.items) {
		return 0
	}
	switch it := &r.items[i]; e.what {
	case '#', 'n':
		return one(it.kind == aQuantity)
	case 'u':
		return one(it.kind == aQuantity && len(it.units) > 0)
	case 'r':
		return one(it.kind == aQuantity && it.glue && it.units[0] == "bar")
	case '@':
		return one(it.kind == aClock || it.kind == aDate || it.kind == aQuantity && it.clock.hour > 0 || it.kind == aWord && isWeekday(it.text))
	case '?':
		return one(it.kind == aClock || it.kind == aDate || it.kind == aQuantity && (it.clock.hour > 0 || couldBeClock(it)) || it.kind == aWord && isWeekday(it.text))
	case 'x':
		return one(it.kind == aSize)
	}
	it := &r.items[i]
	if it.id != 0 || it.exact != 0 {
		for _, id := range e.ids {
			if id == it.id || id == it.exact {
				return 1
			}
		}
	}
	for _, p := range e.phrases {
		if r.run(p, i) {
			return len(p)
		}
	}
	return 0
}

// fitsBack gives how many items that end with item i the element takes.
func (r *reading) fitsBack(e *element, i int) int {
	if e.what != 'w' || len(e.phrases) == 0 {
		return r.fits(e, i)
	}
	if n := r.fits(&element{what: 'w', ids: e.ids}, i); n > 0 {
		return n
	}
	for _, p := range e.phrases {
		if i-len(p)+1 >= 0 && r.run(p, i-len(p)+1) {
			return len(p)
		}
	}
	return 0
}

func (r *reading) run(ids []int32, i int) bool {
	for k, id := range ids {
		if i+k >= len(r.items) || r.items[i+k].id != id && r.items[i+k].exact != id {
			return false
		}
	}
	return true
}

func one(b bool) int {
	if b {
		return 1
	}
	return 0
}

func isWeekday(word string) bool { _, ok := weekdays[word]; return ok }

// couldBeClock says whether a bare number may be an hour, or an hour with its minutes ("730").
func couldBeClock(it *item) bool {
	n := it.num
	return len(it.units) == 0 && n.single() && !n.part && (n.low >= 1 && n.low <= 12 || hourAndMinutes(n.low))
}

// hourAndMinutes says whether a number is a time written without its colon, such as 730 or 1115.
func hourAndMinutes(n float64) bool {
	minutes := int(n) % 100
	return n >= 100 && n < 1300 && minutes < 60 && minutes%15 == 0
}
