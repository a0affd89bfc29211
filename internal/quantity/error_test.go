package quantity

import (
	"errors"
	"math"
	"testing"
)

func TestMessages(t *testing.T) {
	for _, c := range []struct {
		text, unit string
		kind       ErrKind
		want       string
	}{
		{"9", "yd3", MissingUnit, `"9" has no unit: write 9 yd3 or 7 m3`},
		{"4 psi", "in", WrongKind, `"4 psi" is a pressure, a length is wanted: write for example 4 in or 100 mm`},
		{"6", "%", MissingUnit, `"6" has no unit: write 6 %`},
		{"9", "R", MissingUnit, `"9" has no unit: write R-9 or 1.6 RSI`},
		{"9", "$", MissingUnit, `"9" has no unit: write $9`},
		{"20", "dF", MissingUnit, `"20" has no unit: write 20 F difference or 11 C difference`},
		{"28°", "F", WrongKind, `"28°" is an angle, a temperature is wanted: write for example 70 F or 21 C`},
		{"3 trucks", "rev", WrongKind, `"3 trucks" counts trucks, not rev: write for example 300 rev`},
		{"6 rev", "", WrongKind, `"6 rev" is a count, a plain ratio is wanted: write for example 0.45`},
		{"9 yrd3", "yd3", UnknownUnit, `"9 yrd3" has the unknown unit "yrd3": did you mean "yd3"?`},
		{"9 galons", "gal", UnknownUnit, `"9 galons" has the unknown unit "galons": did you mean "gallons"?`},
		{"5 KN", "kN", UnknownUnit, `"5 KN" has the unknown unit "KN": did you mean "kn" or "kN"?`},
		{"5 mPa", "MPa", UnknownUnit, `"5 mPa" has the unknown unit "mPa": did you mean "MPa"?`},
		{"9 sacks", "bags/yd3", UnknownUnit, `"9 sacks" has the unknown unit "sacks": write for example "bags/yd3"`},
		{"9 yd3 of concrete", "yd3", UnknownUnit, `"9 yd3 of concrete" has more than a unit after the number, "yd3 of concrete": write only "yd3"`},
		{"5", "foo", UnknownUnit, `"foo" is no known unit: did you mean "foot"?`},
		{"9 zzzzzz", "in", UnknownUnit, `"9 zzzzzz" has the unknown unit "zzzzzz": write a unit such as in, ft, yd3, lb, psi, F or their metric counterparts`},
		{"", "in", NotANumber, `"" is empty: write a number such as 28, 3.25, 3 1/4 or 1,200`},
		{"3 to 4 in", "in", NotANumber, `"3 to 4 in" holds more than one number: write one number and its unit`},
		{"12,5 in", "in", NotANumber, `"12,5 in" has a comma that does not part thousands: write a number such as 28, 3.25, 3 1/4 or 1,200`},
	} {
		_, err := ParseAs(c.text, c.unit)
		var e *Error
		if !errors.As(err, &e) || e.Kind != c.kind || e.Error() != c.want {
			t.Errorf("ParseAs(%q, %q) fails with %v; want %s", c.text, c.unit, err, c.want)
		}
	}
}

func TestParseAs(t *testing.T) {
	for _, c := range []struct {
		text, unit string
		want       Quantity
	}{
		{"3 ft 6 in", "in", Quantity{42, "in"}}, {"5 bags/yd3", "lb/yd3", Quantity{470, "lb/yd3"}}, {"45 %", "", Quantity{0.45, ""}},
		{"0.45", "", Quantity{0.45, ""}}, {"6 %", "%", Quantity{6, "%"}}, {"300", "rev", Quantity{300, "rev"}}, {"3", "1", Quantity{3, "1"}},
		{"3 trucks", "1", Quantity{3, "1"}}, {"3 each", "truck", Quantity{3, "truck"}}, {"20 F", "dF", Quantity{20, "dF"}},
		{"20 F", "dC", Quantity{20 * degF, "dC"}}, {"600 lb/ft2", "psf", Quantity{600, "psf"}}, {"12 oz", "fl oz", Quantity{12, "fl oz"}},
		{"500 lb", "lbf", Quantity{500, "lbf"}}, {"1 lb/ft", "lbm/ft", Quantity{1, "lbm/ft"}}, {"0.05 %", "millionths", Quantity{500, "millionths"}},
		{"2 %", "mm/m", Quantity{20, "mm/m"}}, {"28 F", "°F", Quantity{28, "F"}}, {"32 F", "C", Quantity{0, "C"}}, {"24 h", "d", Quantity{1, "d"}},
		{"27 ft3", "cubic yards", Quantity{1, "yd3"}}, {"R-10", "R", Quantity{10, "R"}}, {"2 tons", "lb", Quantity{4000, "lb"}},
		{"1 in", "mm", Quantity{25.4, "mm"}}, {"$150/yd3", "$/yd3", Quantity{150, "$/yd3"}}, {"1 month", "d", Quantity{30.4375, "d"}},
	} {
		q, err := ParseAs(c.text, c.unit)
		if err != nil || q.Unit != c.want.Unit || !close(q.Value, c.want.Value) {
			t.Errorf("ParseAs(%q, %q) = %v, %v; want %v", c.text, c.unit, q, err, c.want)
		}
	}
}

