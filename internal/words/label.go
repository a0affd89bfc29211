package words

// labelStem stands for the number that names a truck or a bay.
const labelStem = "LABEL"

// label says whether the number of tokens i to j only names something: "truck 3", "load two", "bay 4".
func (r *reading) label(i, j int) bool {
	prev := text(r.ts, i-1)
	if prev == "#" || prev == "number" || prev == "no" || prev == "." {
		prev = text(r.ts, i-2)
	}
	short := len(r.ts[i].text) <= 2 || r.ts[i].letters || (prev == "truck" || prev == "mixer") && !r.ts[i].glued
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
	if (n.low == 28 || n.low == 7 || n.low == 56) && k >= 2 && r.ts[k-1].text == "day" && r.ts[k-2].text == "-" && r.strengthAfter(k) {
		return true // "28-day came 2,850"
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
