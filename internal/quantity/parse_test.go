package quantity

import (
	"errors"
	"math"
	"strings"
	"testing"
)

func close(a, b float64) bool { return math.Abs(a-b) <= 1e-9*math.Max(1, math.Abs(b)) }

func TestParse(t *testing.T) {
	for _, c := range []struct {
		text  string
		value float64
		unit  string
	}{
		{"3 1/4 in", 3.25, "in"}, {`3-1/4"`, 3.25, "in"}, {`3.25"`, 3.25, "in"}, {"3¼ in", 3.25, "in"},
		{"3 ¼ in", 3.25, "in"}, {"¾ in", 0.75, "in"}, {"1/4 in", 0.25, "in"}, {"3⁄8 in", 0.375, "in"},
		{"-3 1/2 in", -3.5, "in"}, {`3-¼"`, 3.25, "in"}, {"1/4in.", 0.25, "in"},
		{"3 ft 6 in", 3.5, "ft"}, {`3' 6"`, 3.5, "ft"}, {`3'-6"`, 3.5, "ft"}, {`3' - 6 1/2"`, 3 + 6.5/12, "ft"},
		{`3′ 6″`, 3.5, "ft"}, {`3’6”`, 3.5, "ft"}, {`3'6½"`, 3 + 6.5/12, "ft"}, {"-3 ft 6 in", -3.5, "ft"},
		{"3 ft. 6 in.", 3.5, "ft"}, {"2 h 30 min", 2.5, "h"}, {"2h30min", 2.5, "h"},
		{"2 hours and 30 minutes", 2.5, "h"}, {"1 day, 6 hours", 1.25, "d"}, {"5 lb 8 oz", 5.5, "lb"},
		{"1 h 30 min 36 s", 1.51, "h"}, {"12''", 12, "in"},
		{"9 yd3", 9, "yd3"}, {"9 cubic yards", 9, "yd3"}, {"9 yd³", 9, "yd3"}, {"9 CY", 9, "yd3"}, {"9 cu. yd.", 9, "yd3"},
		{"9 yd^3", 9, "yd3"}, {"9 yards cubed", 9, "yd3"},
		{"5.5 bags/yd3", 5.5, "bags/yd3"}, {"5 1/2 sacks per yard", 5.5, "bags/yd3"}, {"5½ sack/yd³", 5.5, "bags/yd3"},
		{"12 gal", 12, "gal"}, {"38 L", 38, "L"}, {"28 F", 28, "F"}, {"28°F", 28, "F"}, {"28 deg. F", 28, "F"},
		{"28 degrees Fahrenheit", 28, "F"}, {"-2 °C", -2, "C"}, {"−2 C", -2, "C"}, {"28 º F", 28, "F"},
		{"35 °F difference", 35, "dF"}, {"35 F diff", 35, "dF"}, {"20 dC", 20, "dC"},
		{"12 mph", 12, "mph"}, {"5 m/s", 5, "m/s"}, {"20 km/h", 20, "km/h"}, {"8 knots", 8, "kn"},
		{"0.45", 0.45, ""}, {".45", 0.45, ""}, {"6 %", 6, "%"}, {"6%", 6, "%"}, {"6 percent", 6, "%"}, {"6 per cent", 6, "%"},
		{"1,200 psi", 1200, "psi"}, {"1.5e3 psi", 1500, "psi"}, {"4 x 10^6 psi", 4e6, "psi"}, {"4×10⁶ psi", 4e6, "psi"},
		{"500 x 10^-6 in/in", 500e-6, "in/in"}, {"5 ×10⁻⁶ in/in", 5e-6, "in/in"},
		{"30 MPa", 30, "MPa"}, {"30 N/mm²", 30, "MPa"}, {"3,500 PSI", 3500, "psi"}, {"1,234,567.5 lb", 1234567.5, "lb"},
		{"90 min", 90, "min"}, {"7 days", 7, "d"}, {"28-day", 28, "d"}, {"6-inch", 6, "in"}, {"1 1/2-inch", 1.5, "in"}, {"3/4-in.", 0.75, "in"}, {"50 % RH", 50, "%"}, {"10 mil", 10, "mil"},
		{"300 lb/yd3", 300, "lb/yd3"}, {"300 pounds per cubic yard", 300, "lb/yd3"}, {"300 lb per yd", 300, "lb/yd3"},
		{"180 kg/m3", 180, "kg/m3"}, {"145 pcf", 145, "lb/ft3"},
		{"#5", 5, "bar"}, {"# 11", 11, "bar"}, {"5 bar", 5, "bar"}, {"W2.9", 2.9, "W"}, {"D4", 4, "W"}, {"1.4 W", 1.4, "W"}, {"40 watts", 40, "watt"},
		{"R-10", 10, "R"}, {"R 3.7", 3.7, "R"}, {"r10", 10, "R"}, {"RSI 1.76", 1.76, "RSI"}, {"RSI-1.76", 1.76, "RSI"},
		{"10 ft²·h·°F/Btu", 10, "R"}, {"2 m²K/W", 2, "RSI"}, {"2 m2·K/W", 2, "RSI"},
		{"0.2 lb/ft2/h", 0.2, "lb/ft2/h"}, {"0.2 lb/ft²/hr", 0.2, "lb/ft2/h"}, {"0.2 lb/(sq ft·hr)", 0.2, "lb/ft2/h"},
		{"0.2 pounds per square foot per hour", 0.2, "lb/ft2/h"}, {"1 kg/(m² h)", 1, "kg/m2/h"},
		{"3 lb/1000 ft2/24 h", 3, "lb/1000 ft2/24 h"}, {"3 lb/1,000 sf per 24 hours", 3, "lb/1000 ft2/24 h"},
		{"3 lb/1000 ft²/day", 3, "lb/1000 ft2/24 h"}, {"170 g/(m2·d)", 170, "g/(m2 d)"},
		{"4 fl oz/cwt", 4, "fl oz/cwt"}, {"4 oz/cwt", 4, "fl oz/cwt"}, {"4 fluid ounces per 100 lb", 4, "fl oz/cwt"},
		{"260 mL/100 kg", 260, "mL/100 kg"}, {"5 imp gal", 5, "imp gal"}, {"5 US gallons", 5, "gal"},
		{"2 ton", 2, "ton"}, {"2 short tons", 2, "ton"}, {"2 metric tons", 2, "t"}, {"2 tonne", 2, "t"}, {"2 t", 2, "t"},
		{"300 rev", 300, "rev"}, {"300 revolutions", 300, "rev"}, {"3 trucks", 3, "truck"}, {"3 each", 3, "1"},
		{"$150", 150, "$"}, {"$ 1,250.50", 1250.5, "$"}, {"-$20", -20, "$"}, {"150 dollars", 150, "$"}, {"$150/yd3", 150, "$/yd3"},
		{"$150 per cubic yard", 150, "$/yd3"}, {"0.31 in2/ft", 0.31, "in2/ft"}, {"0.31 sq. in. per ft", 0.31, "in2/ft"},
		{"0.1 perms", 0.1, "perm"}, {"57 ng/(Pa·s·m²)", 57, "ng/(Pa s m2)"}, {"500 millionths", 500, "millionths"},
		{"500 microstrain", 500, "millionths"}, {"50 µg/m³", 50, "ug/m3"}, {"1,000 °F·h", 1000, "F·h"}, {"1000 F-hours", 1000, "F·h"},
		{"100 pci", 100, "pci"}, {"100 psi/in", 100, "pci"}, {"1.2 Btu/(h·ft·°F)", 1.2, "Btu/h/ft/F"}, {"1.8 W/(m·K)", 1.8, "W/m/K"},
		{"1/4 in/ft", 0.25, "in/ft"}, {"45°", 45, "deg"}, {"3 °F/in.", 3, "F/in"}, {"5 °F per hour", 5, "F/h"},
		{"29.9 inches of mercury", 29.9, "inHg"}, {"34 gallons per yard", 34, "gal/yd3"}, {"+5 F", 5, "F"},
		{" 9\u00a0yd3\n", 9, "yd3"}, {"5 kN", 5, "kN"}, {"5 kn", 5, "kn"}, {"2 Mg", 2, "t"}, {"-0 F", 0, "F"},
	} {
		q, err := Parse(c.text)
		if err != nil || !close(q.Value, c.value) || q.Unit != c.unit || math.Signbit(q.Value) != (c.value < 0) {
			t.Errorf("Parse(%q) = %v, %v; want %v %q", c.text, q, err, c.value, c.unit)
		}
	}
}

