package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Problems with a number, as predicates for an Error.
const (
	noNumber  = "does not begin with a number"
	badComma  = "has a comma that does not part thousands"
	badPart   = "has a fraction that is not a proper one"
	tooLarge  = "is too large a number"
	wantPlain = "write a number such as 28, 3.25, 3 1/4 or 1,200"
)

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
