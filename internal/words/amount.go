package words

import (
	"slices"

	"hearsay/internal/quantity"
)

// quantityAt reads a number with its unit, or a bare number.
func (r *reading) quantityAt(i int) (item, int) {
	if it, j := r.prefixed(i); j > i {
		return it, j
	}
	if it, j := r.oneOf(i); j > i {
		return it, j
	}
	n, j := r.v.numberAt(r.ts, i)
	if j == i {
		return r.unitAndHalf(i)
	}
	if it, k := r.decade(n, i, j); k > j {
		return it, k
	}
	if t := text(r.ts, j); t == "cents" || t == "cent" || t == "¢" {
		n.low, n.high = n.low/100, n.high/100
		if per, k := r.v.perUnit(r.ts, j+1, []string{"$"}); k > j+1 {
			return item{kind: aQuantity, num: n, units: per}, k
		}
		return item{kind: aQuantity, num: n, units: []string{"$"}}, j + 1
	}
	if k := r.eachYard(j); k > j && !n.part {
		return item{kind: aQuantity, num: n, units: []string{"lb/yd3"}}, k
	}
	if k := r.eachHour(j); k > j && n.low >= 2 {
		return item{kind: aQuantity, num: n, units: []string{"yd3/h"}}, k
	}
	units, k := r.unitAfter(j)
	if k == j {
		if r.label(i, j) {
			return item{kind: aWord, text: labelStem, stem: labelStem, filler: true}, j
		}
		if n.loose {
			return item{}, i
		}
		if it, l := r.below(n, j); l > j {
			return it, l
		}
		return item{kind: aQuantity, num: n}, j
	}
	if r.testAge(n, units, k) || units[0] == "d" && n.single() && (text(r.ts, i-1) == "at" || text(r.ts, i-1) == "in") && (n.low == 28 && r.strengthBefore(i-2) || r.strengthAfter(k)) {
		return item{kind: aWord, text: "test-age", stem: testAge(n.low)}, k
	}
	return r.compound(item{kind: aQuantity, num: n, units: units}, k)
}

// unitAndHalf reads "inch and a half" and "hour and a half", whose one is left out.
func (r *reading) unitAndHalf(i int) (item, int) {
	units, j := r.v.plainUnit(r.ts, i)
	if j == i || !r.v.countable[units[0]] || r.ts[i].text == "in" || r.ts[i].text == "h" {
		return item{}, i
	}
	f, k := r.v.andFraction(r.ts, j)
	if k == j {
		return item{}, i
	}
	return item{kind: aQuantity, num: number{low: 1 + f, high: 1 + f, part: true, spelled: true}, units: units}, k
}

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

// unitAfter reads the unit after a number, over "of an" in "three quarters of an inch" and "a" in "half a yard".
func (r *reading) unitAfter(j int) ([]string, int) {
	if t := text(r.ts, j-1); (t == "half" || t == "quarter") && (text(r.ts, j) == "a" || text(r.ts, j) == "an") {
		j++
	}
	if units, k := r.v.unitAt(r.ts, j); k > j {
		return units, k
	}
	for _, skip := range [][]string{{"of", "an"}, {"of", "a"}, {"of"}, {"full"}, {"whole"}, {"good"}, {"more"}, {"straight"}, {"solid"}, {"extra"}, {"or", "so"}} {
		at := j
		for _, w := range skip {
			if text(r.ts, at) != w {
				at = -1
				break
			}
			at++
		}
		if at < 0 {
			continue
		}
		if units, k := r.v.unitAt(r.ts, at); k > at {
			return units, k
		}
	}
	return nil, j
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
	if k == j || text(r.ts, i) == "the" && !adjective || r.often(i) {
		return item{}, i
	}
	if u := units[0]; !r.v.countable[u] {
		return item{}, i
	}
	return r.compound(item{kind: aQuantity, num: number{low: 1, high: 1, spelled: true}, units: units}, k)
}

// often says whether "a day" at token i tells how often: "twice a day", "once or twice a day".
func (r *reading) often(i int) bool {
	switch text(r.ts, i-1) {
	case "twice", "once", "times", "time", "couple":
		return true
	}
	return false
}

// compound adds what follows a quantity and belongs to it: the inches after feet, the minutes after hours, "and a half".
func (r *reading) compound(it item, j int) (item, int) {
	if f, k := r.v.andFraction(r.ts, j); k > j && it.num.single() {
		if _, l := r.v.unitAt(r.ts, k); l == k { // "an hour and a half", but not "an inch and a half inch"
			it.num.low += f
			it.num.high, it.num.part = it.num.low, true
			return it, k
		}
	}
	if lower, ok := smaller[it.units[0]]; ok && it.num.single() {
		at := j
		if text(r.ts, at) == "and" && lower == "min" || text(r.ts, at) == "-" {
			at++
		}
		n, k := r.v.oneNumber(r.ts, at)
		if k > at {
			units, l := r.v.unitAt(r.ts, k)
			if l > k && units[0] == lower {
				q, err := quantity.Quantity{Value: n.low, Unit: lower}.In(it.units[0])
				if err == nil {
					it.num.low += q.Value
					it.num.high = it.num.low
					return it, l
				}
			}
		}
	}
	if n, k := r.v.rangeEnd(r.ts, j, it); k > j {
		it.num.high = n
		return it, k
	}
	return it, j
}

