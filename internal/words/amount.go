package words

// quantityAt reads a number with its unit, or a bare number.
func (r *reading) quantityAt(i int) (item, int) {
	if it, j := r.prefixed(i); j > i {
		return it, j
	}
	if it, j := r.spelledDecade(i); j > i && (text(r.ts, i-1) != "the" || text(r.ts, i-2) == "in" || text(r.ts, i-3) == "in") {
		return it, j
	}
	if it, j := r.dayNumber(i); j > i {
		return it, j
	}
	if it, j := r.metricBar(i); j > i {
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
	if k := r.eachGallon(j); k > j && n.low >= 50 {
		return item{kind: aQuantity, num: n, units: []string{"ft2/gal"}}, k
	}
	if k := r.eachHour(j); k > j && n.low >= 2 {
		return item{kind: aQuantity, num: n, units: []string{"yd3/h"}}, k
	}
	if t := text(r.ts, j-1); t == "couple" && text(r.ts, j) == "of" {
		j++ // "a couple of hours"
	}
	if it, k := r.packs(n, j); k > j {
		return it, k
	}
	units, k := r.unitAfter(j)
	if k == j {
		if t, ok := r.cementType(i, j); ok {
			return item{kind: aWord, text: t, stem: r.v.stem(t)}, j
		}
		if r.label(i, j) {
			return item{kind: aWord, text: labelStem, stem: labelStem, filler: true}, j
		}
		if n.loose && !(text(r.ts, j-1) == "one" && (text(r.ts, j) == "deep" || text(r.ts, j) == "thick")) {
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

// unitAfter reads the unit after a number, over "of an" in "three quarters of an inch" and "a" in "half a yard".
func (r *reading) unitAfter(j int) ([]string, int) {
	from := j
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
	return nil, from
}

// dayNumber reads "at day three" and "Day six we strip": the age in days.
func (r *reading) dayNumber(i int) (item, int) {
	if text(r.ts, i) != "day" || i > 0 && !r.ts[i].line && !r.ts[i].capital && !before[text(r.ts, i-1)] {
		return item{}, i
	}
	n, j := r.v.oneNumber(r.ts, i+1)
	if j == i+1 || n.part || n.low < 1 || n.low > 60 {
		return item{}, i
	}
	if _, k := r.v.unitAt(r.ts, j); k > j {
		return item{}, i
	}
	return item{kind: aQuantity, num: n, units: []string{"d"}}, j
}

// before are the words and signs that a day told by its number follows.
var before = set([]string{"at", "on", "by", "after", "till", "until", "before", ",", ".", ";", "-"})
