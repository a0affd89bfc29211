package quantity

import (
	"math/bits"
	"strings"
	"sync"
)

// unknownUnit is the error for the unit s of a text, with the nearest known
// spelling where there is one near.
func unknownUnit(text, s string) *Error {
	e := &Error{Text: text, Problem: `has the unknown unit "` + clip(s) + `"`, Kind: UnknownUnit}
	if text == s {
		e.Problem = "is no known unit"
	}
	head, _, more := strings.Cut(s, " ")
	switch {
	case more && resolve(head) != nil:
		e.Problem = `has more than a unit after the number, "` + clip(s) + `"`
		e.Want = `write only "` + head + `"`
	case wanting(s) != "":
		e.Want = `write for example "` + wanting(s) + `"`
	default:
		if e.Want = nearest(s); e.Want != "" {
			e.Want = "did you mean " + e.Want + "?"
		} else {
			e.Want = "write a unit such as in, ft, yd3, lb, psi, F or their metric counterparts"
		}
	}
	return e
}

// wanting gives a unit that begins with s, where s is a word of units that is
// no unit alone: "bags/yd3" for "sacks".
func wanting(s string) string {
	t := table()
	a := t.atoms[s]
	if a == "" || t.keys[a] != nil {
		return ""
	}
	for _, u := range t.units {
		if strings.HasPrefix(u.symbol, a) {
			return u.symbol
		}
	}
	return ""
}

// candidate is a spelling that can be suggested, with the letters in it.
type candidate struct {
	text    string
	letters uint32
}

var candidates = sync.OnceValue(func() []candidate {
	var list []candidate
	t := table()
	for _, u := range t.units {
		if u.symbol != "" && u.symbol != "1" {
			list = append(list, candidate{u.symbol, letters(u.symbol)})
		}
	}
	for _, a := range atoms {
		for c := range strings.FieldsSeq(a[1]) {
			if t.keys[a[0]] != nil && t.exact[c] == nil {
				list = append(list, candidate{c, letters(c)})
			}
		}
	}
	return list
})

// letters is the set of bytes in s, folded into 32.
func letters(s string) (set uint32) {
	for i := range len(s) {
		set |= 1 << (s[i] & 31)
	}
	return set
}

// nearest quotes the known spelling that differs least from s, or those that
// differ in capitals only; "" where none is near.
func nearest(s string) string {
	if len(s) > 20 || len(s) < 2 {
		return ""
	}
	var last *unit
	best, folded, limit, set := "", "", 1+min(len(s)/4, 2), letters(s)
	for _, c := range candidates() {
		if bits.OnesCount32(c.letters^set) > 2*limit {
			continue
		}
		if u := resolve(c.text); strings.EqualFold(c.text, s) && u != last {
			last = u
			if folded != "" {
				folded += " or "
			}
			folded += `"` + c.text + `"`
		}
		if d := distance(s, c.text, limit); d < limit || d == limit && best == "" {
			best, limit = c.text, d
		}
	}
	if folded != "" || best == "" {
		return folded
	}
	return `"` + best + `"`
}

// distance counts the bytes to insert, drop or replace between a and b; a
// number above limit where it is more than limit. Both are short.
func distance(a, b string, limit int) int {
	if len(a)-len(b) > limit || len(b)-len(a) > limit || len(b) > 31 {
		return limit + 1
	}
	var row [32]int
	for j := range len(b) + 1 {
		row[j] = j
	}
	for i := range len(a) {
		diag, least := row[0], i+1
		row[0] = i + 1
		for j := range len(b) {
			cost := 1
			if a[i] == b[j] {
				cost = 0
			}
			diag, row[j+1] = row[j+1], min(diag+cost, row[j]+1, row[j+1]+1)
			least = min(least, row[j+1])
		}
		if least > limit {
			return limit + 1
		}
	}
	return row[len(b)]
}
