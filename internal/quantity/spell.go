package quantity

// spell takes the spelling of a unit apart. ok is false where s holds
// anything but the words, strokes and exponents of a unit.
func (t *tables) spell(s string) (k key, ok bool) {
	brackets := 0
	for i := 0; i < len(s); {
		r, n := runeAt(s, i)
		switch {
		case isLetter(r):
			w := word(s[i:])
			n = len(w)
			if !t.word(&k, w, s[i+n:]) {
				return k, false
			}
		case r == ' ' || r == '.' || r == '·' || r == '⋅' || r == '*' || r == '-':
			if r != ' ' && r != '.' && i+n == len(s) {
				return k, false
			}
		case r == '(':
			brackets++
		case r == ')':
			if brackets--; brackets < 0 {
				return k, false
			}
		case r == '/' || r == '⁄':
			if !k.stroke() {
				return k, false
			}
		case r >= '0' && r <= '9':
			n = digits(s[i:])
			if i > 0 && n == 1 && s[i-1] != ' ' && k.power(s[i]) {
				break
			}
			if k.mul = multiplier(s[i : i+n]); k.mul == "" {
				return k, false
			}
			k.open = true
		case r == '^':
			if n = 2; i+1 == len(s) || !k.power(s[i+1]) {
				return k, false
			}
		case r == '²' || r == '³':
			e := byte('2')
			if r == '³' {
				e = '3'
			}
			if !k.power(e) {
				return k, false
			}
		case r == '°' || r == 'º':
			if !degree(s[i+n:]) && !k.add("deg") {
				return k, false
			}
		case r == '%' || r == '$':
			if !k.add(s[i : i+n]) {
				return k, false
			}
		case r == '\'' || r == '′' || r == '’':
			if !k.add("ft") {
				return k, false
			}
		case r == '"' || r == '″' || r == '”':
			if !k.add("in") {
				return k, false
			}
		default:
			return k, false
		}
		i += n
	}
	return k, k.nnum > 0 && !k.open && brackets == 0
}

// word reads one word of a unit; rest is what follows it.
func (t *tables) word(k *key, w, rest string) bool {
	var buf [24]byte
	if len(w) > len(buf) {
		return false
	}
	if a, ok := t.atoms[w]; ok {
		if a == "deg" && degree(rest) {
			return true
		}
		return k.add(a)
	}
	low := buf[:len(w)]
	for i := range low {
		low[i] = w[i]
		if w[i] >= 'A' && w[i] <= 'Z' {
			low[i] += 'a' - 'A'
		}
	}
	switch string(low) {
	case "per":
		return k.stroke()
	case "square", "sq":
		k.exp, k.open = '2', true
	case "cubic", "cu":
		k.exp, k.open = '3', true
	case "squared":
		return k.power('2')
	case "cubed":
		return k.power('3')
	case "us":
		k.open = true
	case "fl", "fluid":
		k.qualifier, k.open = "fl", true
	case "imp", "imperial":
		k.qualifier, k.open = "imp", true
	case "metric":
		k.qualifier, k.open = "metric", true
	case "short":
		k.qualifier, k.open = "short", true
	case "long":
		k.qualifier, k.open = "long", true
	case "diff", "difference":
		return k.difference()
	default:
		a, ok := t.atoms[string(low)]
		if ok && a == "deg" && degree(rest) {
			return true
		}
		return ok && k.add(a)
	}
	return true
}

// stroke begins the lower part of the unit, or its next factor.
func (k *key) stroke() bool {
	if k.open || k.nnum == 0 {
		return false
	}
	k.below, k.open = true, true
	return true
}

// difference turns the temperature read last into a temperature difference.
func (k *key) difference() bool {
	a := k.last()
	if a == nil {
		return false
	}
	switch a.word {
	case "F":
		a.word = "dF"
	case "C", "K":
		a.word = "dC"
	default:
		return false
	}
	return true
}

// degree tells whether s goes on with the F or C of a temperature, so that
// the degree sign before it says nothing more.
func degree(s string) bool {
	for len(s) > 0 && (s[0] == ' ' || s[0] == '.') {
		s = s[1:]
	}
	switch word(s) {
	case "F", "C", "f", "c", "K", "Fahrenheit", "Celsius", "fahrenheit", "celsius", "Kelvin", "kelvin":
		return true
	}
	return false
}

// digits counts the bytes of the whole number, commas included, at the start
// of s.
func digits(s string) int {
	n := 0
	for n < len(s) && (s[n] >= '0' && s[n] <= '9' || s[n] == ',') {
		n++
	}
	return n
}

// multiplier gives the multipliers that units are written with, "" for any
// other number.
func multiplier(s string) string {
	switch s {
	case "24", "100", "1000":
		return s
	case "1,000":
		return "1000"
	}
	return ""
}
