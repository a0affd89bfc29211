package words

import "math"

// trucks reads the slumps and airs of several trucks that are told one by one: "Truck 1: four and a quarter, 6.2. Truck 2: six, 9.1".
func (s *solver) trucks() {
	var slumps, airs []int
	for q := range s.items {
		if s.items[q].stem != labelStem || s.items[q].kind != aWord {
			continue
		}
		run := s.after(q)
		if len(run) < 2 || !s.slumpLike(run[0]) || !s.airLike(run[1]) {
			continue
		}
		slumps, airs = append(slumps, run[0]), append(airs, run[1])
	}
	if len(slumps) < 2 || s.has("load.slump") || s.has("load.air") {
		return
	}
	for _, q := range append(append([]int{}, slumps...), airs...) {
		s.used[q] = true
	}
	s.state("load.slump", plainNumber(s.items[slumps[0]].num.low)+" in", s.words(slumps[0], slumps[0]), "", s.items[slumps[0]].start)
	var others []any
	for _, q := range slumps[1:] {
		others = append(others, plainNumber(s.items[q].num.low)+" in")
	}
	s.state("load.other_slumps", others, s.words(slumps[1], slumps[len(slumps)-1]), "", s.items[slumps[1]].start)
	worst, mean := airs[0], 0.0
	for _, q := range airs {
		mean += s.items[q].num.low / float64(len(airs))
	}
	for _, q := range airs {
		if math.Abs(s.items[q].num.low-mean) > math.Abs(s.items[worst].num.low-mean) {
			worst = q
		}
	}
	s.state("load.air", plainNumber(s.items[worst].num.low)+" %", s.words(worst, worst), "of the airs of several trucks the one that stands out is taken", s.items[worst].start)
}

// after gives the bare numbers that follow item q, with nothing but pauses and small words between, to the end of its sentence.
func (s *solver) after(q int) []int {
	var run []int
	for i := q + 1; i < len(s.items) && i < q+9; i++ {
		it := &s.items[i]
		switch {
		case it.kind == aQuantity:
			run = append(run, i)
		case it.kind == aBreak && it.pause < pauseSentence, it.kind == aWord && (it.filler || it.text == "air" || it.text == "slump" || it.text == "and" || it.text == "percent" || it.text == "inch"):
		default:
			return run
		}
	}
	return run
}

func (s *solver) slumpLike(q int) bool {
	it := &s.items[q]
	return it.num.single() && it.num.low <= 11 && (len(it.units) == 0 || it.units[0] == "in") && !s.used[q]
}

func (s *solver) airLike(q int) bool {
	it := &s.items[q]
	return it.num.single() && it.num.low >= 1 && it.num.low <= 12 && (len(it.units) > 0 && it.units[0] == "%" || len(it.units) == 0 && it.num.decimal) && !s.used[q]
}

// truckLists reads the bare temperature in a list of what was measured at a truck: "air 5.8, 71 degrees, thirty-eight minutes old".
func (s *solver) truckLists() {
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || s.has("load.temperature") || len(it.units) == 0 || it.units[0] != "deg?" && it.units[0] != "F" && it.units[0] != "C" || !it.num.single() {
			continue
		}
		from, to := s.sentence(q)
		tested, weather := false, false
		for i := from; i < to; i++ {
			switch t := &s.items[i]; {
			case t.kind == aQuantity && i != q && len(t.units) > 0 && t.units[0] == "min":
				tested = tested || s.wordAt(i+1) == "old"
			case t.kind == aWord && (t.stem == "slump" || t.text == "cone" || t.text == "air" && i+1 < len(s.items) && s.items[i+1].kind == aQuantity):
				tested = true
			case t.kind == aWord && truckless[t.text], t.kind == aQuantity && len(t.units) > 0 && t.units[0] == "mph":
				weather = true
			}
		}
		beside := q+1 < len(s.items) && s.items[q+1].kind == aWord && !s.items[q+1].filler
		if !tested || weather || beside || !s.heads(q) {
			continue
		}
		unit := it.units[0]
		if unit == "deg?" {
			unit = s.degrees
		}
		if v, ok := convert(it.num, unit, "F"); !ok || v.low < 35 || v.low > 115 {
			continue
		}
		s.used[q] = true
		s.state("load.temperature", plainNumber(it.num.low)+" "+unit, s.words(q, q), "", it.start)
	}
}

