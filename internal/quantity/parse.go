package quantity

import (
	"strconv"
	"strings"
)

// Parse reads a number with its unit: "3 1/4 in", "9 cubic yards", "28 F",
// "1,200 psi", "3' 6\"", "2 h 30 min", "R-10", "$150/yd3", "#5", "W2.9". A number alone is
// a plain ratio with the unit "". Two parts of one kind, the larger unit
// first, add up in the unit of the first ("3 ft 6 in" is 3.5 ft).
//
// The error is an [*Error]: NotANumber for an empty text, no number, a range
// or two numbers, UnknownUnit for a unit that is not known or for anything
// after it.
func Parse(text string) (Quantity, error) {
	s := plain(text)
	if s == "" {
		return Quantity{}, notNumber(text, "is empty", wantPlain)
	}
	if len(s) > longest {
		return Quantity{}, notNumber(text, "is too long for a quantity", wantPlain)
	}
	if q, ok, err := prefixed(text, s); ok {
		return q, err
	}
	v, n, problem := scan(s)
	if problem != "" {
		return Quantity{}, notNumber(text, problem, wantPlain)
	}
	rest := strings.TrimLeft(s[n:], " ")
	if rest == "" {
		return Quantity{v, ""}, nil
	}
	if u := resolve(hyphen(rest)); u != nil {
		return Quantity{v, u.symbol}, nil
	}
	if q, ok := compound(v, rest); ok {
		return q, nil
	}
	if another(rest) {
		return Quantity{}, notNumber(text, "holds more than one number", "write one number and its unit")
	}
	return Quantity{}, unknownUnit(text, rest)
}

// longest is the length in bytes up to which a text is read.
const longest = 256

// ParseAs reads text as Parse does and converts it to unit. A number alone is
// accepted only where unit is "" or a unit of count; a percentage is accepted
// for "" (45 % is 0.45), but no bare number for "%". Where a spelling has two
// meanings ("20 F", "50 lb/ft2"), the one of the wanted kind is taken.
//
// The error is an [*Error] as from Parse, or MissingUnit for a number alone,
// WrongKind for a unit of another kind, UnknownUnit where unit itself is not
// known.
func ParseAs(text, unit string) (Quantity, error) {
	want, err := mustKnow(unit)
	if err != nil {
		return Quantity{}, err
	}
	q, err := Parse(text)
	if err != nil {
		return Quantity{}, err
	}
	return as(text, q, want)
}

// Of gives a number with its unit in another unit, as ParseAs does where both stand in one text.
func Of(value float64, unit, want string) (Quantity, error) {
	if from, to := resolve(unit), resolve(want); from != nil && to != nil && from.symbol != "" && convertible(from, to) {
		return Quantity{value, from.symbol}.In(to.symbol)
	}
	return ParseAs(strings.TrimSpace(strconv.FormatFloat(value, 'g', -1, 64)+" "+unit), want)
}

func as(text string, q Quantity, want *unit) (Quantity, error) {
	have := resolve(q.Unit)
	if have.symbol == "" && have != want {
		if want.kind == Count {
			return Quantity{q.Value, want.symbol}, nil
		}
		return Quantity{}, missingUnit(text, q.Value, want)
	}
	if !convertible(have, want) {
		for _, t := range twins[have.symbol] {
			if u := resolve(t); convertible(u, want) {
				return Quantity{q.Value, t}.In(want.symbol)
			}
		}
		return Quantity{}, wrongKind(text, have, want)
	}
	return q.In(want.symbol)
}

// plain trims s and turns the many blanks and hyphens of typeset text into
// plain ones.
func plain(s string) string {
	for i := range len(s) {
		if s[i] >= 0x80 || s[i] == '\t' || s[i] == '\n' || s[i] == '\r' {
			return strings.Trim(blanks.Replace(s), " ")
		}
	}
	return strings.Trim(s, " ")
}

var blanks = strings.NewReplacer("\t", " ", "\n", " ", "\r", " ",
	"\u00a0", " ", "\u2007", " ", "\u2009", " ", "\u200a", " ", "\u202f", " ",
	"\u2010", "-", "\u2011", "-", "\ufeff", "", "\u200b", "")