// smaller is the unit that may follow a larger one in one quantity.
var smaller = map[string]string{"ft": "in", "h": "min", "d": "h", "m": "cm"}

// rangeEnd reads the end of a range whose beginning has its unit: "3 in to 4 in".
func (v *vocabulary) rangeEnd(ts []token, i int, it item) (float64, int) {
	if t := text(ts, i); t != "to" && t != "-" && t != "or" && t != "–" || !it.num.single() {
		return 0, i
	}
	n, j := v.oneNumber(ts, i+1)
	if j == i+1 || n.low <= it.num.low || !rangeLike(it.num, n) {
		return 0, i
	}
	units, k := v.unitAt(ts, j)
	if k == j || !slices.Equal(units, it.units) {
		return 0, i
	}
	return n.low, k
}

// decade reads "in the 60s", "mid 50s": temperatures by the ten.
func (r *reading) decade(n number, i, j int) (item, int) {
	if !(text(r.ts, j) == "s" && r.ts[j].glued || text(r.ts, j) == "'" && text(r.ts, j+1) == "s") || n.low < 10 || n.low > 110 {
		return item{}, j
	}
	n.high = n.low + 9
	switch text(r.ts, i-1) {
	case "low", "lower":
		n.high = n.low + 3
	case "mid", "middle", "-":
		n.low, n.high = n.low+4, n.low+6
	case "high", "upper":
		n.low = n.low + 6
	}
	k := j + 1
	if text(r.ts, j) == "'" {
		k++
	}
	return item{kind: aQuantity, num: n, units: []string{"deg?"}}, k
}

// below reads "15 below" and "20 below zero" as temperatures.
func (r *reading) below(n number, j int) (item, int) {
	if text(r.ts, j) != "below" || !n.single() {
		return item{}, j
	}
	k := j + 1
	switch text(r.ts, k) {
	case "zero":
		k++
	case "the", "a", "grade", "slab", "it", "top", "that", "freezing", "surface", "spec", "what", "limit", "this":
		return item{}, j
	}
	n.low, n.high = -n.low, -n.high
	return item{kind: aQuantity, num: n, units: []string{"deg?"}}, k
}

// labelStem stands for the number that names a truck or a bay.
const labelStem = "LABEL"

// label says whether the number of tokens i to j only names something: "truck 3", "load two", "bay 4".
func (r *reading) label(i, j int) bool {
	prev := text(r.ts, i-1)
	if prev == "#" || prev == "number" || prev == "no" || prev == "." {
		prev = text(r.ts, i-2)
	}
	short := len(r.ts[i].text) <= 2 || r.ts[i].letters
	return r.v.labels[prev] && j == i+1 && short || r.labelList(i, j)
}

// labelList goes on with a list of labels: the "two" of "trucks one and two".
func (r *reading) labelList(i, j int) bool {
	prev := text(r.ts, i-1)
	if prev == "of" && i >= 3 && r.v.labels[text(r.ts, i-3)] && j == i+1 && r.ts[i-2].digits {
		return true // "load 4 of 7"
	}
	if prev != "and" && prev != "," && prev != "or" || i < 3 || j != i+1 || !r.v.labels[text(r.ts, i-3)] {
		return false
	}
	_, k := r.v.oneNumber(r.ts, i-2)
	return k == i-1 && text(r.ts, i-3) != text(r.ts, j)
}

// testAge says whether "28 day" names the age of a strength test and not a time that something takes.
func (r *reading) testAge(n number, units []string, k int) bool {
	if units[0] != "d" || !n.single() {
		return false
	}
	if k < len(r.ts) && r.ts[k].digits && len(r.ts[k].text) == 4 {
		return true // "7-day 3,150"
	}
	return r.v.testWords[text(r.ts, k)] || text(r.ts, k) == "cylinder" || r.v.testWords[text(r.ts, k+1)] && text(r.ts, k) != "and" && text(r.ts, k) != ","
}

// strengthAfter says whether a strength follows shortly: "cylinders at 7 days are 4,100".
func (r *reading) strengthAfter(k int) bool {
	for i := k; i < k+3 && i < len(r.ts); i++ {
		if r.ts[i].digits && len(r.ts[i].text) == 4 {
			return true
		}
	}
	return false
}

// strengthBefore says whether token i ends a strength: "4000 psi at 28 days".
func (r *reading) strengthBefore(i int) bool {
	t := text(r.ts, i)
	return t == "psi" || t == "mpa" || i >= 0 && r.ts[i].digits && len(t) == 4
}

func testAge(days float64) string {
	switch days {
	case 7:
		return "7day"
	case 28:
		return "28day"
	}
	return "testday"
}
