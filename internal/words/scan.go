package words

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// token is one piece of the text as it is written: a run of letters, a run of digits, or one other sign.
type token struct {
	text       string // in lower case
	digits     bool
	letters    bool
	start, end int  // bytes in the text
	glued      bool // nothing stands between it and the token before
	capital    bool // begins with a capital letter
	line       bool // a new line begins before it
}

// longest is the number of bytes read; more than ten pages of talk is no description of a job.
const longest = 1 << 16

// scan takes a text apart into tokens.
func scan(text string) []token {
	tokens := make([]token, 0, len(text)/4)
	end, lines := 0, 0
	for i := 0; i < len(text); {
		r, n := utf8.DecodeRuneInString(text[i:])
		if unicode.IsSpace(r) || r == '\u200b' || r == '\ufeff' {
			if r == '\n' {
				lines++
			}
			i += n
			continue
		}
		t := token{start: i, glued: i == end && i > 0, line: lines > 0, capital: unicode.IsUpper(r)}
		switch {
		case isDigit(text, i) || r == '.' && isDigit(text, i+1) && (i == 0 || !isDigit(text, i-1)):
			n = digitRun(text[i:])
			t.digits = true
			t.text = strings.ReplaceAll(text[i:i+n], ",", "")
		case unicode.IsLetter(r):
			n = letterRun(text[i:])
			t.letters = true
			t.text = strings.ToLower(text[i : i+n])
			if strings.Contains(t.text, "’") {
				t.text = strings.ReplaceAll(t.text, "’", "'")
			}
		default:
			t.text = sign(r, text[i:i+n])
		}
		t.end = i + n
		tokens = append(tokens, t)
		i, end, lines = i+n, i+n, 0
	}
	return tokens
}

// sign gives the plain form of the many hyphens, quotes and strokes of typeset text.
func sign(r rune, text string) string {
	switch r {
	case '\u2010', '\u2011', '\u2212':
		return "-"
	case '–', '—':
		return "–"
	case '’', '‘', '′', '`':
		return "'"
	case '“', '”', '″':
		return `"`
	case '×':
		return "x"
	case '⁄':
		return "/"
	case 'º', '˚':
		return "°"
	}
	return text
}

func isDigit(s string, i int) bool { return i >= 0 && i < len(s) && s[i] >= '0' && s[i] <= '9' }

// digitRun is the length of the number at the start of s: digits, commas between thousands, one decimal point.
func digitRun(s string) int {
	n, point := 0, false
	for n < len(s) {
		switch {
		case isDigit(s, n):
		case s[n] == ',' && !point && n > 0 && n <= 3 && threeDigits(s[n+1:]):
		case s[n] == ',' && !point && n > 3 && threeDigits(s[n+1:]) && strings.Contains(s[:n], ","):
		case s[n] == '.' && !point && isDigit(s, n+1):
			point = true
		default:
			return n
		}
		n++
	}
	return n
}

func threeDigits(s string) bool {
	return isDigit(s, 0) && isDigit(s, 1) && isDigit(s, 2) && !isDigit(s, 3)
}

// letterRun is the length of the word at the start of s, with an apostrophe inside it ("don't") and the exponent of a unit.
func letterRun(s string) int {
	n := 0
	for n < len(s) {
		r, size := utf8.DecodeRuneInString(s[n:])
		if r == '\'' || r == '’' {
			next, _ := utf8.DecodeRuneInString(s[n+size:])
			if n > 0 && unicode.IsLetter(next) {
				n += size
				continue
			}
			return n
		}
		if !unicode.IsLetter(r) && !unicode.Is(unicode.M, r) {
			break
		}
		n += size
	}
	switch strings.ToLower(s[:n]) {
	case "yd", "yds", "ft", "m", "in", "cm", "mm":
		if strings.HasPrefix(s[n:], "²") || strings.HasPrefix(s[n:], "³") {
			return n + 2
		}
		if n < len(s) && (s[n] == '2' || s[n] == '3') && !isDigit(s, n+1) {
			return n + 1
		}
	}
	return n
}