// hyphen drops the hyphen between a number and its unit ("28-day").
func hyphen(s string) string {
	if len(s) > 1 && s[0] == '-' && s[1] >= 'A' {
		return s[1:]
	}
	return s
}

// prefixed reads what has its unit before the number: "$150", "$150/yd3",
// "R-10", "RSI 1.76", "#5", "W2.9". ok is false where s is no such text.
func prefixed(text, s string) (q Quantity, ok bool, err error) {
	unit, body, neg := "", s, false
	switch {
	case s[0] == '$':
		unit, body = "$", s[1:]
	case strings.HasPrefix(s, "-$"), strings.HasPrefix(s, "−$"):
		unit, body, neg = "$", s[strings.IndexByte(s, '$')+1:], true
	case s[0]|0x20 == 'r':
		unit = "R"
		if body = s[1:]; len(s) > 2 && strings.EqualFold(s[:3], "RSI") {
			unit, body = "RSI", s[3:]
		}
		if body != "" && (body[0] == '-' || body[0] == '=') {
			body = body[1:]
		}
	case s[0] == '#':
		unit, body = "bar", s[1:]
	case wire(s):
		unit, body = "W", s[1:]
	default:
		return q, false, nil
	}
	body = strings.TrimLeft(body, " ")
	v, n, problem := scan(body)
	if problem == "" && (body[0] == '-' || body[0] == '+' || strings.HasPrefix(body, "−")) {
		problem = "has a second sign"
	}
	if problem != "" {
		return q, true, notNumber(text, problem, wantPlain)
	}
	if neg && v != 0 {
		v = -v
	}
	rest := strings.TrimSpace(body[n:])
	if unit == "$" && rest != "" {
		if u := resolve("$" + rest); u != nil {
			return Quantity{v, u.symbol}, true, nil
		}
	}
	if rest != "" {
		return q, true, unknownUnit(text, unit+rest)
	}
	return Quantity{v, unit}, true, nil
}

// wire tells whether s begins as the number of a plain or deformed wire does: "W2.9", "D4".
func wire(s string) bool {
	return len(s) > 1 && (s[0] == 'W' || s[0] == 'D') && s[1] >= '0' && s[1] <= '9'
}

// compound reads the rest of a quantity of several parts, "ft 6 in" after
// the 3, and adds it up in the first unit.
func compound(v float64, rest string) (Quantity, bool) {
	first, rest := leading(rest)
	if first == nil || rest == "" {
		return Quantity{}, false
	}
	switch first.kind {
	case Length, Time, Mass, Volume:
	default:
		return Quantity{}, false
	}
	sum, last, neg := v, first, v < 0
	for rest != "" {
		w, n, problem := scan(rest)
		if problem != "" || w < 0 {
			return Quantity{}, false
		}
		u, more := leading(strings.TrimLeft(rest[n:], " "))
		if u == nil || u.kind != first.kind || u.factor >= last.factor {
			return Quantity{}, false
		}
		if w = convert(w, u, first); neg {
			w = -w
		}
		sum, last, rest = sum+w, u, more
	}
	return Quantity{sum, first.symbol}, true
}

// leading takes the plain unit that s begins with and gives what follows it,
// without the "and", comma or hyphen between two parts.
func leading(s string) (*unit, string) {
	n := 0
	for n < len(s) && (s[n] < '0' || s[n] > '9') && s[n] != ' ' && s[n] != '-' && s[n] != ',' {
		r, size := runeAt(s, n)
		if fraction(r) > 0 {
			break
		}
		n += size
	}
	u := resolve(s[:n])
	if n == 0 || u == nil {
		return nil, s
	}
	rest := strings.TrimLeft(s[n:], " ")
	if u.symbol == "ft" {
		rest = strings.TrimPrefix(rest, "-")
	}
	rest = strings.TrimPrefix(rest, ",")
	rest = strings.TrimLeft(rest, " ")
	rest = strings.TrimPrefix(rest, "and ")
	return u, strings.TrimLeft(rest, " ")
}

// another tells whether s, which follows a number, holds a second number: a
// range, a list or just a number.
func another(s string) bool {
	s = strings.TrimLeft(s, " -–—,")
	s = strings.TrimPrefix(s, "to ")
	s = strings.TrimPrefix(s, "and ")
	_, n, problem := scan(s)
	return problem == "" && n > 0
}