func TestIn(t *testing.T) {
	for _, c := range []struct {
		q    Quantity
		unit string
		kind ErrKind
	}{
		{Quantity{1, "in"}, "psi", WrongKind}, {Quantity{1, "in"}, "foo", UnknownUnit}, {Quantity{1, "foo"}, "in", UnknownUnit},
		{Quantity{1, "rev"}, "truck", WrongKind}, {Quantity{1e308, "km"}, "mm", NotANumber}, {Quantity{math.NaN(), "km"}, "mm", NotANumber},
		{Quantity{70, "F"}, "dF", WrongKind}, {Quantity{1, "ppm"}, "mg/m3", WrongKind},
	} {
		q, err := c.q.In(c.unit)
		var e *Error
		if !errors.As(err, &e) || e.Kind != c.kind || q != (Quantity{}) {
			t.Errorf("%v.In(%q) = %v, %v; want %v", c.q, c.unit, q, err, c.kind)
		}
	}
	for k, want := range map[ErrKind]string{MissingUnit: "missing unit", UnknownUnit: "unknown unit", WrongKind: "wrong kind", NotANumber: "not a number", 9: "error 9"} {
		if k.String() != want {
			t.Errorf("ErrKind %d is %q, want %q", int(k), k, want)
		}
	}
}

func TestSize(t *testing.T) {
	ft := func(v float64) Quantity { return Quantity{v, "ft"} }
	for text, want := range map[string][]Quantity{
		"10 ft x 12 ft": {ft(10), ft(12)}, "10x12 ft": {ft(10), ft(12)}, "10 ft by 12 ft by 4 in": {ft(10), ft(12), {4, "in"}},
		"24'x30'": {ft(24), ft(30)}, "3 m × 4 m": {{3, "m"}, {4, "m"}}, "10 1/2 x 12 ft x 4 in": {ft(10.5), ft(12), {4, "in"}},
		`10' 6" x 12'-0"`: {ft(10.5), ft(12)}, "10ftx12ft": {ft(10), ft(12)}, "20 FT BY 30 FT": {ft(20), ft(30)}, "10 X 12 X 0.5 ft": {ft(10), ft(12), ft(0.5)},
		"2 x 10^3 x 3 ft": {ft(2000), ft(3)}, `24'×30'×4"`: {ft(24), ft(30), {4, "in"}}, "3½ x ¾ in": {{3.5, "in"}, {0.75, "in"}}, "5*6 m": {{5, "m"}, {6, "m"}},
	} {
		got, err := Size(text)
		if err != nil || len(got) != len(want) {
			t.Errorf("Size(%q) = %v, %v; want %v", text, got, err, want)
			continue
		}
		for i := range got {
			if got[i] != want[i] {
				t.Errorf("Size(%q) = %v; want %v", text, got, want)
			}
		}
	}
	for text, kind := range map[string]ErrKind{
		"": NotANumber, "10 ft": NotANumber, "10 x 12": MissingUnit, "10 ft x 12": MissingUnit, "10 ft x 12 psi": WrongKind, "0 x 3 ft": NotANumber,
		"-3x4 ft": NotANumber, "3 x 4 x 5 x 6 ft": NotANumber, "a x b": NotANumber, "x 3 ft": NotANumber, "3 foo x 4 ft": UnknownUnit, "3 ft x": NotANumber,
	} {
		got, err := Size(text)
		var e *Error
		if !errors.As(err, &e) || e.Kind != kind || got != nil {
			t.Errorf("Size(%q) = %v, %v; want %v", text, got, err, kind)
		}
	}
}
