package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// ErrKind sorts the errors of this package.
type ErrKind int

// The kinds of error.
const (
	MissingUnit ErrKind = iota + 1 // a number without the unit it needs
	UnknownUnit                    // a unit that is not known
	WrongKind                      // a unit of another kind than the wanted one
	NotANumber                     // no number, two numbers, or none that is finite
)

// String names the kind of error in words.
func (k ErrKind) String() string {
	switch k {
	case MissingUnit:
		return "missing unit"
	case UnknownUnit:
		return "unknown unit"
	case WrongKind:
		return "wrong kind"
	case NotANumber:
		return "not a number"
	}
	return "error " + strconv.Itoa(int(k))
}

// Error says what is wrong with a text and what would be right. Every error
// of this package is an *Error.
type Error struct {
	Text    string  // what was read
	Problem string  // what is wrong with it, as a predicate: "has no unit"
	Want    string  // what would be right: "write 9 yd3 or 7 m3"; may be empty
	Kind    ErrKind // which sort of error it is
}

// Error gives the message, such as
//
//	"9" has no unit: write 9 yd3 or 7 m3
func (e *Error) Error() string {
	m := `"` + clip(e.Text) + `" ` + e.Problem
	if e.Want != "" {
		m += ": " + e.Want
	}
	return m
}

// clip shortens a text for a message.
func clip(s string) string {
	s = strings.ToValidUTF8(s, "?")
	if len(s) <= 60 {
		return s
	}
	n := 57
	for !utf8.RuneStart(s[n]) {
		n--
	}
	return s[:n] + "..."
}

// notNumber is the error for a text without a usable number.
func notNumber(text, problem, want string) *Error {
	return &Error{Text: text, Problem: problem, Want: want, Kind: NotANumber}
}

// wrongKind is the error for a quantity of unit u where a unit like want is
// asked for.
func wrongKind(text string, u, want *unit) *Error {
	problem := "is " + u.kind.phrase() + ", " + want.kind.phrase() + " is wanted"
	if u.kind == want.kind {
		problem = "counts " + Symbol(u.symbol) + ", not " + Symbol(want.symbol)
	}
	return &Error{Text: text, Problem: problem, Want: "write for example " + both(example(want), want), Kind: WrongKind}
}

// missingUnit is the error for a bare number v where unit want is needed.
func missingUnit(text string, v float64, want *unit) *Error {
	return &Error{Text: text, Problem: "has no unit", Want: "write " + both(v, want), Kind: MissingUnit}
}

// both writes v of unit u the way a person would type it, and about the same
// in the other system: "9 yd3 or 7 m3".
func both(v float64, u *unit) string {
	q := Quantity{v, u.symbol}
	s := typed(q)
	o := q.To(SI)
	if native(u) == SI {
		o = q.To(US)
	}
	if o.Unit != q.Unit {
		s += " or " + typed(Quantity{about(o.Value), o.Unit})
	}
	return s
}

// typed writes a quantity with the canonical symbol of its unit.
func typed(q Quantity) string {
	switch {
	case q.Unit == "$" || strings.HasPrefix(q.Unit, "$/"):
		return "$" + number(q.Value) + q.Unit[1:]
	case q.Unit == "" || q.Unit == "1":
		return number(q.Value)
	case q.Unit == "R":
		return "R-" + number(q.Value)
	case q.Unit == "dF" || q.Unit == "dC":
		return number(q.Value) + " " + q.Unit[1:] + " difference"
	}
	return number(q.Value) + " " + q.Unit
}

// about rounds to one digit, or to two where one would be off by more than a
// twentieth.
func about(v float64) float64 {
	if r := round(v, 1); math.Abs(r-v) <= 0.05*math.Abs(v) {
		return r
	}
	return round(v, 2)
}
