package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Print writes q in the natural units of system s, as people read it: "4 in",
// "28 °F", "0.45", "6 %", "3,500 psi", "$1,200". A quantity without a
// counterpart in s, or with an unknown unit, prints in its own unit.
//
// A value prints with three significant digits, without trailing zeros and
// with commas between thousands. Whole numbers that were not converted print
// whole, inches keep their sixteenths, temperatures go to a tenth of a
// degree, and money to the cent.
func (q Quantity) Print(s System) string {
	p := q.To(s)
	n := shortest(p, p.Unit != q.Unit)
	sym := Symbol(p.Unit)
	switch {
	case p.Unit == "" || p.Unit == "1":
		return n
	case p.Unit == "$" || strings.HasPrefix(p.Unit, "$/"):
		if n[0] == '-' {
			return "-$" + n[1:] + sym[1:]
		}
		return "$" + n + sym[1:]
	case p.Unit == "R" && p.Value >= 0:
		return "R-" + n
	case p.Unit == "bar":
		return "#" + n
	case p.Unit == "W":
		return "W" + n
	case p.Unit == "deg":
		return n + sym
	case n == "1":
		if k, ok := KindOf(p.Unit); ok && (k == Count || k == Time || k == Charge) {
			sym = singular(p.Unit)
		}
	}
	return n + " " + sym
}

// singular is the printed form of a unit of time, count or charge for the
// number 1.
func singular(unit string) string {
	if unit == "d" {
		return "day"
	}
	return unit
}

// Symbol is the printed form of a unit: "F" gives "°F", "yd3" gives "yd³",
// "d" gives "days". An unknown unit is returned as it is.
func Symbol(unit string) string {
	if u := resolve(unit); u != nil {
		return table().shown[u.symbol]
	}
	return unit
}

// shown makes the printed form of a unit: degree signs, exponents, micro.
func shown(u *unit) string {
	if u.show != "" {
		return u.show
	}
	var b strings.Builder
	s := u.symbol
	letter := func(i int) bool {
		return i >= 0 && i < len(s) && (s[i] >= 'a' && s[i] <= 'z' || s[i] >= 'A' && s[i] <= 'Z')
	}
	for i := range len(s) {
		switch c := s[i]; {
		case (c == 'F' || c == 'C') && !letter(i-1) && !letter(i+1):
			b.WriteString("°" + string(c))
		case c == '2' && letter(i-1):
			b.WriteString("²")
		case c == '3' && letter(i-1):
			b.WriteString("³")
		case c == 'u' && !letter(i-1) && (s[i+1] == 'm' || s[i+1] == 'g'):
			b.WriteString("µ")
		default:
			b.WriteByte(c)
		}
	}
	return b.String()
}

// shortest writes the value of q rounded as Print says.
func shortest(q Quantity, converted bool) string {
	v := q.Value
	kind, _ := KindOf(q.Unit)
	switch {
	case v == math.Trunc(v) && !converted,
		q.Unit == "in" && !converted && v*16 == math.Trunc(v*16) && math.Abs(v) < 1e4:
		return number(v)
	case strings.HasPrefix(q.Unit, "$") && math.Abs(v) >= 0.01:
		v = math.Round(v*100) / 100
		s := number(v)
		if i := strings.IndexByte(s, '.'); i >= 0 && len(s) == i+2 {
			s += "0"
		}
		return s
	case kind == Temperature && math.Abs(v) < 1000:
		return number(round(math.Round(v*10)/10, 3))
	}
	return number(round(v, 3))
}

// round gives v with n significant digits.
func round(v float64, n int) float64 {
	var buf [32]byte
	r, err := strconv.ParseFloat(string(strconv.AppendFloat(buf[:0], v, 'e', n-1, 64)), 64)
	if err != nil {
		return v
	}
	return r
}

// number writes v with commas between thousands and no trailing zeros; with
// an exponent where it is very large or very small. Zero has no sign.
func number(v float64) string {
	a := math.Abs(v)
	switch {
	case v == 0:
		return "0"
	case a >= 1e15 || a < 1e-6 || math.IsNaN(v):
		return strconv.FormatFloat(v, 'g', -1, 64)
	}
	s := strconv.FormatFloat(v, 'f', -1, 64)
	end := strings.IndexByte(s, '.')
	if end < 0 {
		end = len(s)
	}
	start := 0
	if s[0] == '-' {
		start = 1
	}
	for i := end - 3; i > start; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}
