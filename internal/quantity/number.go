package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Problems with a number, as predicates for an Error.
const (
	noNumber  = "does not begin with a number"
	badComma  = "has a comma that does not part thousands"
	badPart   = "has a fraction that is not a proper one"
	tooLarge  = "is too large a number"
	wantPlain = "write a number such as 28, 3.25, 3 1/4 or 1,200"
)

// fractions are the signs that stand for a fraction.
func fraction(r rune) float64 {
	switch r {
	case '¼':
		return 1.0 / 4
	case '½':
		return 1.0 / 2
	case '¾':
		return 3.0 / 4
	case '⅛':
		return 1.0 / 8
	case '⅜':
		return 3.0 / 8
	case '⅝':
		return 5.0 / 8
	case '⅞':
		return 7.0 / 8
	case '⅓':
		return 1.0 / 3
	case '⅔':
		return 2.0 / 3
	case '⅕':
		return 1.0 / 5
	case '⅙':
		return 1.0 / 6
	case '⅚':
		return 5.0 / 6
	case '⅒':
		return 1.0 / 10
	}
	return 0
}

// scan reads the number that s begins with: a sign, a decimal with thousands
// commas or an exponent, a fraction, or a mixed number ("3 1/4", "3-1/4",
// "3¼"). It gives the number and how many bytes it takes; problem is not ""
// where there is no usable number.
func scan(s string) (v float64, n int, problem string) {
	sign := 1.0
	switch {
	case strings.HasPrefix(s, "-"):
		sign, n = -1, 1
	case strings.HasPrefix(s, "+"):
		n = 1
	case strings.HasPrefix(s, "−"):
		sign, n = -1, len("−")
	}
	v, m, isWhole, problem := decimal(s[n:])
	if problem != "" {
		return 0, 0, problem
	}
	if isWhole {
		f, k, problem := part(s[n:], v, m)
		if problem != "" {
			return 0, 0, problem
		}
		v, m = f, k
	}
	if m == 0 {
		return 0, 0, noNumber
	}
	n += m
	p, m := power(s[n:])
	v *= sign * p
	if math.IsInf(v, 0) || math.IsNaN(v) {
		return 0, 0, tooLarge
	}
	if v == 0 {
		v = 0 // no "-0"
	}
	return v, n + m, ""
}

// decimal reads the digits s begins with. whole is true where they have
// neither a point nor an exponent; no digits at all are the whole number 0 of
// length 0.
func decimal(s string) (v float64, n int, whole bool, problem string) {
	var buf [40]byte
	b := buf[:0]
	group := -1 // digits since the last comma
	for ; n < len(s); n++ {
		c := s[n]
		if c >= '0' && c <= '9' {
			b = append(b, c)
			if group >= 0 {
				group++
			}
			continue
		}
		if c != ',' || n+1 == len(s) || s[n+1] < '0' || s[n+1] > '9' {
			break
		}
		if n == 0 || group < 0 && (n > 3 || s[0] == '0') || group >= 0 && group != 3 {
			return 0, 0, false, badComma
		}
		group = 0
	}
	if group >= 0 && group != 3 {
		return 0, 0, false, badComma
	}
	whole = true
	if n < len(s) && s[n] == '.' && (len(b) > 0 || n+1 < len(s) && s[n+1] >= '0' && s[n+1] <= '9') {
		whole = false
		for n++; ; n++ {
			b = append(b, s[n-1])
			if n == len(s) || s[n] < '0' || s[n] > '9' {
				break
			}
		}
	}
	if e := exponent(s[n:]); e > 0 && len(b) > 0 {
		whole = false
		b = append(b, s[n:n+e]...)
		n += e
	}
	if len(b) == 0 {
		return 0, 0, true, ""
	}
	v, err := strconv.ParseFloat(string(b), 64)
	if err != nil {
		return 0, 0, false, tooLarge
	}
	return v, n, whole, ""
}

// exponent is the length of an exponent ("e3", "E-2") at the start of s.
func exponent(s string) int {
	if len(s) < 2 || s[0]|0x20 != 'e' {
		return 0
	}
	n := 1
	if s[1] == '+' || s[1] == '-' {
		n = 2
	}
	from := n
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	if n == from {
		return 0
	}
	return n
}

// part goes on after the whole number v, which takes n bytes of s (none
// where n is 0): with a fraction of it, or with the fraction of a mixed
// number.
func part(s string, v float64, n int) (float64, int, string) {
	if n > 0 && stroke(s[n:]) > 0 {
		k := stroke(s[n:])
		d, m := integer(s[n+k:])
		if m == 0 {
			return v, n, "" // the stroke belongs to a unit
		}
		if d == 0 {
			return 0, 0, badPart
		}
		return v / d, n + k + m, ""
	}
	at := n
	for n > 0 && at < len(s) && s[at] == ' ' {
		at++
	}
	if n > 0 && at == n && at < len(s) && s[at] == '-' {
		at++
	}
	if at == len(s) {
		return v, n, ""
	}
	if r, size := utf8.DecodeRuneInString(s[at:]); fraction(r) > 0 {
		return v + fraction(r), at + size, ""
	}
	if at == n {
		return v, n, ""
	}
	a, m := integer(s[at:])
	if m == 0 {
		return v, n, ""
	}
	k := stroke(s[at+m:])
	d, l := integer(s[at+m+k:])
	if k == 0 || l == 0 {
		return v, n, ""
	}
	if d == 0 || a >= d {
		return 0, 0, badPart
	}
	return v + a/d, at + m + k + l, ""
}

// stroke is the length of a fraction stroke at the start of s.
func stroke(s string) int {
	switch {
	case strings.HasPrefix(s, "/"):
		return 1
	case strings.HasPrefix(s, "⁄"):
		return len("⁄")
	}
	return 0
}

// integer reads up to six digits at the start of s.
func integer(s string) (v float64, n int) {
	for n < len(s) && n < 6 && s[n] >= '0' && s[n] <= '9' {
		v = v*10 + float64(s[n]-'0')
		n++
	}
	return v, n
}

// power reads " x 10^6" or " × 10⁻⁶" at the start of s: the power of ten and
// its length, 1 and 0 where there is none.
func power(s string) (float64, int) {
	t := strings.TrimLeft(s, " ")
	switch {
	case strings.HasPrefix(t, "×"):
		t = t[len("×"):]
	case strings.HasPrefix(t, "x"), strings.HasPrefix(t, "*"):
		t = t[1:]
	default:
		return 1, 0
	}
	t, ok := strings.CutPrefix(strings.TrimLeft(t, " "), "10")
	if !ok {
		return 1, 0
	}
	caret := strings.HasPrefix(t, "^")
	if caret {
		t = t[1:]
	}
	neg, e, n := false, 0, 0
	for i, r := range t {
		d := strings.IndexRune("0123456789", r)
		if !caret {
			d = superscript(r)
		}
		if i == 0 && (r == '⁻' && !caret || (r == '-' || r == '−') && caret) {
			neg = true
			continue
		}
		if d < 0 || n == 2 {
			t = t[i:]
			break
		}
		if e, n = 10*e+d, n+1; i+utf8.RuneLen(r) == len(t) {
			t = ""
			break
		}
	}
	if n == 0 {
		return 1, 0
	}
	if neg {
		e = -e
	}
	return math.Pow10(e), len(s) - len(t)
}

// superscript is the digit of a raised digit, -1 for another rune.
func superscript(r rune) int {
	for d, c := range [...]rune{'⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'} {
		if r == c {
			return d
		}
	}
	return -1
}
