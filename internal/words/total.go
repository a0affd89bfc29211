package words

import (
	"fmt"

	"hearsay/internal/quantity"
)

// ingredients are the facts that a batch ticket totals for the load.
var ingredients = []string{"mix.cementitious", "mix.portland", "mix.fly_ash", "mix.slag", "mix.fine_aggregate", "mix.coarse_aggregate", "mix.water"}

// totals turns the pounds of an ingredient in the whole load ("cement 5,640 of that") into pounds in a yard, where only that makes sense.
func (s *solver) totals() {
	yards, ok := s.valueOf("load.volume", "yd3")
	if !ok || yards < 2 {
		return
	}
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || !it.num.single() || len(it.units) > 0 && it.units[0] != "lb" && it.units[0] != "kg" {
			continue
		}
		pounds := it.num.low
		if len(it.units) > 0 {
			v, err := quantity.Quantity{Value: it.num.low, Unit: it.units[0]}.In("lb")
			if err != nil {
				continue
			}
			pounds = v.Value
		}
		best, points := "", enough
		for _, path := range ingredients {
			fact := s.facts[s.byPath[path]]
			if s.has(path) || fact.Usual == nil || pounds <= fact.Usual.High*1.25 || !fact.Usual.Contains(pounds/yards) || fact.Usual.Low == 0 && pounds < 500 {
				continue
			}
			if p, _ := s.phrases(&fit{q: q, fact: s.byPath[path]}); p > points {
				best, points = path, p
			}
		}
		if best == "" {
			continue
		}
		s.used[q] = true
		each := plainNumber(round(pounds / yards))
		s.state(best, each+" lb/yd3", s.words(q, q), fmt.Sprintf("“%s” in the load of %s yd³ is taken as %s lb in a yard", s.words(q, q), plainNumber(yards), each), it.start)
	}
}

// sourcesOf are what brings chloride into concrete.
var sourcesOf = set([]string{"cement", "sand", "stone", "rock", "gravel", "aggregate", "aggregates", "water", "accelerator", "admixture", "admixtures", "reducer", "ash", "slag", "limestone"})

// chlorides adds up the chloride that several sources bring, where it is told for each: "0.03 from the cement, .05 from the sand".
func (s *solver) chlorides() {
	if s.has("mix.chloride") || !s.speaksOf("chlorid") {
		return
	}
	var found []int
	seen, sum := map[string]bool{}, 0.0
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || !it.num.decimal || !it.num.single() || it.num.low >= 1 || len(it.units) > 0 && it.units[0] != "%" {
			continue
		}
		source := s.sourceAt(q)
		if source == "" || seen[source] {
			continue
		}
		seen[source] = true
		sum += it.num.low
		found = append(found, q)
	}
	if len(found) < 2 {
		return
	}
	for _, q := range found {
		s.used[q] = true
	}
	total := plainNumber(round4(sum))
	a, b := found[0], found[len(found)-1]
	s.state("mix.chloride", total+" %", s.words(a, b), fmt.Sprintf("the chlorides of %d sources together are taken as %s %%", len(found), total), s.items[a].start)
}

// sourceAt is what the number at item q is said to come from: the first such word after it, before a pause or another number.
func (s *solver) sourceAt(q int) string {
	from := false
	for i := q + 1; i < len(s.items) && i < q+8 && s.items[i].kind == aWord; i++ {
		t := s.items[i].text
		from = from || t == "from" || t == "off" || t == "with" || t == "in" || t == "by"
		if from && sourcesOf[t] {
			return t
		}
	}
	for i := q - 1; i >= 0 && i > q-5 && s.items[i].kind == aWord; i-- {
		if sourcesOf[s.items[i].text] {
			return s.items[i].text
		}
		if !s.items[i].filler && !bringing[s.items[i].text] {
			break
		}
	}
	return ""
}

var bringing = set([]string{"brings", "adds", "gives", "carries", "contributes", "itself"})

// speaksOf says whether a word of this stem stands anywhere in the text.
func (s *solver) speaksOf(stem string) bool {
	for i := range s.items {
		if s.items[i].kind == aWord && s.items[i].stem == stem {
			return true
		}
	}
	return false
}

// shareOfStrength reads "75 percent of 4,000 psi" as what it comes to.
func (r *reading) shareOfStrength() {
	for q := range r.items {
		it := &r.items[q]
		if it.kind != aQuantity || len(it.units) == 0 || it.units[0] != "%" || !it.num.single() {
			continue
		}
		of := false
		for i := q + 1; i < len(r.items) && i < q+6; i++ {
			o := &r.items[i]
			if o.kind == aQuantity {
				if of && len(o.units) > 0 && (o.units[0] == "psi" || o.units[0] == "MPa") {
					share := it.num.low / 100
					it.num, it.units = number{low: share * o.num.low, high: share * o.num.low}, o.units[:1]
				}
				break
			}
			if o.kind != aWord {
				break
			}
			of = of || o.text == "of"
		}
	}
}

// leftOver reads "five of the nine yards are still in the drum" as what is out.
func (s *solver) leftOver() {
	if s.has("water.discharged") {
		return
	}
	for q := range s.items {
		left := &s.items[q]
		if left.kind != aQuantity || len(left.units) > 0 && left.units[0] != "yd3" && left.units[0] != "m3" || !left.num.single() {
			continue
		}
		k := q + 1
		for k < len(s.items) && k < q+4 && s.items[k].kind == aWord && s.items[k].filler {
			k++
		}
		if k == q+1 || k >= len(s.items) || s.items[k].kind != aQuantity || len(s.items[k].units) == 0 || s.items[k].units[0] != "yd3" && s.items[k].units[0] != "m3" || s.items[k].num.low <= left.num.low {
			continue
		}
		for i := k + 1; i < len(s.items) && i < k+5 && s.items[i].kind == aWord; i++ {
			if t := s.items[i].text; t == "still" || t == "left" || t == "remain" || t == "remaining" {
				s.used[q] = true
				s.state("water.discharged", plainNumber(s.items[k].num.low-left.num.low)+" "+s.items[k].units[0], s.words(q, i), "", left.start)
				return
			}
		}
	}
}
