package words

import (
	"strconv"
	"unicode/utf8"
)

// stroke reads "3/8" at token i. Only the fractions that people use count: "11/18" is a day and "10/10" a mesh.
func stroke(ts []token, i int) (float64, int) {
	if i+2 >= len(ts) || !ts[i].digits || ts[i+1].text != "/" || !ts[i+2].digits || !ts[i+1].glued || !ts[i+2].glued {
		return 0, i
	}
	a, err1 := strconv.Atoi(ts[i].text)
	b, err2 := strconv.Atoi(ts[i+2].text)
	if err1 != nil || err2 != nil || a == 0 || a >= b {
		return 0, i
	}
	switch b {
	case 2, 3, 4, 5, 6, 8, 10, 16, 32, 64:
		return float64(a) / float64(b), i + 3
	}
	return 0, i
}

// fractionAfter reads the fraction that follows a whole number: "1/2", "-1/2", "½", "and a half", "and a quarter".
func (v *vocabulary) fractionAfter(ts []token, i int) (float64, int) {
	at := i
	if at < len(ts) && ts[at].text == "-" && at+1 < len(ts) {
		at++
	}
	if f, ok := sign1(ts, at); ok {
		return f, at + 1
	}
	if f, j := stroke(ts, at); j > at {
		return f, j
	}
	return v.andFraction(ts, i)
}

// andFraction reads "and a half", "-and-three-quarters", "and 1/2".
func (v *vocabulary) andFraction(ts []token, i int) (float64, int) {
	at := skipHyphen(ts, i)
	if at >= len(ts) || ts[at].text != "and" && ts[at].text != "&" && ts[at].text != "n" {
		return 0, i
	}
	at = skipHyphen(ts, at+1)
	if f, j := v.fractionAt(ts, at); j > at && f < 1 {
		return f, j
	}
	return 0, i
}

// fractionAt reads a fraction alone: "a half", "three quarters", "three-eighths", "one third", "3/8".
func (v *vocabulary) fractionAt(ts []token, i int) (float64, int) {
	if f, j := stroke(ts, i); j > i {
		return f, j
	}
	if i >= len(ts) {
		return 0, i
	}
	count, at := 1.0, i
	if n, ok := v.numbers[ts[i].text]; ok && n <= 20 {
		count, at = n, skipHyphen(ts, i+1)
	} else if ts[i].text == "a" || ts[i].text == "an" {
		at = skipHyphen(ts, i+1)
	}
	if at >= len(ts) {
		return 0, i
	}
	f, ok := v.fractions[ts[at].text]
	if !ok || at == i && f.ordinal {
		return 0, i
	}
	return count * f.value, at + 1
}

func skipHyphen(ts []token, i int) int {
	if i < len(ts) && ts[i].text == "-" {
		return i + 1
	}
	return i
}

// sign1 reads a sign such as ½.
func sign1(ts []token, i int) (float64, bool) {
	if i >= len(ts) {
		return 0, false
	}
	r, n := utf8.DecodeRuneInString(ts[i].text)
	if n != len(ts[i].text) {
		return 0, false
	}
	f, ok := signs[r]
	return f, ok
}

var signs = map[rune]float64{'½': 1. / 2, '¼': 1. / 4, '¾': 3. / 4, '⅛': 1. / 8, '⅜': 3. / 8, '⅝': 5. / 8, '⅞': 7. / 8, '⅓': 1. / 3, '⅔': 2. / 3}
