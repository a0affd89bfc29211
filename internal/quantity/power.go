package quantity

import (
	"math"
	"strings"
	"unicode/utf8"
)

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
