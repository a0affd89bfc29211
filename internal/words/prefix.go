package words

import "strings"

// eachYard is where "a yard" and "per yard" after a bare number end: so many pounds are meant.
func (r *reading) eachYard(j int) int {
	if t := text(r.ts, j); t != "a" && t != "per" && t != "to" {
		return j
	}
	at := skipWord(r.ts, j+1, "the", "cubic")
	if t := text(r.ts, at); t == "yard" || t == "yd" {
		return at + 1
	}
	return j
}

// eachGallon is where "a gallon" and "to the gallon" after a bare number end: so many square feet are meant.
func (r *reading) eachGallon(j int) int {
	if t := text(r.ts, j); t != "a" && t != "per" && t != "to" {
		return j
	}
	at := skipWord(r.ts, j+1, "the", "a")
	if t := text(r.ts, at); t == "gallon" || t == "gal" {
		return at + 1
	}
	return j
}

// eachHour is where "an hour" after a bare number ends: so many yards are meant.
func (r *reading) eachHour(j int) int {
	if t := text(r.ts, j); t != "an" && t != "per" {
		return j
	}
	if t := text(r.ts, j+1); t == "hour" || t == "hr" {
		return j + 2
	}
	return j
}

// prefixed reads what has its unit before the number: "#5", "No. 5", "R-10", "W2.9", "$150", "grade 60".
func (r *reading) prefixed(i int) (item, int) {
	units, ok := r.v.prefixes[r.ts[i].text]
	if !ok {
		return item{}, i
	}
	j := i + 1
	for text(r.ts, j) == "." || text(r.ts, j) == "-" && r.ts[j].glued {
		j++
	}
	n, k := r.v.oneNumber(r.ts, j)
	if t := text(r.ts, j); k == j && strings.HasSuffix(t, "s") && units[0] == "bar" {
		if v, ok := r.v.numbers[strings.TrimSuffix(strings.TrimSuffix(t, "s"), "e")]; ok && v > 1 {
			n, k = number{low: v, high: v}, j+1 // "number fours"
		} else if v, ok := r.v.numbers[strings.TrimSuffix(t, "s")]; ok && v > 1 {
			n, k = number{low: v, high: v}, j+1
		}
	}
	if k == j || n.spelled && r.ts[i].text != "number" && r.ts[i].text != "grade" {
		return item{}, i
	}
	if r.ts[i].text == "$" {
		if per, l := r.v.perUnit(r.ts, k, units); l > k {
			return item{kind: aQuantity, num: n, units: per, glue: true}, l
		}
	}
	if _, l := r.v.unitAt(r.ts, k); l > k && r.ts[i].text != "$" {
		return item{}, i // "no 5 gallon pails"
	}
	return item{kind: aQuantity, num: n, units: units, glue: true}, k
}

// oneOf reads "an hour", "a full week", "a day and a half": a or an before a unit of which one is often said.
func (r *reading) oneOf(i int) (item, int) {
	if t := text(r.ts, i); t != "a" && t != "an" && t != "one" && t != "another" && t != "the" {
		return item{}, i
	}
	if n := len(r.items); n > 0 && r.items[n-1].kind == aQuantity && len(r.items[n-1].units) > 0 && r.items[n-1].end+1 >= r.ts[i].start && text(r.ts, i) == "a" {
		return item{}, i // "10 degrees a day"
	}
	j := i + 1
	adjective := false
	for r.v.whole[text(r.ts, j)] {
		adjective = true
		j++
	}
	units, k := r.v.unitAt(r.ts, j)
	if k == j || !r.ts[k-1].letters && text(r.ts, j) == "'" || text(r.ts, i) == "the" && !adjective || r.often(i) {
		return item{}, i
	}
	if u, _, _ := strings.Cut(units[0], "/"); !r.v.countable[u] {
		return item{}, i
	}
	return r.compound(item{kind: aQuantity, num: number{low: 1, high: 1, spelled: true}, units: units}, k)
}

// often says whether "a day" at token i tells how often: "twice a day", "once or twice a day".
func (r *reading) often(i int) bool {
	switch text(r.ts, i-1) {
	case "twice", "once", "times", "time", "couple", "not", "never", "without", "nary":
		return true
	}
	return false
}
