package quantity

import (
	"bytes"
	"math"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// gnuRows reads the conversions that were taken from GNU units: value, from,
// to, result, and the two expressions given to that program.
func gnuRows(t *testing.T) [][]string {
	t.Helper()
	b, err := os.ReadFile("testdata/gnu-units.tsv")
	if err != nil {
		t.Fatal(err)
	}
	var rows [][]string
	for line := range strings.Lines(string(b)) {
		if line = strings.TrimSuffix(line, "\n"); line != "" && line[0] != '#' {
			f := strings.Split(line, "\t")
			if len(f) != 6 {
				t.Fatalf("%q has %d fields", line, len(f))
			}
			rows = append(rows, f)
		}
	}
	return rows
}

func float(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func TestAgainstGNUUnits(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range gnuRows(t) {
		seen[r[1]], seen[r[2]] = true, true
		want := float(t, r[3])
		q, err := Quantity{float(t, r[0]), r[1]}.In(r[2])
		if err != nil || math.Abs(q.Value-want) > 1e-9*math.Max(math.Abs(want), 1e-9) && math.Abs(q.Value-want) > 1e-12 {
			t.Errorf("%s %s is %v, %v; GNU units gives %v %s", r[0], r[1], q.Value, err, want, r[2])
		}
	}
	for _, u := range table().units {
		if !seen[u.symbol] && u.kind != Count && u.kind != Money && u.kind != Charge {
			t.Errorf("unit %q is not checked against GNU units", u.symbol)
		}
	}
}

// TestLiveGNUUnits asks the program itself where the machine has it.
func TestLiveGNUUnits(t *testing.T) {
	path, err := exec.LookPath("units")
	if err != nil {
		t.Skip("the program units is not installed")
	}
	rows := gnuRows(t)
	var in bytes.Buffer
	for _, r := range rows {
		in.WriteString(r[4] + "\n" + r[5] + "\n")
	}
	cmd := exec.Command(path, "-t", "-o", "%.15g")
	cmd.Stdin = &in
	out, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Fields(string(out))
	if len(lines) != len(rows) {
		t.Fatalf("units gave %d results for %d rows", len(lines), len(rows))
	}
	for i, r := range rows {
		if got, want := float(t, lines[i]), float(t, r[3]); math.Abs(got-want) > 1e-9*math.Abs(want)+1e-12 {
			t.Errorf("units gives %s for %s in %s; the file has %s", lines[i], r[4], r[5], r[3])
		}
	}
}

// TestSpellings holds the tables together: every unit is found by its symbol
// and its printed form, no spelling means two units, and the natural unit of
// each system exists and is of the same kind.
func TestSpellings(t *testing.T) {
	owner := map[string]string{}
	for _, u := range table().units {
		for _, s := range u.spellings() {
			texts := []string{s}
			if k, ok := table().spell(s); ok {
				texts = append(texts, string(k.bytes(nil)))
			}
			for _, s := range texts {
				if o, ok := owner[s]; ok && o != u.symbol {
					t.Errorf("%q means both %q and %q", s, o, u.symbol)
				}
				owner[s] = u.symbol
			}
			if c, ok := Known(s); !ok || c != u.symbol {
				t.Errorf("Known(%q) = %q, %v; want %q", s, c, ok, u.symbol)
			}
		}
		if c, ok := Known(Symbol(u.symbol)); (!ok || c != u.symbol) && u.symbol != "lbm/ft" {
			t.Errorf("printed form %q of %q is read as %q, %v", Symbol(u.symbol), u.symbol, c, ok)
		}
		for _, n := range []string{u.us, u.si} {
			if v := table().exact[n]; n != "" && (v == nil || v.kind != u.kind || v.symbol != n) {
				t.Errorf("counterpart %q of %q is not a unit of its kind", n, u.symbol)
			}
		}
		if (u.us == "") != (u.si == "") || u.us != "" && u.us == u.si {
			t.Errorf("%q has counterparts %q and %q", u.symbol, u.us, u.si)
		}
		if u.factor <= 0 {
			t.Errorf("%q has factor %v", u.symbol, u.factor)
		}
	}
	for a, list := range twins {
		for _, b := range append([]string{a}, list...) {
			if u := table().exact[b]; u == nil || u.symbol != b {
				t.Errorf("twin %q is no unit", b)
			}
		}
	}
	for s := range examples {
		if u := table().exact[s]; u == nil || u.symbol != s {
			t.Errorf("the example for %q is for no unit", s)
		}
	}
	words := map[string]string{}
	for _, a := range atoms {
		for s := range strings.FieldsSeq(a[1]) {
			if o, ok := words[s]; ok {
				t.Errorf("word %q means both %q and %q", s, o, a[0])
			}
			words[s] = a[0]
		}
	}
}

func TestKnown(t *testing.T) {
	for spelled, want := range map[string]string{
		"inches": "in", "in.": "in", `"`: "in", "yds": "yd", "cubic yards": "yd3", "yd³": "yd3", "cy": "yd3", "gallons per yard": "gal/yd3",
		"pounds": "lb", "lbs": "lb", "degrees F": "F", "°F": "F", "deg C": "C", "miles per hour": "mph", "hrs": "h", "percent": "%",
		"": "", " ft ": "ft", "kg/h/m2": "kg/m2/h", "W/m²·K": "W/m2/K", "sq ft": "ft2", "Sq. Ft.": "ft2", "square feet": "ft2", "SF": "ft2",
		"lb/ft²": "lb/ft2", "pounds per square inch": "psi", "lbs/in²": "psi", "ml/100kg": "mL/100 kg", "oz": "oz", "U.S. gallons": "gal",
		"imperial gallons": "imp gal", "microns": "um", "cubic feet per minute": "ft3/min", "ft-lb": "ft·lb", "lb-ft": "ft·lb",
		"kohm-cm": "kohm·cm", "kΩ·cm": "kohm·cm", "each": "1", "µε": "millionths", "degree F days": "F·d", "lb per cu ft": "lb/ft3",
	} {
		if c, ok := Known(spelled); !ok || c != want {
			t.Errorf("Known(%q) = %q, %v; want %q", spelled, c, ok, want)
		}
	}
	for _, s := range []string{"#", "sack", "bag", "foo", "lb/", "/lb", "per", "2", "yd4", "mPa", "KN", "k", strings.Repeat("m ", 50), "F difference difference difference m"} {
		if c, ok := Known(s); ok {
			t.Errorf("Known(%q) = %q, want none", s, c)
		}
	}
}

func TestKinds(t *testing.T) {
	if k, ok := KindOf("cubic yards"); !ok || k != Volume {
		t.Errorf("KindOf = %v, %v", k, ok)
	}
	if _, ok := KindOf("foo"); ok {
		t.Error("foo has a kind")
	}
	if !SameKind("in", "mm") || SameKind("in", "psi") || SameKind("foo", "foo") {
		t.Error("SameKind is wrong")
	}
	if got := Units(Time); len(got) != 7 || got[0] != "s" {
		t.Errorf("Units(Time) = %q", got)
	}
	if Units("nonsense") != nil {
		t.Error("an unknown kind has units")
	}
	for _, u := range table().units {
		if u.kind.phrase() == "" || example(u) == 0 {
			t.Errorf("no phrase or example for %q", u.symbol)
		}
	}
}