// truckless are words that make a temperature one of something else than the load.
var truckless = set([]string{"outside", "out", "sun", "sunny", "humidity", "rh", "wind", "tonight", "low", "high", "ground", "slab", "water", "cylinders", "cylinder", "box", "tent", "ambient", "weather", "sky", "cloudy", "grade", "base",
	"base", "subgrade", "stone", "sand", "forms", "day", "afternoon", "morning", "overnight", "forecast"})

// sentence gives the items of the sentence that item q stands in.
func (s *solver) sentence(q int) (from, to int) {
	from, to = q, q
	for from > 0 && !(s.items[from-1].kind == aBreak && s.items[from-1].pause >= pauseSentence) {
		from--
	}
	for to < len(s.items) && !(s.items[to].kind == aBreak && s.items[to].pause >= pauseSentence) {
		to++
	}
	return from, to
}

// remaining gives what is left with its unit to the only fact of its kind that is spoken of in its sentence or the one before.
func (s *solver) remaining() {
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || len(it.units) == 0 || !it.num.single() {
			continue
		}
		from, to := s.sentence(q)
		if from > 1 {
			from, _ = s.sentence(from - 2)
		}
		var one *fit
		several := false
		for _, f := range s.candidates(q) {
			fact := s.facts[f.fact]
			if _, taken := s.stated[fact.Path]; taken || !onlyOnes[fact.Path] || f.near == nil || f.near.start < from || f.near.end > to {
				continue
			}
			if one != nil {
				several = true
				break
			}
			one = &fit{q: f.q, fact: f.fact, points: f.points, unit: f.unit, near: f.near}
		}
		if one == nil || several {
			continue
		}
		fact := s.facts[one.fact]
		if v, ok := convert(it.num, one.unit, fact.Unit); !ok || fact.Usual != nil && !fact.Usual.Contains(v.low) {
			continue
		}
		value, note := s.written(*one)
		s.used[q] = true
		s.state(fact.Path, value, s.words(q, q), note, it.start)
	}
}

// onlyOnes are the facts that may be told by a number with its unit alone once their subject is on.
var onlyOnes = set([]string{"cure.days", "protection.days", "load.age", "floor.days_to_covering", "joints.filled_after", "strength.action_after", "joints.depth", "steel.cover", "joints.cut_after", "cure.delay", "load.gap", "floor.fill_depth"})

// boxRange takes "low 66, high 74" of a curing box as one range.
func (r *reading) boxRange() {
	for q := 1; q < len(r.items); q++ {
		low := &r.items[q]
		if low.kind != aQuantity || r.items[q-1].text != "low" || !low.num.single() {
			continue
		}
		for i := q + 1; i < len(r.items) && i < q+5; i++ {
			high := &r.items[i]
			if high.kind == aQuantity {
				if r.items[i-1].text == "high" && high.num.single() && high.num.low > low.num.low && high.num.low < low.num.low+40 && r.boxed(q) {
					low.num.high, low.end = high.num.low, high.end
					if len(high.units) > 0 {
						low.units = high.units
					}
					for k := q + 1; k <= i; k++ {
						at := r.items[k].start
						r.items[k] = item{kind: aWord, text: "range", filler: true, start: at, end: at, negBy: -1}
					}
					r.items[q-1].text, r.items[q-1].stem, r.items[q-1].filler = "range", "range", true
				}
				break
			}
		}
	}
}

// boxed says whether the sentence of item q, up to it, speaks of cylinders or their box.
func (r *reading) boxed(q int) bool {
	for i := q - 1; i >= 0 && i > q-25; i-- {
		switch r.items[i].text {
		case "box", "cylinders", "cylinder", "cooler", "specimens":
			return true
		}
	}
	return false
}
