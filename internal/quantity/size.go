package quantity

import (
	"strings"
	"unicode/utf8"
)

// Size reads the two or three lengths of a thing: "10 ft x 12 ft", "10x12
// ft", "10 ft by 12 ft by 4 in", "24'x30'", "3 m × 4 m". Each keeps its own
// unit; a missing unit is taken from the next length that has one.
//
// The error is an [*Error]: MissingUnit where no later length has a unit,
// WrongKind for a unit that is no length, NotANumber where there are not two
// or three numbers or one is not above 0, UnknownUnit as from Parse.
func Size(text string) ([]Quantity, error) {
	var parts []string
	if s := plain(text); len(s) <= longest {
		parts = split(s)
	}
	if len(parts) < 2 || len(parts) > 3 {
		return nil, notNumber(text, "is not a size of two or three lengths", "write for example 10 ft x 12 ft")
	}
	length := resolve("ft")
	out := make([]Quantity, len(parts))
	next := ""
	for i := len(parts) - 1; i >= 0; i-- {
		q, err := Parse(parts[i])
		if err != nil {
			return nil, err
		}
		if q.Value <= 0 {
			return nil, notNumber(text, "has a length that is not above 0", "write for example 10 ft x 12 ft")
		}
		if q.Unit == "" {
			if q.Unit = next; next == "" {
				return nil, missingUnit(strings.TrimSpace(parts[i]), q.Value, length)
			}
		}
		if u := resolve(q.Unit); u.kind != Length {
			return nil, wrongKind(strings.TrimSpace(parts[i]), u, length)
		}
		out[i], next = q, q.Unit
	}
	return out, nil
}

// split parts a size at its "x", "×", "*" or "by".
func split(s string) []string {
	var parts []string
	from := 0
	for i := 0; i < len(s); {
		n := separator(s, i)
		if n > 0 {
			parts = append(parts, s[from:i])
			from = i + n
			i = from
			continue
		}
		_, size := utf8.DecodeRuneInString(s[i:])
		i += size
	}
	return append(parts, s[from:])
}

// separator is the length of the separator of lengths at s[i], 0 where there
// is none: it must follow something and come before a number.
func separator(s string, i int) int {
	n := 0
	switch {
	case s[i] == 'x' || s[i] == 'X' || s[i] == '*':
		n = 1
	case strings.HasPrefix(s[i:], "×"):
		n = len("×")
	case len(s) > i+3 && i > 0 && s[i-1] == ' ' && strings.EqualFold(s[i:i+3], "by "):
		n = len("by ")
	default:
		return 0
	}
	if _, p := power(s[i:]); p > 0 || i == 0 {
		return 0
	}
	if _, _, problem := scan(strings.TrimLeft(s[i+n:], " ")); problem != "" {
		return 0
	}
	return n
}