func TestParseErrors(t *testing.T) {
	for _, c := range []struct {
		text string
		kind ErrKind
	}{
		{strings.Repeat("1", 300), NotANumber}, {"", NotANumber}, {"   ", NotANumber}, {"in", NotANumber}, {"NaN", NotANumber}, {"Inf psi", NotANumber},
		{"-inf", NotANumber}, {"1e999 psi", NotANumber}, {"12,5 in", NotANumber}, {"1,2000 psi", NotANumber}, {",5 in", NotANumber},
		{"0,450", NotANumber}, {"1,20,000", NotANumber}, {"1/0 in", NotANumber}, {"3 5/4 in", NotANumber}, {"--5 F", NotANumber},
		{"3 to 4 in", NotANumber}, {"3-4 in", NotANumber}, {"3–4 in", NotANumber}, {"10 20 psi", NotANumber}, {"3, 4 in", NotANumber},
		{"- 5 F", NotANumber}, {"about 5 F", NotANumber}, {"#", NotANumber}, {"# 5 6", UnknownUnit}, {"#five", NotANumber}, {"$", NotANumber}, {"R", NotANumber}, {"R--5", NotANumber},
		{"rebar 5", NotANumber}, {"..5", NotANumber}, {"R-", NotANumber}, {"1/4.5 in", NotANumber},
		{"9 yd3 of concrete", UnknownUnit}, {"3 in in", UnknownUnit}, {"3 in mm", UnknownUnit}, {"5.5 sack", UnknownUnit},
		{"5 bags", UnknownUnit}, {"4 psi psi", UnknownUnit}, {"3 in 4 ft", UnknownUnit}, {"3 in 4 in", UnknownUnit}, {"5 m 30 s", UnknownUnit},
		{"5 #", UnknownUnit}, {"5 mPa", UnknownUnit}, {"5 KN", UnknownUnit}, {"5 lb/", UnknownUnit}, {"5 /yd3", UnknownUnit},
		{"5 lb//yd3", UnknownUnit}, {"5 square", UnknownUnit}, {"5 fl", UnknownUnit}, {"5 us", UnknownUnit}, {"5 yd4", UnknownUnit},
		{"R-10 in", UnknownUnit}, {"$5 in", UnknownUnit}, {"3' 6", UnknownUnit}, {"5 \xff", UnknownUnit}, {"5 per yard", UnknownUnit},
		{"180 kg m3", UnknownUnit}, {"5 in-", UnknownUnit}, {"5 in)", UnknownUnit}, {"5 (in", UnknownUnit}, {"5 in*", UnknownUnit}, {"5 lb/(ft2 h", UnknownUnit},
	} {
		q, err := Parse(c.text)
		var e *Error
		if !errors.As(err, &e) || e.Kind != c.kind || q != (Quantity{}) {
			t.Errorf("Parse(%q) = %v, %v; want %v", c.text, q, err, c.kind)
		}
	}
}
