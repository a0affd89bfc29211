package quantity

import (
	"errors"
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

// anyUnit draws a unit of the tables.
func anyUnit(t *rapid.T) *unit { return rapid.SampledFrom(table().units).Draw(t, "unit") }

// near allows for the rounding of n digits, and for temperatures for the tenth
// of a degree they print with.
func near(a, b, part float64, u *unit) bool {
	d := math.Abs(a - b)
	return d <= part*math.Abs(b)+1e-12 || u.kind == Temperature && d <= 0.051+part*math.Abs(b) || strings.HasPrefix(u.symbol, "$") && d <= 0.00501
}

func TestPrintIsRead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := anyUnit(t)
		v := rapid.Float64Range(-1e7, 1e7).Draw(t, "value")
		if rapid.Bool().Draw(t, "small") {
			v /= 1e6
		}
		if u.kind == RValue || u.symbol == "bar" || u.symbol == "W" { // there are no such things below nothing
			v = math.Abs(v)
		}
		s := System(rapid.IntRange(0, 1).Draw(t, "system"))
		to := Quantity{v, u.symbol}.To(s)
		text := Quantity{v, u.symbol}.Print(s)
		got, err := ParseAs(text, to.Unit)
		if err != nil || got.Unit != to.Unit || !near(got.Value, to.Value, 0.0051, resolve(to.Unit)) {
			t.Fatalf("%v %q prints as %q, read as %v, %v", v, u.symbol, text, got, err)
		}
		if strings.HasPrefix(text, "-0 ") || text == "-0" {
			t.Fatalf("%q has a sign on zero", text)
		}
		if got.To(s) != got {
			t.Fatalf("%v is not at home in its own system", got)
		}
	})
}

func TestThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := anyUnit(t)
		v := rapid.SampledFrom(Units(u.kind)).Draw(t, "other")
		x := rapid.Float64Range(-1e9, 1e9).Draw(t, "value")
		q := Quantity{x, u.symbol}
		p, err := q.In(v)
		if err != nil {
			if u.kind != Count {
				t.Fatal(err)
			}
			return
		}
		back, err := p.In(u.symbol)
		if err != nil || math.Abs(back.Value-x) > 1e-9*math.Max(1, math.Abs(x)) {
			t.Fatalf("%v is %v and back %v, %v", q, p, back, err)
		}
	})
}

func TestKindsDoNotMix(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := anyUnit(t), anyUnit(t)
		_, err := Quantity{1, a.symbol}.In(b.symbol)
		if same := SameKind(a.symbol, b.symbol); !same && err == nil || same && err != nil && a.kind != Count {
			t.Fatalf("%q in %q: %v", a.symbol, b.symbol, err)
		}
	})
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"3 1/4 in", `3' 6"`, "−2 °C", "$150/yd3", "R-10", "2 h 30 min", "4 x 10^6 psi", "3-1/4\"", "1,200", "6 %",
		"9 lb/1000 ft2/24 h", "1e999", "NaN", "5.5 sack", "\xff", "3¼", "10 ft x 12 ft by 4 in", "3⁄0", "45°", "1×10⁻⁶"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		q, err := Parse(s)
		check(t, q, err)
		for _, u := range []string{"in", "", "rev", "dF", s} {
			q, err := ParseAs(s, u)
			check(t, q, err)
		}
		if err == nil {
			check(t, q, nil)
			if text := q.Print(US); text == "" || !utf8.ValidString(text) {
				t.Errorf("%v prints as %q", q, text)
			}
			if back, err := ParseAs(q.Print(native(resolve(q.Unit))), q.Unit); err != nil || back.Unit != q.Unit {
				t.Errorf("%v is read back as %v, %v", q, back, err)
			}
		}
		if size, err := Size(s); (err == nil) != (len(size) == 2 || len(size) == 3) {
			t.Errorf("Size(%q) = %v, %v", s, size, err)
		}
		Known(s)
	})
}

// check holds a result of Parse to its promises: a known unit and a finite
// value, or a typed error and nothing else.
func check(t *testing.T, q Quantity, err error) {
	t.Helper()
	if err != nil {
		var e *Error
		if !errors.As(err, &e) || e.Problem == "" || e.Want == "" || !utf8.ValidString(e.Error()) {
			t.Errorf("error %#v", err)
		}
		if q != (Quantity{}) {
			t.Errorf("both %v and %v", q, err)
		}
		return
	}
	if c, ok := Known(q.Unit); !ok || c != q.Unit || math.IsNaN(q.Value) || math.IsInf(q.Value, 0) || q.Value == 0 && math.Signbit(q.Value) {
		t.Errorf("bad quantity %v", q)
	}
}

func BenchmarkParse(b *testing.B) {
	for _, s := range []string{"9 yd3", "300 pounds per cubic yard", "3 1/4 in", `3' 6"`, "0.45", "−2 °C", "9 yd3 of concrete", "9 frobnications"} {
		b.Run(s, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_, _ = Parse(s)
			}
		})
	}
}
