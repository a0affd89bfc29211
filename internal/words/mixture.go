package words

import (
	"fmt"
	"strings"
)

// shares turns "20 percent fly ash" into pounds where the whole is said, and takes it as the share it is where it is not.
func (s *solver) shares() {
	total, ok := s.valueOf("mix.cementitious", "lb/yd3")
	sum := 0.0
	for k := range s.shareHit {
		m := &s.shareHit[k]
		fact := s.facts[m.use.target]
		if s.has(fact.Path) || s.has(fact.Path+"_share") {
			continue
		}
		share := s.items[m.at].num.low / 100
		if !ok {
			s.state(fact.Path+"_share", plainNumber(round(100*share))+" %", s.words(m.start, m.end-1), "", s.items[m.start].start)
			continue
		}
		sum += share
		s.state(fact.Path, plainNumber(round(total*share))+" lb/yd3", s.words(m.start, m.end-1), "", s.items[m.start].start)
	}
	if sum > 0 && sum < 1 && !s.has("mix.portland") {
		i := s.stated["mix.cementitious"]
		s.state("mix.portland", plainNumber(round(total*(1-sum)))+" lb/yd3", s.out.Facts[i].Text, "", s.out.Facts[i].at)
	}
}

func round(v float64) float64 { return float64(int(v*100+0.5)) / 100 }

// cement takes "500 of cement and 100 of fly ash" as portland cement beside the others, and cement alone as all there is.
func (s *solver) cement() {
	others := false
	for _, path := range []string{"mix.fly_ash", "mix.slag", "mix.silica_fume"} {
		v, ok := s.valueOf(path, "lb/yd3")
		others = others || ok && v > 0
	}
	i, whole := s.stated["mix.cementitious"]
	switch {
	case others && whole && !s.has("mix.portland") && !s.inclusive(s.out.Facts[i].Text):
		s.rename("mix.cementitious", "mix.portland")
	case !others && !whole && s.has("mix.portland"):
		s.rename("mix.portland", "mix.cementitious")
	}
}

// inclusive says whether the words mean all cementitious material together.
func (s *solver) inclusive(text string) bool {
	for _, w := range []string{"cementitious", "binder", "total", "powder", "all in", "altogether", "sack", "bag"} {
		if strings.Contains(strings.ToLower(text), w) {
			return true
		}
	}
	return false
}

func (s *solver) rename(from, to string) {
	i := s.stated[from]
	s.out.Facts[i].Path = to
	delete(s.stated, from)
	s.stated[to] = i
}

// perYard turns gallons added to each yard into gallons for the load.
func (s *solver) perYard() {
	if s.has("water.added") {
		return
	}
	yards, ok := s.valueOf("load.volume", "yd3")
	fact := s.byPath["water.added"]
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || len(it.units) == 0 || it.units[0] != "gal/yd3" && it.units[0] != "L/m3" {
			continue
		}
		f := fit{q: q, fact: fact, unit: "gal"}
		if p, _ := s.phrases(&f); p < enough || !ok || !s.addedThere(q) && (strings.Contains(s.words(q, q), "water") || s.said(&fit{q: q, fact: s.byPath["mix.water"]}) > 0) {
			continue
		}
		per, _ := convert(it.num, it.units[0], "gal/yd3")
		s.used[q] = true
		s.state("water.added", plainNumber(round(per.low*yards))+" gal", s.words(q, q),
			fmt.Sprintf("“%s” on %s yd³ is taken as %s gal added", s.words(q, q), plainNumber(yards), plainNumber(round(per.low*yards))), it.start)
	}
}

// phrases gives the points of the phrases that speak for a fit.
func (s *solver) phrases(f *fit) (float64, float64) {
	said := s.said(f)
	points, apart := s.near(f)
	return max(said, points), apart
}

// bags takes an order that names bags of cement, and neither a strength nor a ratio, as one that goes by bags.
func (s *solver) bags() {
	i, ok := s.stated["mix.cementitious"]
	if !ok || s.has("order.basis") || s.has("order.strength") || s.has("order.ratio_limit") || s.has("mix.wcm") || s.has("mix.water") {
		return
	}
	if text, ok := s.out.Facts[i].Value.(string); ok && strings.Contains(text, "bags") {
		s.state("order.basis", "bags", s.out.Facts[i].Text, "", s.out.Facts[i].at)
	}
}

// poundsPerGallon is the weight of a US gallon of water at 60 °F.
const poundsPerGallon = 8.34

// leastMixWater is the fewest gallons in a yard that can be all the water of a mix.
const leastMixWater = 20

// waterContent reads the water of the mix where it is said in gallons or liters for each yard or meter, and the ratio where
// it is said in gallons for each bag.
func (s *solver) waterContent() {
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || len(it.units) == 0 {
			continue
		}
		switch it.units[0] {
		case "gal/yd3", "L/m3":
			path, f := "mix.water", fit{q: q, fact: s.byPath["mix.water"]}
			if p, _ := s.phrases(&f); p < enough && !strings.Contains(s.words(q, q), "water") && it.num.low < leastMixWater || s.has(path) || s.has("water.added") && s.addedThere(q) {
				continue
			}
			per, _ := convert(it.num, it.units[0], "gal/yd3")
			s.used[q] = true
			s.state(path, plainNumber(round(per.low*poundsPerGallon))+" lb/yd3", s.words(q, q), "", it.start)
		case "gal/bag":
			if s.has("mix.wcm") {
				continue
			}
			s.used[q] = true
			s.state("mix.wcm", plainNumber(round(it.num.low*poundsPerGallon/94)), s.words(q, q), "", it.start)
		}
	}
}

// addedThere says whether the words at item q speak of water that is added.
func (s *solver) addedThere(q int) bool {
	return s.nearWord(q, "add", "added", "another", "extra", "more")
}
