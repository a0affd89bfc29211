package words

// spelledAt reads a number in words: "eight", "twenty-four", "forty-five hundred", "four thousand", "three and a quarter",
// "half", "point four five".
func (v *vocabulary) spelledAt(ts []token, i int) (number, int) {
	if n, j := v.pointAt(ts, i); j > i {
		return n, j
	}
	if f, j := v.fractionAt(ts, i); j > i {
		if f >= 1 { // "three halves"
			return number{low: f, part: true, spelled: true}, j
		}
		return number{low: f, part: true, spelled: true, loose: j <= i+2 && (ts[i].text == "half" || ts[i].text == "quarter" || ts[i].text == "a")}, j
	}
	total, j := v.belowHundred(ts, i)
	if j == i && i < len(ts) && ts[i].text == "hundred" && !(i > 0 && ts[i-1].digits) {
		at := skipWord(ts, i+1, "and")
		if n, k := v.belowHundred(ts, at); k > at {
			return number{low: 100 + n, spelled: true}, k // "hundred and two out", "a hundred fifty"
		}
		if aHundred(ts, i) {
			return number{low: 100, spelled: true}, i + 1
		}
	}
	if j == i {
		return number{}, i
	}
	if n, k := v.pair(ts, i, j); k > j {
		return number{low: n, spelled: true}, k
	}
	n := number{low: total, spelled: true, loose: j == i+1 && total == 1}
	for j < len(ts) {
		k := skipHyphen(ts, j)
		if k >= len(ts) || ts[k].text != "hundred" && ts[k].text != "thousand" {
			break
		}
		n.loose = false
		if ts[k].text == "hundred" {
			n.low *= 100
		} else {
			n.low *= 1000
		}
		j = k + 1
		if rest, l := v.rest(ts, j, n.low); l > j {
			n.low, j = n.low+rest, l
		}
	}
	if f, k := v.andFraction(ts, j); k > j {
		n.low, n.part, n.loose, j = n.low+f, true, false, k
	} else if p, k := v.decimals(ts, j); k > j && n.low < 100 {
		n.low, n.part, n.decimal, n.loose, j = n.low+p, true, true, false, k
	} else if f, ok := sign1(ts, j); ok {
		n.low, n.part, n.loose, j = n.low+f, true, false, j+1
	}
	return n, j
}

// rest reads what follows "four thousand": "five hundred", "and fifty".
func (v *vocabulary) rest(ts []token, i int, above float64) (float64, int) {
	at := i
	if at < len(ts) && ts[at].text == "and" {
		at++
	}
	n, j := v.belowHundred(ts, at)
	if j == at || n < 2 {
		return 0, i
	}
	if j < len(ts) && ts[j].text == "hundred" {
		if above < 1000 {
			return 0, i
		}
		return n * 100, j + 1
	}
	if at > i && j < len(ts) && ts[j].text == "and" { // "four hundred and three and …" lists numbers
		return 0, i
	}
	return n, j
}

// belowHundred reads "eight", "twelve", "twenty", "twenty-four".
func (v *vocabulary) belowHundred(ts []token, i int) (float64, int) {
	if i >= len(ts) || !ts[i].letters {
		return 0, i
	}
	n, ok := v.numbers[ts[i].text]
	if !ok {
		return 0, i
	}
	if n >= 20 && n < 100 {
		k := skipHyphen(ts, i+1)
		if k < len(ts) {
			if m, ok := v.numbers[ts[k].text]; ok && m > 0 && m < 10 {
				return n + m, k + 1
			}
		}
	}
	return n, i + 1
}

// pointAt reads "point four five".
func (v *vocabulary) pointAt(ts []token, i int) (number, int) {
	if p, j := v.decimals(ts, i); j > i {
		return number{low: p, part: true, decimal: true, spelled: true}, j
	}
	return number{}, i
}

// decimals reads the part after the point in words: "point four five", "point five".
func (v *vocabulary) decimals(ts []token, i int) (float64, int) {
	if i+1 >= len(ts) || ts[i].text != "point" {
		return 0, i
	}
	value, scale, j := 0.0, 0.1, i+1
	for j < len(ts) {
		if ts[j].text == "-" && j > i+1 && j+1 < len(ts) && v.digitWord(ts[j+1].text) {
			j++ // "point four-five"
		}
		n, ok := v.numbers[ts[j].text]
		if ts[j].text == "oh" || ts[j].text == "o" || ts[j].text == "zero" {
			n, ok = 0, true
		}
		if !ok || n >= 100 {
			break
		}
		if n >= 10 { // "point forty five"
			n, j = v.belowHundred(ts, j)
			return value + n*scale/10, j
		}
		value += n * scale
		scale /= 10
		j++
	}
	if j == i+1 {
		return 0, i
	}
	return value, j
}

// digitWord says whether the word is a digit.
func (v *vocabulary) digitWord(word string) bool {
	n, ok := v.numbers[word]
	return ok && n < 10 || word == "oh"
}

// aHundred says whether "a hundred" at token i is a number and no way of saying many: a unit follows it, or it is what
// something is at.
func aHundred(ts []token, i int) bool {
	if text(ts, i-1) != "a" {
		return false
	}
	switch text(ts, i+1) {
	case "degree", "degrees", "deg", "f", "out", "outside", "foot", "feet", "ft", "pounds", "lb", "lbs", "gallons", "square", "psi", "minutes":
		return true
	case "", ".", ",", ";", "today", "now":
		switch text(ts, i-2) {
		case "at", "is", "was", "hit", "hits", "it's", "near", "nearly", "about", "around", "over", "reads", "read", "says", "reading":
			return true
		}
	}
	return false
}
