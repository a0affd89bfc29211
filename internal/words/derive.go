package words

import (
	"fmt"
	"strings"
	"time"

	"hearsay/internal/quantity"
)

// derive states what follows from how things were said: the times between events, the hour and day of the placement, the
// share of fly ash in pounds, an order that goes by bags.
func (s *solver) derive() {
	s.spanFacts(false)
	s.start()
	s.onGround()
	s.shares()
	s.cement()
	s.onlySlump()
	s.onlyTest()
	s.perYard()
	s.waterContent()
	s.echoes()
	s.walls()
	s.reinforcement()
	s.bags()
}

// start states the hour and the day of the placement.
func (s *solver) start() {
	for event, m := range s.when {
		if s.events[event] != "start" && s.events[event] != "placed" {
			continue
		}
		if m.clock.hour > 0 && !s.has("job.start") && s.events[event] == "start" {
			h := m.clock.resolve(s.nearWord(m.item, "tonight", "evening", "night"))
			s.state("job.start", fmt.Sprintf("%d:%02d", int(h)%24, int((h-float64(int(h)))*60+0.5)), s.words(m.item, m.item), "", s.items[m.item].start)
		}
		if !m.date.IsZero() && !s.has("job.date") {
			s.state("job.date", m.date.Format(time.DateOnly), s.words(m.item, m.item), "", s.items[m.item].start)
		}
		if day, i := s.dayWord(m.item); i >= 0 && !s.has("job.date") {
			s.state("job.date", day.Format(time.DateOnly), s.words(i, i), "", s.items[i].start)
		}
	}
	for i := range s.items { // "7 yards for Saturday"
		if s.items[i].kind == aWord && s.items[i].text == "for" && i+1 < len(s.items) && s.has("order.volume") && !s.has("job.date") {
			if day, at := s.dayWord(i + 1); at == i+1 {
				s.state("job.date", day.Format(time.DateOnly), s.words(at, at), "", s.items[at].start)
			}
		}
	}
}

// dayWord finds a word such as tomorrow or Saturday at item q or right beside it, and the day it means.
func (s *solver) dayWord(q int) (time.Time, int) {
	today := s.now.Truncate(24 * time.Hour)
	for _, i := range []int{q, q + 1, q - 1, q - 2} {
		if i < 0 || i >= len(s.items) || s.items[i].kind != aWord {
			continue
		}
		switch t := s.items[i].text; t {
		case "tomorrow":
			return today.AddDate(0, 0, 1), i
		case "today", "tonight":
			return today, i
		default:
			if day, ok := weekdays[t]; ok {
				ahead := (int(day) - int(today.Weekday()) + 6) % 7
				return today.AddDate(0, 0, ahead+1), i
			}
		}
	}
	return time.Time{}, -1
}

var weekdays = map[string]time.Weekday{"monday": time.Monday, "tuesday": time.Tuesday, "wednesday": time.Wednesday, "thursday": time.Thursday,
	"friday": time.Friday, "saturday": time.Saturday, "sunday": time.Sunday}

// nearWord says whether one of the words stands within a few words of item q.
func (s *solver) nearWord(q int, words ...string) bool {
	for i := max(0, q-3); i < min(len(s.items), q+4); i++ {
		for _, w := range words {
			if s.items[i].kind == aWord && s.items[i].text == w {
				return true
			}
		}
	}
	return false
}

// valueOf gives a number that was read, in the unit asked for.
func (s *solver) valueOf(path, unit string) (float64, bool) {
	i, ok := s.stated[path]
	if !ok {
		return 0, false
	}
	text, ok := s.out.Facts[i].Value.(string)
	if !ok {
		return 0, false
	}
	q, err := quantity.ParseAs(text, unit)
	return q.Value, err == nil
}

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

// echoes states a fact that is said to be the same as another ("it came at four and that's what we ordered").
func (s *solver) echoes() {
	for k := range s.echoHit {
		m := &s.echoHit[k]
		if m.denied || m.unsure {
			continue
		}
		pair := s.echoed[m.use.target]
		for i := range pair {
			from, to := s.facts[pair[i]].Path, s.facts[pair[1-i]].Path
			if at, ok := s.stated[from]; ok && !s.has(to) {
				s.state(to, s.out.Facts[at].Value, s.words(m.start, m.end-1), "", s.items[m.start].start)
			}
		}
	}
}

// walls takes the thickness of a wall as what stands between its forms, too.
func (s *solver) walls() {
	use, ok := s.stated["member.use"]
	if !ok {
		return
	}
	switch s.out.Facts[use].Value {
	case "wall", "foundation wall", "retaining wall":
	default:
		return
	}
	for _, pair := range [][2]string{{"member.thickness", "member.narrowest_form"}, {"member.narrowest_form", "member.thickness"}} {
		if at, ok := s.stated[pair[0]]; ok && !s.has(pair[1]) {
			f := s.out.Facts[at]
			s.state(pair[1], f.Value, f.Text, "", f.at)
		}
	}
}

// onlySlump takes the slump of "the first truck" as the measured one where no other is told.
func (s *solver) onlySlump() {
	i, ok := s.stated["load.other_slumps"]
	if !ok || s.has("load.slump") {
		return
	}
	switch v := s.out.Facts[i].Value.(type) {
	case string:
		s.rename("load.other_slumps", "load.slump")
	case []any:
		if len(v) == 1 {
			s.out.Facts[i].Value = v[0]
			s.rename("load.other_slumps", "load.slump")
		}
	}
}

// reinforcement takes a bar size as said of bars, and a wire size as said of mesh.
func (s *solver) reinforcement() {
	for _, r := range [][2]string{{"steel.bar_size", "bars"}, {"steel.wire", "mesh"}} {
		if i, ok := s.stated[r[0]]; ok && !s.has("steel.kind") {
			s.state("steel.kind", r[1], s.out.Facts[i].Text, "", s.out.Facts[i].at)
		}
	}
}

// onGround takes a slab or floor of which the base or the joints are told as one on the ground, where no use says more.
func (s *solver) onGround() {
	if s.has("member.use") || s.has("member.kind") {
		return
	}
	ground := false
	for _, f := range s.out.Facts {
		ground = ground || strings.HasPrefix(f.Path, "ground.") || strings.HasPrefix(f.Path, "joints.") || f.Path == "floor.retarder"
	}
	if !ground {
		return
	}
	for i := range s.items {
		if it := &s.items[i]; it.kind == aWord && (it.stem == "slab" || it.stem == "floor" || it.stem == "flatwork" || it.stem == "pad") {
			s.state("member.kind", "slab on ground", s.words(i, i), "", it.start)
			return
		}
	}
}

// onlyTest takes the only test that is told as the lowest.
func (s *solver) onlyTest() {
	i, ok := s.stated["strength.tests"]
	if !ok || s.has("strength.lowest") {
		return
	}
	if v, ok := s.out.Facts[i].Value.(string); ok {
		s.out.Facts[i].Value = v
		s.rename("strength.tests", "strength.lowest")
	}
}
