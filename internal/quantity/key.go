package quantity

import "unicode/utf8"

// atom is one factor of a unit: a multiplier such as the 100 of "/100 kg", a
// word, and an exponent.
type atom struct {
	mul, word string
	exp       byte // '2', '3' or 0
}

// key is a unit's spelling taken apart: what stands above and what stands
// below the stroke.
type key struct {
	num, den   [6]atom
	nnum, nden int
	below      bool   // a stroke has been read
	open       bool   // a stroke, multiplier or qualifier waits for its word
	mul        string // multiplier for the next word
	exp        byte   // "square" or "cubic" for the next word
	qualifier  string // "fl", "imp", "metric", "short", "long" for the next word
}

// add puts a word into the key and tells whether it fits.
func (k *key) add(word string) bool {
	if k.qualifier != "" {
		word = qualified(k.qualifier, word)
	}
	if word == "" || word == "?" {
		return false
	}
	a := atom{k.mul, word, k.exp}
	k.mul, k.exp, k.qualifier, k.open = "", 0, "", false
	if k.below {
		if k.nden == len(k.den) {
			return false
		}
		k.den[k.nden], k.nden = a, k.nden+1
		return true
	}
	if k.nnum == len(k.num) {
		return false
	}
	k.num[k.nnum], k.nnum = a, k.nnum+1
	return true
}

// last is the word read last, nil where there is none.
func (k *key) last() *atom {
	switch {
	case k.open || k.below && k.nden == 0:
		return nil
	case k.below:
		return &k.den[k.nden-1]
	case k.nnum > 0:
		return &k.num[k.nnum-1]
	}
	return nil
}

// power gives the word read last an exponent and tells whether it may.
func (k *key) power(e byte) bool {
	a := k.last()
	if a == nil || a.exp != 0 || e != '2' && e != '3' {
		return false
	}
	a.exp = e
	return true
}

// bytes writes the key, factors sorted, so that "kg/(h·m²)" and "kg/m2/h"
// come out alike.
func (k *key) bytes(buf []byte) []byte {
	sortAtoms(k.num[:k.nnum])
	sortAtoms(k.den[:k.nden])
	for i, a := range k.num[:k.nnum] {
		if i > 0 {
			buf = append(buf, '*')
		}
		buf = a.bytes(buf)
	}
	for _, a := range k.den[:k.nden] {
		buf = a.bytes(append(buf, '/'))
	}
	return buf
}

func (a atom) bytes(buf []byte) []byte {
	buf = append(append(buf, a.mul...), a.word...)
	if a.exp != 0 {
		buf = append(buf, a.exp)
	}
	return buf
}

func sortAtoms(s []atom) {
	less := func(a, b atom) bool {
		if a.word != b.word {
			return a.word < b.word
		}
		return a.exp < b.exp
	}
	for i := range s {
		for j := i; j > 0 && less(s[j], s[j-1]); j-- {
			s[j], s[j-1] = s[j-1], s[j]
		}
	}
}

// qualified joins a qualifier to its word; "" where the two do not go
// together.
func qualified(q, word string) string {
	switch q + " " + word {
	case "fl oz":
		return "floz"
	case "imp gal":
		return "impgal"
	case "metric ton":
		return "t"
	case "short ton":
		return "ton"
	case "long ton":
		return "longton"
	}
	return ""
}

// isLetter tells whether r can be part of a unit's word.
func isLetter(r rune) bool {
	return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' ||
		r == '\u00b5' || r == '\u03bc' || r == 'ε' || r == '\u03a9' || r == '\u2126'
}

// word gives the run of letters that s begins with.
func word(s string) string {
	for i, r := range s {
		if !isLetter(r) {
			return s[:i]
		}
	}
	return s
}

// runeAt decodes the rune at s[i].
func runeAt(s string, i int) (rune, int) {
	if s[i] < utf8.RuneSelf {
		return rune(s[i]), 1
	}
	return utf8.DecodeRuneInString(s[i:])
}
