package words

import (
	"slices"

	"hearsay/internal/quantity"
)

// unitAndHalf reads "inch and a half" and "hour and a half", whose one is left out.
func (r *reading) unitAndHalf(i int) (item, int) {
	units, j := r.v.plainUnit(r.ts, i)
	if j == i+1 && r.ts[i].text == "inch" && stones[text(r.ts, j)] {
		return item{kind: aQuantity, num: number{low: 1, high: 1, spelled: true}, units: units}, j // "inch stone"
	}
	if j == i || !r.v.countable[units[0]] || r.ts[i].text == "in" || r.ts[i].text == "h" {
		return item{}, i
	}
	f, k := r.v.andFraction(r.ts, j)
	if k == j {
		return item{}, i
	}
	return item{kind: aQuantity, num: number{low: 1 + f, high: 1 + f, part: true, spelled: true}, units: units}, k
}

// compound adds what follows a quantity and belongs to it: the inches after feet, the minutes after hours, "and a half".
func (r *reading) compound(it item, j int) (item, int) {
	if f, k := r.v.andFraction(r.ts, j); k > j && it.num.single() {
		if _, l := r.v.unitAt(r.ts, k); l == k { // "an hour and a half", but not "an inch and a half inch"
			it.num.low += f
			it.num.high, it.num.part = it.num.low, true
			if per, l := r.v.perUnit(r.ts, k, it.units[:1]); l > k {
				it.units, k = per, l // "a pound and a half a yard"
			}
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
	if it.units[0] == "h" && it.num.single() && !it.num.part {
		if n, k := r.v.oneNumber(r.ts, j); k > j && minutesAfter(r.ts, j, n) {
			if _, l := r.v.unitAt(r.ts, k); l == k { // "3 h 40 at 90 F"
				it.num.low += n.low / 60
				it.num.high, it.num.part = it.num.low, true
				return it, k
			}
		}
	}
	if it.units[0] == "ft" && it.num.single() && !it.num.part {
		if n, k := r.v.oneNumber(r.ts, j); k > j && n.low < 12 && n.low > 0 && measured[text(r.ts, k)] {
			it.num.low += n.low / 12 // "eight foot two high"
			it.num.high, it.num.part = it.num.low, true
			return it, k
		}
	}
	if n, k := r.v.rangeEnd(r.ts, j, it); k > j {
		it.num.high = n
		return it, k
	}
	return it, j
}

// minutesAfter says whether the number at token i, right after hours, is of minutes without their unit: two digits below sixty,
// and nothing after it that it counts.
func minutesAfter(ts []token, i int, n number) bool {
	if n.part || n.spelled || n.low < 10 || n.low >= 60 {
		return false
	}
	next := text(ts, i+1)
	return next == "" || afterMinutes[next]
}

var afterMinutes = set([]string{".", ",", ";", ":", "!", "?", "at", "after", "in", "since", "from", "between", "before", "later", "until", "till", "and", "old", "gap", "on", "with"})

// measured are the words after a length that say what it is of.
var measured = set([]string{"high", "tall", "wide", "long", "deep", "across"})

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
	it := r.tens(n, i)
	k := j + 1
	if text(r.ts, j) == "'" {
		k++
	}
	return it, k
}

// spelledDecade reads the same in words: "nights in the forties", "upper twenties".
func (r *reading) spelledDecade(i int) (item, int) {
	n, ok := decades[text(r.ts, i)]
	if !ok {
		return item{}, i
	}
	if n == 10 {
		return item{kind: aQuantity, num: number{low: 13, high: 19, spelled: true}, units: []string{"deg?"}}, i + 1
	}
	it := r.tens(number{low: n, spelled: true}, i)
	return it, i + 1
}

var decades = map[string]float64{"teens": 10, "twenties": 20, "thirties": 30, "forties": 40, "fifties": 50, "sixties": 60, "seventies": 70, "eighties": 80, "nineties": 90}

// tens gives the temperatures of a ten that begins with n, with the word before token i.
func (r *reading) tens(n number, i int) item {
	n.high = n.low + 9
	switch text(r.ts, i-1) {
	case "low", "lower":
		n.high = n.low + 3
	case "mid", "middle", "-":
		n.low, n.high = n.low+4, n.low+6
	case "high", "upper":
		n.low = n.low + 6
	}
	return item{kind: aQuantity, num: n, units: []string{"deg?"}}
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

// stones are what an inch alone before them is the size of.
var stones = set([]string{"stone", "rock", "aggregate", "gravel", "agg"})
