package words

// match is one place where a pattern fits.
type match struct {
	use        *use
	start, end int  // items, end not included
	at         int  // the quantity, time or size it is about; -1 where it has none
	denied     bool // negation from outside the phrase reaches it
	unsure     bool
}

// use is what a pattern stands for.
type use struct {
	pattern *pattern
	target  int    // index of the fact, role or event
	role    byte   // see the roles below
	value   string // of a choice or a flag, or the fixed value of a quantity
}

// What a pattern may be for.
const (
	useSaid    = 's' // a number in the pattern belongs to the fact
	useNear    = 'n' // a number near the phrase belongs to the fact
	useContext = 'c' // a number that a phrase of the fact holds is likelier its where this is spoken of
	useNever   = 'x' // a number near the phrase does not
	useValue   = 'v' // the phrase states the value
	useEvent   = 'e' // a time in or near the phrase is when that happens
	useBefore  = 'b' // a number after the phrase plays the role
	useAfter   = 'a' // a number before the phrase plays the role
	useNeeds   = 'd' // phrases without which a fact is not meant
	useIgnore  = 'i' // the number in the phrase is no fact
	useEcho    = 'o' // two facts have the same value
	useShare   = 'p' // the number in the phrase is the fact's share of all cementitious material
)

// find matches every pattern against the text.
func (r *reading) find() []match {
	present := make([]bool, len(r.v.ids)+1)
	for i := range r.items {
		r.identify(&r.items[i])
		present[r.items[i].id], present[r.items[i].exact] = true, true
	}
	half := len(r.items) / 2
	if half < worthSharing {
		return r.findFrom(0, len(r.items), present)
	}
	rest := make(chan []match, 1)
	go func() { rest <- r.findFrom(half, len(r.items), present) }()
	found := r.findFrom(0, half, present)
	return append(found, <-rest...)
}

// worthSharing is how many items make it worth while to look for patterns in two halves of a text at once.
const worthSharing = 100

// findFrom finds the patterns whose anchors stand at these items.
func (r *reading) findFrom(from, to int, present []bool) []match {
	found := make([]match, 0, to-from)
	alive := make(map[int32][]*use, to-from) // of each id that stands there, the patterns all of whose words stand in the text
	pool := make([]*use, 0, 4096)
	for i := from; i < to; i++ {
		it := &r.items[i]
		for k, id := range [2]int32{it.id, it.exact} {
			if id == 0 || int(id) >= len(r.index) || k == 1 && id == it.id {
				continue
			}
			uses, sought := alive[id]
			if !sought {
				from := len(pool)
				pool = standing(pool, r.index[id], present)
				uses = pool[from:len(pool):len(pool)]
				alive[id] = uses
			}
			for _, u := range uses {
				if m, ok := r.matchAt(u, i); ok {
					found = append(found, m)
				}
			}
		}
	}
	return found
}

// identify gives an item the ids by which patterns know it: of a word its stem, of a single number the number.
func (r *reading) identify(it *item) {
	switch {
	case it.kind == aWord:
		it.id = r.v.ids[it.stem]
		it.exact = r.v.ids["="+it.text]
	case it.kind == aSize:
		it.id = r.v.ids[sizeKey]
	case it.kind == aQuantity && it.num.single() && it.num.low == float64(int(it.num.low)):
		it.id = r.v.ids[plainNumber(it.num.low)]
	}
}

// standing adds the uses whose patterns have all their words somewhere in the text.
func standing(list []*use, uses []use, present []bool) []*use {
	for k := range uses {
		if uses[k].pattern.whole(present) {
			list = append(list, &uses[k])
		}
	}
	return list
}

// whole says whether every word that the pattern needs stands somewhere in the text.
func (p *pattern) whole(present []bool) bool {
	for _, need := range p.needs {
		some := false
		for _, id := range need {
			if present[id] {
				some = true
				break
			}
		}
		if !some {
			return false
		}
	}
	return true
}

// matchAt matches a pattern with its anchor at item i.
func (r *reading) matchAt(u *use, i int) (match, bool) {
	p := u.pattern
	at := -1
	end, ok := r.forward(p.elements[p.anchor:], i, &at, true)
	if !ok {
		return match{}, false
	}
	start, ok := r.backward(p.elements[:p.anchor], i-1, &at)
	if !ok {
		return match{}, false
	}
	m := match{use: u, start: start, end: end, at: at}
	for k := start; k < end; k++ {
		it := &r.items[k]
		if it.negBy >= 0 && (it.negBy < start || it.negBy >= end) && it.kind == aWord && !it.filler {
			m.denied = true
		}
		m.unsure = m.unsure || it.unsure
	}
	if p.negated {
		if !m.denied {
			return match{}, false
		}
		m.denied = false
	} else if p.blind {
		m.denied = false
	}
	return m, true
}

// skips is how many small words may stand between two elements of a pattern, and how many words of any kind at a *; farSkips
// how many items at a **.
const (
	skips    = 4
	farSkips = 9
)
