package words

import (
	"slices"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// fit is how well a quantity fits a fact.
type fit struct {
	q, fact int // item and fact
	points  float64
	unit    string // the unit it is read in
	near    *match // the nearby phrase that speaks for it
	solid   bool   // more speaks for it than a phrase that could be said of much else
}

// score adds up the points; false when the fact is out of the question.
func (s *solver) score(f *fit) bool {
	fact := s.facts[f.fact]
	it := &s.items[f.q]
	if fact.in != nil && !fact.in[f.unit] {
		return false
	}
	if fact.needy && len(s.needBy[f.fact]) == 0 && (len(it.units) == 0 || !fact.needyBare) {
		return false // what it needs to be meant is nowhere spoken of
	}
	value, ok := convert(it.num, f.unit, fact.Unit)
	if !ok || fact.Possible != nil && !(fact.Possible.Contains(value.low) && fact.Possible.Contains(value.high)) {
		return false
	}
	if len(it.units) == 0 && fact.kind == quantity.Temperature && it.num.spelled && it.num.low > 0 && it.num.low < 10 && s.said(f) < pointsSaid {
		return false // "two salamanders"
	}
	if len(it.units) == 0 && (!s.plausible(fact, value) || fact.kind != quantity.Count && s.counts(f.q)) {
		return false
	}
	if f.unit == "bags/yd3" && it.num.high < fewestBags {
		return false // "two bags of portland"
	}
	said := s.said(f)
	near, apart := s.near(f)
	context := s.background(f)
	if len(it.units) == 0 && fact.kind == quantity.Temperature && f.unit == "F" && it.num.low > 0 && it.num.high < 10 && near < 1 && context == 0 {
		return false // "the cone came up to 4"
	}
	f.solid = near > 0 || context > 0 || said > pointsWeak
	if said <= pointsWeak && near == 0 && context == 0 {
		said *= 0.35
	}
	if fact.Kind == job.KindList && said == 0 {
		return false
	}
	if len(it.units) == 0 && (apart > bareReach || fact.bareSaid) && near > said {
		if said == 0 {
			near = 0
		}
		near = min(near, said)
	}
	f.points = max(said, near) + pointsBoth*min(said, near)
	if alone := s.alone(f); alone > f.points {
		f.points, f.solid = alone+pointsBoth*f.points, true
	}
	if f.points > 0 {
		f.points += pointsBoth * context
	}
	if paired := s.pairedTopic(f.q); fact.topic != "" && paired != "" {
		if fact.topic == paired {
			f.points, f.solid = max(f.points, pointsNear)+pointsPair, true
		} else if near < pointsNear {
			f.points -= pointsPair
		}
	}
	if f.points == 0 {
		return false
	}
	if fact.Usual != nil {
		if fact.Usual.Contains(value.low) {
			f.points += pointsUsual
		} else {
			f.points += pointsUnusual
		}
	}
	f.points -= s.never(f)
	return f.points > -5
}

// fewestBags is the fewest bags of cement that a yard of concrete has.
const fewestBags = 3

// counts says whether the bare number at item q counts things: "two loads", "six cylinders".
func (s *solver) counts(q int) bool {
	return s.items[q].num.high < 100 && q+1 < len(s.items) && s.items[q+1].kind == aWord && s.v.counted[s.items[q+1].text]
}

// percentKind is what a share in per cent measures.
var percentKind, _ = quantity.KindOf("%")

// plausible says whether a number said without its unit can be meant for the fact: near its usual range, and no fraction of a
// degree.
func (s *solver) plausible(fact *saying, n number) bool {
	if (fact.kind == quantity.Temperature || fact.kind == quantity.Count) && n.part {
		return false
	}
	if fact.kind == percentKind && n.part && !n.decimal && n.low < 1 {
		return false // no per cent is said as 3/4
	}
	small := fact.Unit == "%" && fact.Usual != nil && fact.Usual.High <= 2
	if fact.Unit == "%" && n.decimal && n.low > 0.2 && n.high < 0.9 && !small {
		return false // "20 mm rock at .45": a ratio
	}
	if n.decimal && n.low > 0.2 && n.high < 0.9 && fact.kind != quantity.Ratio && !small {
		return false // two decimals below 1 are a ratio
	}
	if fact.Usual == nil {
		return true
	}
	reach := 0.6 * (fact.Usual.High - fact.Usual.Low)
	return n.low >= min(0.7*fact.Usual.Low, fact.Usual.Low) && n.high <= fact.Usual.High+reach
}

// roleFit compares the role that the number plays with that of the fact.
func (s *solver) roleFit(f *fit) float64 {
	role, parts := s.roleOf[f.q], s.facts[f.fact].parts
	switch {
	case len(parts) == 0:
		return 0
	case role.index < 0:
		return s.rolePoints[parts[0]]
	case slices.Contains(parts, role.index):
		return role.points
	}
	return -pointsOtherRole * role.points
}

// convert gives the number in another unit.
func convert(n number, from, to string) (number, bool) {
	if from == to {
		return n, true
	}
	low, err := quantity.Quantity{Value: n.low, Unit: from}.In(to)
	if err != nil {
		return n, false
	}
	high := low
	if !n.single() {
		if high, err = (quantity.Quantity{Value: n.high, Unit: from}).In(to); err != nil {
			return n, false
		}
	}
	n.low, n.high = low.Value, high.Value
	return n, true
}
