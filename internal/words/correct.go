package words

// corrections puts the number that somebody corrects himself to in the place of the one he said first: "3,500... no, 4,000", "four inches,
// make that five", "twelve, sorry, thirteen yards".
func (r *reading) corrections() {
	for q := range r.items {
		first := &r.items[q]
		if first.kind != aQuantity || first.glue {
			continue
		}
		k := r.correctedAt(q)
		if k < 0 {
			continue
		}
		next := &r.items[k]
		if len(first.units) > 0 && len(next.units) > 0 && first.units[0] != next.units[0] || next.glue {
			continue
		}
		if next.num.low > 5*first.num.low || first.num.low > 5*next.num.low {
			continue
		}
		first.num = next.num
		if len(next.units) > 0 {
			first.units = next.units
		}
		first.end = next.end
		for i := q + 1; i <= k; i++ {
			at := r.items[i].start
			r.items[i] = item{kind: aWord, text: "rather", filler: true, start: at, end: at, negBy: -1}
		}
	}
}

// correctedAt is the item of the number that corrects the one at item q; -1 where none does.
func (r *reading) correctedAt(q int) int {
	paused, corrected, made := false, false, false
	for i := q + 1; i < len(r.items) && i < q+8; i++ {
		it := &r.items[i]
		switch {
		case it.kind == aQuantity:
			if corrected && paused && !(made && len(it.units) == 0 && r.named(i)) {
				return i
			}
			return -1
		case it.kind == aBreak && it.pause < pauseParagraph:
			paused = true
		case it.kind != aWord:
			return -1
		case paused && correcting[it.text]:
			corrected = true
		case corrected && (it.filler || it.text == "make" || it.text == "it"):
		case r.opening(i):
			corrected, made = true, true
		case paused && (it.text == "make" || it.text == "i" || it.text == "my" || it.text == "hang" || it.text == "hold" || it.text == "excuse"):
		case paused && musing[it.text]:
		default:
			return -1
		}
	}
	return -1
}

// named says whether a word tells what the number at item i is: "make it 4 slump" is another thing than the six sacks before it.
func (r *reading) named(i int) bool {
	return i+1 < len(r.items) && r.items[i+1].kind == aWord && !r.items[i+1].filler
}

// correcting are the words by which people take back what they said.
var correcting = set([]string{"no", "nope", "sorry", "scratch", "correction", "rather", "mistake", "mean", "wait", "oops", "actually", "pardon"})

// musing are the words with which people think aloud before they take a number back.
var musing = set([]string{"eh", "uh", "um", "er", "hmm", "hm", "ah", "oh", "well", "nah", "hell", "heck", "shoot", "ok", "okay", "better", "please", "say", "let", "lets", "let's", "you", "know", "what", "maybe"})

// opening says whether "make that", "make it" or "call it" begins at item i.
func (r *reading) opening(i int) bool {
	if i+1 >= len(r.items) || r.items[i+1].kind != aWord {
		return false
	}
	a, b := r.items[i].text, r.items[i+1].text
	return a == "make" && (b == "that" || b == "it")
}
