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
		from := q + 1
		for r.items[from].kind == aWord && !r.opening(from) { // "4 inch slump, make it five": what it is stays
			from++
		}
		if from == q+1 || r.items[from].kind != aBreak {
			from, first.end = q+1, next.end
		}
		for i := from; i <= k; i++ {
			at := r.items[i].start
			r.items[i] = item{kind: aWord, text: "rather", filler: true, start: at, end: at, negBy: -1}
		}
	}
}

// correctedAt is the item of the number that corrects the one at item q; -1 where none does.
func (r *reading) correctedAt(q int) int {
	paused, corrected, made, what := false, false, false, false
	for i := q + 1; i < len(r.items) && i < q+8; i++ {
		it := &r.items[i]
		switch {
		case it.kind == aQuantity:
			if corrected && paused && (made || !what) && !(made && r.otherwise(q, i)) {
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
		case !paused && i <= q+2 && !correcting[it.text]:
			what = true
		default:
			return -1
		}
	}
	return -1
}

// otherwise says whether the word behind the number at item i makes it another thing than the one at item q: "make it 4 slump" takes
// back no six sacks and no five inches.
func (r *reading) otherwise(q, i int) bool {
	if i+1 >= len(r.items) || r.items[i+1].kind != aWord || r.items[i+1].filler {
		return false
	}
	return r.items[q+1].kind != aWord || r.items[q+1].stem != r.items[i+1].stem
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
