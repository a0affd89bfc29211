package words

// polarity marks what is denied and what is left open: "no chloride in it", "nobody put it on the ticket", "if it rains".
func (r *reading) polarity() {
	for i := range r.items {
		it := &r.items[i]
		if it.kind != aWord {
			continue
		}
		if n := r.negatorAt(i); n > 0 {
			r.negate(i, n)
		}
		if r.unsureAt(i) {
			r.doubt(i)
		}
	}
}

// negatorAt says how many items the word of negation at item i takes; 0 when there is none, or when it only bounds a number
// ("no more than 4").
func (r *reading) negatorAt(i int) int {
	for _, phrase := range r.v.notNegators[r.items[i].text] {
		if r.says(i, phrase) {
			return 0
		}
	}
	best := 0
	for _, phrase := range r.v.negators[r.items[i].text] {
		if len(phrase) > best && r.says(i, phrase) {
			best = len(phrase)
		}
	}
	if best == 0 && r.items[i].stem == "not" {
		best = 1
	}
	return best
}

func (r *reading) says(i int, phrase []string) bool {
	for k, w := range phrase {
		if i+k >= len(r.items) || r.items[i+k].kind != aWord || r.items[i+k].text != w {
			return false
		}
	}
	return true
}

// negate marks the words that the negator at item i, which takes n items, reaches: to the next pause or turn.
func (r *reading) negate(i, n int) {
	for j := i + n; j < len(r.items) && j < i+n+9; j++ {
		it := &r.items[j]
		if it.kind == aBreak || it.kind == aWord && r.v.turns[it.text] || it.kind == aWord && j > i+n && r.negatorAt(j) > 0 {
			return
		}
		if it.kind == aWord && it.text == "and" && j > i+n {
			return
		}
		if it.kind == aWord && j > i+n && within[it.text] && nouns[r.items[i].text] {
			return
		}
		it.negBy = i
	}
}

func (r *reading) unsureAt(i int) bool {
	for _, phrase := range r.v.unsure[r.items[i].text] {
		if r.says(i, phrase) {
			return true
		}
	}
	return false
}

// doubt marks the words after "if", "whether" or "not sure" as left open, to the end of the sentence part.
func (r *reading) doubt(i int) {
	for j := i; j < len(r.items) && j < i+14 && r.items[j].kind != aBreak; j++ {
		r.items[j].unsure = true
	}
}

// nouns are the words of negation that deny a thing and nothing of where it is: "no air on a sidewalk we salt"; within are the words that
// say where.
var (
	nouns  = set([]string{"instead", "rather", "without", "no"})
	within = set([]string{"on", "in", "for", "at", "under", "over", "with"})
)
