package quantity

import (
	"strings"
	"unicode/utf8"
)

// fraction is the value of a sign that stands for a fraction, 0 for any
// other rune.
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
