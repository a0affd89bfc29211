package words

import "strings"

// sizeAt reads two or three lengths in one: "24x24", "12 by 30", "20' x 30' x 4 in", "6 m x 4 m".
func (r *reading) sizeAt(i int) (item, int) {
	var parts []part
	j := i
	for len(parts) < 3 {
		n, k := r.v.oneNumber(r.ts, j)
		if k == j || n.low <= 0 {
			break
		}
		p := part{num: n}
		units, l := r.v.unitAt(r.ts, k)
		if l > k && isLength(units[0]) {
			p.unit, k = units[0], l
			if p.unit == "yd3" {
				p.unit = "yd"
			}
			k = r.feetInches(&p, k)
		}
		parts = append(parts, p)
		j = k
		if text(r.ts, k) == "-" && text(r.ts, k+1) == "by" {
			k++
		}
		if text(r.ts, k) != "x" && text(r.ts, k) != "by" && text(r.ts, k) != "*" {
			break
		}
		k = skipHyphen(r.ts, k+1)
		if r.v.severalOf(text(r.ts, k)) {
			return item{kind: aWord, text: "lumber", stem: "lumber", filler: true}, k + 1 // "two-by-fours", "six-by-twelves"
		}
		if _, m := r.v.oneNumber(r.ts, k); m == k {
			break
		}
		j = k
	}
	if len(parts) < 2 {
		return item{}, i
	}
	if r.v.lumber[text(r.ts, j)] || r.v.lumber[text(r.ts, j+1)] && text(r.ts, j) != "," || text(r.ts, j) == "s" && r.ts[j].glued {
		return item{kind: aWord, text: "lumber", stem: "lumber", filler: true}, j
	}
	if n := len(parts); parts[n-1].unit != "" {
		for k := n - 2; k >= 0; k-- { // "12 by 30 feet": the unit said last holds for the bare ones before it
			if parts[k].unit == "" && (k < 2 && n == 2 || parts[n-1].unit == "ft") {
				parts[k].unit = parts[n-1].unit
			}
		}
	}
	return item{kind: aSize, parts: parts}, j
}

// feetInches adds the inches of 3'6" to the feet.
func (r *reading) feetInches(p *part, k int) int {
	if p.unit != "ft" {
		return k
	}
	at := skipHyphen(r.ts, k)
	n, j := r.v.oneNumber(r.ts, at)
	if j == at {
		return k
	}
	units, l := r.v.unitAt(r.ts, j)
	if l == j || units[0] != "in" {
		return k
	}
	p.num.low += n.low / 12
	p.num.high = p.num.low
	return l
}

func isLength(unit string) bool {
	switch unit {
	case "in", "ft", "mm", "cm", "m", "yd", "yd3", "m3":
		return true
	}
	return false
}

// severalOf says whether the word is a number in the plural: "fours", "twelves".
func (v *vocabulary) severalOf(word string) bool {
	one, ok := strings.CutSuffix(word, "s")
	if !ok {
		return false
	}
	_, plain := v.numbers[one]
	_, es := v.numbers[strings.TrimSuffix(one, "e")]
	return plain || es && strings.HasSuffix(one, "e")
}
