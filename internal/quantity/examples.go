package quantity

// examples are likely values, for messages. A unit that is not listed takes
// the example of its counterpart or of its kind.
var examples = map[string]float64{
	"in": 4, "ft": 10, "yd": 20, "mi": 5, "mil": 10, "ft2": 100, "yd2": 100, "yd3": 9, "ft3": 27, "gal": 12,
	"fl oz": 20, "lb": 94, "ton": 20, "oz": 8, "lb/yd3": 564, "lb/ft3": 145, "bags/yd3": 6, "gal/yd3": 34, "fl oz/yd3": 60,
	"gal/bag": 5, "psi": 4000, "psf": 600, "ksi": 60, "lbf": 500, "kip": 20, "F": 70, "dF": 20, "F/h": 5,
	"F/in": 3, "mph": 10, "ft/h": 5, "h": 2, "min": 90, "d": 7, "s": 30, "rpm": 10, "": 0.45, "%": 6, "ppm": 500, "ug/m3": 50,
	"lb/ft2/h": 0.2, "R": 10, "in2/ft": 0.2, "ft2/gal": 200, "gal/100 ft2": 0.5, "yd3/h": 40, "gal/min": 10,
	"ft2/h": 500, "perm": 0.1, "perm in": 3, "lb/1000 ft2/24 h": 3, "millionths": 500, "millionths/F": 5.5, "lb/ft2": 50, "lbm/ft": 1,
	"lb/ft": 500, "ft·lb": 50, "pci": 100, "fl oz/cwt": 4, "Btu/lb": 150, "Btu": 500, "kW": 5, "Btu/h/ft2": 300,
	"Btu/h/ft2/F": 1, "Btu/h/ft/F": 1, "Btu/lb/F": 0.2, "F·h": 1000, "F·d": 50, "in/ft": 0.25, "deg": 45, "m2/kg": 380,
	"coulomb": 1000, "kohm·cm": 20, "mpg": 5, "1": 3, "rev": 300, "truck": 3, "$": 150, "$/yd3": 150, "$/ft2": 6, "$/ft": 5,
	"$/lb": 2, "$/h": 60,
}

// example is a likely value in unit u.
func example(u *unit) float64 {
	if v, ok := examples[u.symbol]; ok {
		return v
	}
	for _, s := range append([]string{u.us}, table().kinds[u.kind]...) {
		if v, ok := examples[s]; ok && (s != "" || u.kind == Ratio) {
			return about(convert(v, resolve(s), u))
		}
	}
	return 1
}
