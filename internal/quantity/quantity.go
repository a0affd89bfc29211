// Package quantity owns numbers with units: it reads what people write
// ("3 1/4 in", "9 cubic yards", "R-10", "2 h 30 min") and prints it in US
// customary or SI units. It knows units and nothing else of the trade.
//
// Every unit has one canonical symbol in plain ASCII ("in", "yd3",
// "gal/yd3", "F"), save the middle dot in products such as "F·h". Functions
// that take a unit accept any spelling that [Known] resolves; a [Quantity]
// that the package returns always holds the canonical symbol.
package quantity

import "math"

// Quantity is a number with its unit. Unit is a canonical symbol; the empty
// Unit is a plain ratio. Value is finite in every Quantity this package
// returns.
type Quantity struct {
	Value float64
	Unit  string
}

// In converts q to the given unit, for which any known spelling will do.
//
// The error is an [*Error]: UnknownUnit when either unit is unknown,
// WrongKind when the kinds differ (also for two different things that are
// counted, such as trucks and revolutions), NotANumber when the result is no
// finite number.
func (q Quantity) In(unit string) (Quantity, error) {
	from, err := mustKnow(q.Unit)
	if err != nil {
		return Quantity{}, err
	}
	to, err := mustKnow(unit)
	if err != nil {
		return Quantity{}, err
	}
	if !convertible(from, to) {
		return Quantity{}, wrongKind(q.Print(native(from)), from, to)
	}
	v := convert(q.Value, from, to)
	if math.IsInf(v, 0) || math.IsNaN(v) {
		return Quantity{}, &Error{Text: number(q.Value), Problem: "is no finite number in " + to.symbol,
			Want: "write a number such as 28 or 3.25", Kind: NotANumber}
	}
	if v == 0 {
		v = 0 // no "-0"
	}
	return Quantity{v, to.symbol}, nil
}

// System is a system of units to print in.
type System int

// The systems of units: US customary and the international (metric) one.
const (
	US System = iota
	SI
)

// To gives q in the natural unit of the system s: inches become millimetres,
// psi become MPa, and the other way round. A quantity that is already in that
// system, has no counterpart there, or has an unknown unit is returned
// unchanged.
func (q Quantity) To(s System) Quantity {
	u := resolve(q.Unit)
	if u == nil {
		return q
	}
	name := u.us
	if s == SI {
		name = u.si
	}
	if name == "" || name == u.symbol {
		return q
	}
	if r, err := q.In(name); err == nil {
		return r
	}
	return q
}

// native is the system a unit belongs to; units of neither count as US.
func native(u *unit) System {
	if u.si == u.symbol {
		return SI
	}
	return US
}

// convertible tells whether a value in a can be given in b. Counts of two
// different things cannot, though a count of anything is a plain number "1".
func convertible(a, b *unit) bool {
	return a.kind == b.kind &&
		(a.kind != Count || a == b || a.symbol == "1" || b.symbol == "1")
}

// convert gives the value v of unit a in unit b of the same kind.
func convert(v float64, a, b *unit) float64 {
	if a == b {
		return v
	}
	if a.zero != 0 || b.zero != 0 {
		return (v-a.zero)*a.factor/b.factor + b.zero
	}
	// Whole ratios such as 12 in to the foot stay whole, so that 27 ft3 is
	// 1 yd3 and not 1.0000000000000002 yd3.
	if r, ok := whole(a.factor / b.factor); ok {
		return v * r
	}
	if r, ok := whole(b.factor / a.factor); ok {
		return v / r
	}
	return v * (a.factor / b.factor)
}

func whole(r float64) (float64, bool) {
	n := math.Round(r)
	return n, n >= 1 && math.Abs(r-n) < 1e-12*n
}
