package words

import (
	"strconv"
	"strings"
)

// number is what a run of tokens says: one value, or a range when low and high differ.
type number struct {
	low, high float64
	part      bool // said with a fraction or decimals
	decimal   bool // said with a decimal point
	spelled   bool // said in words
	loose     bool // only a word such as "one" or "a", which need not be a number
}

func (n number) single() bool { return n.low == n.high }

// numberAt reads the number that begins at token i: digits, a fraction, a mixed number, words, or a range of two. It gives
// the token after it, and i itself when there is none.
func (v *vocabulary) numberAt(ts []token, i int) (number, int) {
	n, j := v.oneNumber(ts, i)
	if j == i {
		return n, i
	}
	if k := v.rangeMark(ts, i, j); k > j {
		if m, l := v.oneNumber(ts, k); l > k && m.low > n.low && rangeLike(n, m) {
			n.high, n.part, n.loose = m.low, n.part || m.part, false
			return n, l
		}
	}
	return n, j
}

// rangeMark is where the second number of a range would begin: after a hyphen, "to" or "or"; "and" only after "between".
func (v *vocabulary) rangeMark(ts []token, from, i int) int {
	if i+1 >= len(ts) || from > 0 && ts[from-1].text == "from" {
		return i
	}
	switch ts[i].text {
	case "-", "–", "to", "or":
		return i + 1
	case "and":
		if from > 0 && ts[from-1].text == "between" {
			return i + 1
		}
	}
	return i
}

// rangeLike keeps "4 to 570" from being a range: the ends of a range are of one size.
func rangeLike(low, high number) bool { return low.low >= 0 && high.low <= 4*low.low+4 }

// oneNumber reads one number without a range.
func (v *vocabulary) oneNumber(ts []token, i int) (number, int) {
	if i >= len(ts) {
		return number{}, i
	}
	sign, at := 1.0, i
	if v.minus(ts, i) {
		sign, at = -1, i+1
	}
	n, j := v.digitsAt(ts, at)
	if j == at {
		n, j = v.spelledAt(ts, at)
	}
	if j == at {
		return number{}, i
	}
	n.low *= sign
	n.high = n.low
	return n, j
}

// minus says whether token i is the sign of the number after it, and not a hyphen between two words.
func (v *vocabulary) minus(ts []token, i int) bool {
	switch ts[i].text {
	case "minus", "negative":
		return true
	case "-":
		return !ts[i].glued && i+1 < len(ts) && ts[i+1].digits && ts[i+1].glued && (i == 0 || !ts[i-1].digits)
	}
	return false
}

// digitsAt reads a number in digits: "4", "1,800", "0.45", "3/8", "8 1/2", "8-1/2", "8½", "4k", "18 480".
func (v *vocabulary) digitsAt(ts []token, i int) (number, int) {
	if f, ok := sign1(ts, i); ok {
		return number{low: f, part: true}, i + 1
	}
	if i >= len(ts) || !ts[i].digits {
		return number{}, i
	}
	text := ts[i].text
	value, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return number{}, i
	}
	n := number{low: value, part: strings.Contains(text, "."), decimal: strings.Contains(text, ".")}
	if f, j := stroke(ts, i); j > i {
		return number{low: f, part: true}, j
	}
	if !n.part {
		if f, j := v.fractionAfter(ts, i+1); j > i+1 {
			return number{low: value + f, part: true}, j
		}
		if j := thousands(ts, i); j > i+1 {
			low, _ := strconv.ParseFloat(text+ts[i+1].text, 64)
			return number{low: low}, j
		}
	}
	if i+1 < len(ts) && (ts[i+1].text == "k" && ts[i+1].glued || ts[i+1].text == "thousand" || ts[i+1].text == "grand") {
		n.low *= 1000
		return n, i + 2
	}
	if i+1 < len(ts) && ts[i+1].text == "hundred" {
		n.low *= 100
		return n, i + 2
	}
	return n, i + 1
}

// thousands joins "18 480", digits parted by a blank in the metric way, when a unit of mass or length follows.
func thousands(ts []token, i int) int {
	if i+2 < len(ts) && len(ts[i].text) <= 3 && ts[i+1].digits && len(ts[i+1].text) == 3 && !ts[i+1].glued {
		switch ts[i+2].text {
		case "kg", "mm", "l", "m2", "lb", "lbs", "kilos", "sq", "ft2", "pounds":
			return i + 2
		}
	}
	return i
}
