package quantity

import "testing"

func TestPrint(t *testing.T) {
	for _, c := range []struct {
		value  float64
		unit   string
		us, si string
	}{
		{4, "in", "4 in", "102 mm"}, {100, "mm", "3.94 in", "100 mm"}, {3.125, "in", "3.125 in", "79.4 mm"},
		{3.1666666, "in", "3.17 in", "80.4 mm"}, {10, "ft", "10 ft", "3.05 m"}, {3, "m", "9.84 ft", "3 m"},
		{28, "F", "28 °F", "-2.2 °C"}, {32, "F", "32 °F", "0 °C"}, {-2, "C", "28.4 °F", "-2 °C"}, {273.15, "K", "32 °F", "273 K"},
		{20, "dF", "20 °F difference", "11.1 °C difference"}, {0.45, "", "0.45", "0.45"}, {6, "%", "6 %", "6 %"},
		{3500, "psi", "3,500 psi", "24.1 MPa"}, {30, "MPa", "4,350 psi", "30 MPa"}, {3475, "psi", "3,475 psi", "24 MPa"},
		{3521.7, "psi", "3,520 psi", "24.3 MPa"}, {9, "yd3", "9 yd³", "6.88 m³"}, {7, "m3", "9.16 yd³", "7 m³"},
		{12, "gal", "12 gal", "45.4 L"}, {38, "L", "10 gal", "38 L"}, {34, "gal/yd3", "34 gal/yd³", "168 L/m³"},
		{300, "lb/yd3", "300 lb/yd³", "178 kg/m³"}, {5.5, "bags/yd3", "5.5 bags/yd³", "307 kg/m³"},
		{12, "mph", "12 mph", "19.3 km/h"}, {0.2, "lb/ft2/h", "0.2 lb/ft²/h", "0.976 kg/m²/h"},
		{0.31, "in2/ft", "0.31 in²/ft", "656 mm²/m"}, {10, "R", "R-10", "1.76 RSI"}, {5, "bar", "#5", "#5"}, {2.9, "W", "W2.9", "W2.9"}, {1.76, "RSI", "R-9.99", "1.76 RSI"},
		{3, "lb/1000 ft2/24 h", "3 lb/1000 ft²/24 h", "14.6 g/(m²·d)"}, {-0.0000001, "F", "0 °F", "-17.8 °C"},
		{7, "d", "7 days", "7 days"}, {1, "d", "1 day", "1 day"}, {1, "truck", "1 truck", "1 truck"}, {3, "truck", "3 trucks", "3 trucks"},
		{300, "rev", "300 rev", "300 rev"}, {3, "1", "3", "3"}, {1250.5, "$", "$1,250.50", "$1,250.50"}, {-20, "$", "-$20", "-$20"},
		{150, "$/yd3", "$150/yd³", "$196.19/m³"}, {1234567, "lb", "1,234,567 lb", "560,000 kg"}, {45, "deg", "45°", "45°"},
		{5, "furlong", "5 furlong", "5 furlong"}, {3, "inches", "3 in", "76.2 mm"}, {1000, "F·h", "1,000 °F·h", "556 °C·h"},
	} {
		q := Quantity{c.value, c.unit}
		if us, si := q.Print(US), q.Print(SI); us != c.us || si != c.si {
			t.Errorf("Print(%v) = %q, %q; want %q, %q", q, us, si, c.us, c.si)
		}
	}
}

func TestSymbol(t *testing.T) {
	for unit, want := range map[string]string{
		"F": "°F", "yd3": "yd³", "in2/ft": "in²/ft", "C·h": "°C·h", "um": "µm", "ug/m3": "µg/m³", "lb/1000 ft2/24 h": "lb/1000 ft²/24 h",
		"cubic yards": "yd³", "furlong": "furlong", "": "", "Btu/h/ft2/F": "Btu/(h·ft²·°F)", "C/mm": "°C/mm", "millionths/F": "millionths/°F",
	} {
		if got := Symbol(unit); got != want {
			t.Errorf("Symbol(%q) = %q, want %q", unit, got, want)
		}
	}
}
