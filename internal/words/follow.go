package words

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

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
		f := s.out.Facts[i]
		s.out.Facts[i].Value = v[0]
		s.rename("load.other_slumps", "load.slump")
		if len(v) > 1 {
			s.state("load.other_slumps", v[1:], f.Text, "", f.at)
		}
	}
}

// reinforcement takes a bar size as said of bars, and a wire size as said of mesh.
func (s *solver) reinforcement() {
	s.barArea()
	if i, ok := s.stated["steel.kind"]; ok && s.has("steel.bar_size") && s.has("steel.spacing") && s.out.Facts[i].Value != "mats" {
		s.out.Facts[i].Value = "bars" // the fibers or the mesh come on top
	}
	for _, r := range [][2]string{{"steel.bar_size", "bars"}, {"steel.wire", "mesh"}} {
		if i, ok := s.stated[r[0]]; ok && !s.has("steel.kind") {
			s.state("steel.kind", r[1], s.out.Facts[i].Text, "", s.out.Facts[i].at)
		}
	}
}

// onGround takes a slab or floor as one on the ground where nothing says that it is held up, and says so unless its base
// or its joints are told.
func (s *solver) onGround() {
	if s.has("member.use") || s.has("member.kind") {
		return
	}
	finished, ground, note := "", false, "It is taken as a slab on the ground, since nothing says that it is held up."
	for _, f := range s.out.Facts {
		switch {
		case f.Path == "safety.elevated", f.Path == "safety.supports_removed", f.Path == "safety.span":
			return
		case strings.HasPrefix(f.Path, "finish."):
			finished = f.Text
		case strings.HasPrefix(f.Path, "ground."), strings.HasPrefix(f.Path, "joints."), f.Path == "floor.retarder":
			ground = true
		}
	}
	at := -1
	for i := range s.items {
		it := &s.items[i]
		if it.kind != aWord {
			continue
		}
		if !ground && (heldUp[it.text] && !s.beside(i) || it.text == "floor" && i > 0 && storeys[s.items[i-1].text]) {
			return
		}
		if at < 0 && (flat[it.text] || flat[it.stem] || !ground && flatWork[it.text]) {
			at = i
		}
	}
	if at < 0 && finished != "" {
		s.state("member.kind", "slab on ground", finished, note, len(s.text))
	}
	if at < 0 {
		return
	}
	if ground {
		note = ""
	}
	s.state("member.kind", "slab on ground", s.words(at, at), note, s.items[at].start)
}

// flat are the words for a slab, flatWork those for what is done to a slab alone, and heldUp those that speak of a slab that
// does not lie on the ground, or of what is no slab.
var (
	flat     = set([]string{"slab", "slabs", "floor", "floors", "flatwork", "pad"})
	flatWork = set([]string{"trowel", "troweling", "trowelling", "troweled", "trowelled", "bull", "finishers", "bleed", "broom", "broomed", "sawcuts"})
	heldUp   = set([]string{"deck", "elevated", "suspended", "podium", "balcony", "mezzanine", "shores", "shoring", "structural", "wall", "walls", "column",
		"columns", "beam", "beams", "footing", "footings", "topping", "overlay", "bridge", "upper"})
	storeys = set([]string{"second", "third", "fourth", "fifth", "upper", "top", "2nd", "3rd"})
)

// notClaimed takes back what steel is said not to be for: "they don't claim it stops cracks".
func (s *solver) notClaimed() {
	at, ok := s.stated["steel.purpose"]
	if !ok || !s.is("steel.purpose", "prevent cracks") {
		return
	}
	for i := range s.items {
		if s.items[i].start < s.out.Facts[at].at {
			continue
		}
		for j := max(0, i-5); j < i; j++ {
			if s.items[j].kind == aWord && s.negatorAt(j) > 0 {
				s.drop("steel.purpose")
				return
			}
		}
		return
	}
}

// notDays takes back days of protection that are a pace: "one layer a day".
func (s *solver) notDays() {
	at, ok := s.stated["protection.days"]
	if !ok || !s.is("protection.removal", "gradual") {
		return
	}
	for _, pace := range []string{"a day", "per day", "each day", "every day"} {
		if strings.HasSuffix(strings.ToLower(s.out.Facts[at].Text), pace) {
			s.drop("protection.days")
			return
		}
	}
}

// notForSlump takes back a purpose of added water where only the water on the aggregates is spoken of, and none is added.
func (s *solver) notForSlump() {
	if s.has("water.purpose") && !s.has("water.added") && !s.has("load.slump_wanted") && (s.has("mix.moisture_correction") || s.has("mix.fine_moisture")) {
		s.drop("water.purpose")
	}
}

// notTheSlab takes back a wall, a column or a footing that was read as what is placed where joints are cut and a slab is named: it only
// stands beside.
func (s *solver) notTheSlab() {
	if !s.is("member.use", "wall") && !s.is("member.use", "column") && !s.is("member.use", "footing") {
		return
	}
	jointed := s.has("joints.spacing") || s.has("joints.saw") || s.has("joints.panel_length") || s.has("joints.cut_after") || s.has("finish.final") || s.has("finish.machine")
	if jointed && slices.ContainsFunc(s.items, func(it item) bool { return it.kind == aWord && (flat[it.text] || it.text == "bay") }) {
		s.drop("member.use")
	}
}

// beside says whether the word at item i names what is not there, or what the slab only lies beside: "no walls up", "along the
// wall".
func (s *solver) beside(i int) bool {
	if s.items[i].negBy >= 0 {
		return true
	}
	for j := i - 1; j >= 0 && j >= i-3 && s.items[j].kind == aWord; j-- {
		if asides[s.items[j].text] {
			return true
		}
	}
	return false
}

var asides = set([]string{"at", "along", "against", "around", "round", "beside", "near", "by", "between", "from", "next", "off", "touching", "to"})

// tent takes the warmth inside as that of the enclosure where the concrete stands in one.
func (s *solver) tent() {
	if !s.has("floor.room_temperature") || s.has("protection.enclosure_temperature") || s.has("floor.covering") {
		return
	}
	if s.tarped() || s.has("protection.heater") || s.is("protection.cover", "enclosure") || s.has("safety.people_in_enclosure") {
		s.rename("floor.room_temperature", "protection.enclosure_temperature")
	}
}

// lifts says how long fresh concrete waits for more where a member goes up in lifts, each a truckload, or where the trucks
// come so far apart that the face stands open.
func (s *solver) lifts() {
	i, ok := s.stated["load.spacing"]
	spacing, known := s.valueOf("load.spacing", "min")
	if !ok || !known || s.has("load.gap") {
		return
	}
	unloading, told := s.valueOf("load.unloading", "min")
	gap, inLifts := spacing, slices.ContainsFunc(s.items, func(it item) bool { return it.stem == "lift" || it.stem == "layer" })
	if !inLifts {
		if !told || spacing <= unloading || !s.is("load.planned_joint", "no") {
			return
		}
		gap = spacing - unloading
	}
	f := s.out.Facts[i]
	s.state("load.gap", plainNumber(gap)+" min", f.Text, "", f.at)
}

// wallJoints takes the joints that a wall, a footing or a column goes without as its construction joints.
func (s *solver) wallJoints() {
	i, ok := s.stated["member.use"]
	if !ok || !s.is("joints.made", "no") {
		return
	}
	switch s.out.Facts[i].Value {
	case "wall", "foundation wall", "retaining wall", "footing", "column", "beam", "tank":
	default:
		return
	}
	for _, path := range []string{"steel.joints_left_out", "steel.purpose"} {
		if at, ok := s.stated[path]; ok && s.out.Facts[at].at == s.out.Facts[s.stated["joints.made"]].at {
			s.drop(path)
		}
	}
	if s.has("load.planned_joint") {
		s.drop("joints.made")
		return
	}
	s.rename("joints.made", "load.planned_joint")
}

// drop takes back a fact.
func (s *solver) drop(path string) {
	i := s.stated[path]
	s.out.Facts = slices.Delete(s.out.Facts, i, i+1)
	delete(s.stated, path)
	for p, k := range s.stated {
		if k > i {
			s.stated[p] = k - 1
		}
	}
}

// barsInInches reads the size of bars that is told as their thickness: "half inch bars", "5/8 rebar", "12 mm rods".
func (s *solver) barsInInches() {
	for q := 0; q+1 < len(s.items); q++ {
		it := &s.items[q]
		next := s.items[q+1].text
		if it.kind != aQuantity || s.used[q] || s.has("steel.bar_size") || !it.num.single() || next != "bars" && next != "bar" && next != "rebar" && next != "rods" {
			continue
		}
		if len(it.units) > 0 && it.units[0] == "mm" && it.num.low >= 6 && it.num.low <= 40 {
			s.used[q] = true
			s.bar = it
			continue
		}
		if len(it.units) > 0 && it.units[0] != "in" {
			continue
		}
		if n := it.num.low * 8; it.num.part && n == float64(int(n)) && n >= 3 && n <= 11 {
			s.used[q] = true
			s.state("steel.bar_size", plainNumber(n)+" bar", s.words(q, q+1), "", it.start)
		}
	}
}

// barArea states the steel area of bars whose thickness is told in millimeters, which no bar number names.
func (s *solver) barArea() {
	spacing, ok := s.valueOf("steel.spacing", "mm")
	if !ok || s.bar == nil || s.has("steel.area") {
		return
	}
	d := s.bar.num.low
	s.state("steel.area", fmt.Sprintf("%.4g mm2/m", math.Pi/4*d*d*1000/spacing), plainNumber(d)+" mm bars", fmt.Sprintf("It is the area of {%s mm} bars {%s mm} apart.", plainNumber(d), plainNumber(math.Round(spacing))), s.bar.start)
}

// cone takes a second measured slump that is the one wanted as what came of it: "came at 3, bring it to 6 … six on the cone".
func (s *solver) cone() {
	wanted, ok := s.stated["load.slump_wanted"]
	first, two := s.stated["load.slump"]
	if !ok || !two {
		return
	}
	fact := s.facts[s.byPath["load.slump"]]
	for i := len(s.out.Facts) - 1; i > first; i-- {
		if f := s.out.Facts[i]; f.Path == fact.Path && fact.Same(s.canon(fact, f.Value), s.out.Facts[wanted].Value) {
			s.out.Facts = slices.Delete(s.out.Facts, i, i+1)
			for p, k := range s.stated {
				if k > i {
					s.stated[p] = k - 1
				}
			}
			return
		}
	}
}

// curingWater takes water whose temperature is told beside that of the slab as the one that keeps it wet.
func (s *solver) curingWater() {
	if s.has("cure.surface_temperature") && s.has("materials.water_temperature") && !s.has("cure.water_temperature") && s.is("cure.method", "wet") &&
		!s.has("materials.cement_temperature") && !s.has("materials.aggregate_temperature") {
		s.rename("materials.water_temperature", "cure.water_temperature")
	}
}

// tarped says whether tarps or a tent are spoken of.
func (s *solver) tarped() bool {
	return slices.ContainsFunc(s.items, func(it item) bool {
		return it.text == "tarps" || it.text == "tent" || it.text == "hoarding" || it.text == "enclosure"
	})
}

// purpose says what water is added for where the slump that is wanted stands against the one ordered.
func (s *solver) purpose() {
	wanted, ok1 := s.valueOf("load.slump_wanted", "in")
	ordered, ok2 := s.valueOf("order.slump", "in")
	if !ok1 || !ok2 || s.has("water.purpose") || s.has("water.admixture_added") {
		return
	}
	for i := range s.items {
		it := &s.items[i]
		if it.kind != aWord || it.negBy >= 0 || it.text != "water" && it.text != "hose" && it.text != "gallons" {
			continue
		}
		value := "to the slump ordered"
		if wanted > ordered {
			value = "above the slump ordered"
		}
		f := s.out.Facts[s.stated["load.slump_wanted"]]
		s.state("water.purpose", value, f.Text, "", f.at)
		return
	}
}

// is says whether a fact was read with this value.
func (s *solver) is(path, value string) bool {
	i, ok := s.stated[path]
	return ok && s.out.Facts[i].Value == value
}

// alongWith states what goes along with a value that was read where nothing else is said of it.
func (s *solver) alongWith() {
	for _, a := range along {
		i, ok := s.stated[a.path]
		if !ok || s.has(a.then) || s.out.Facts[i].Value != a.value {
			continue
		}
		f := s.out.Facts[i]
		s.state(a.then, a.gives, f.Text, "", f.at)
	}
	if i, ok := s.stated["exposure.age_at_salting"]; ok && !s.has("exposure.first_winter_salt") {
		if days, known := s.valueOf("exposure.age_at_salting", "d"); known && days < firstWinter {
			f := s.out.Facts[i]
			s.state("exposure.first_winter_salt", "yes", f.Text, "", f.at)
		}
	}
}

// along are values with what goes along with them: a slab right on its sheet slides on it, and
// steel for which joints are left out is there to do without them.
var along = []struct{ path, value, then, gives string }{
	{"floor.retarder", "direct", "ground.base_friction", "plastic sheet"},
	{"steel.joints_left_out", "yes", "steel.purpose", "no joints"},
}

// asTold takes what a description leaves out as it is meant where nobody would leave it out otherwise, and says so: a
// compound of which nobody says that it comes off stays on, and what a mix told in pounds does not name is not in it.
func (s *solver) asTold() {
	if i, ok := s.stated["joints.panel_length"]; ok && !s.has("joints.spacing") && s.has("joints.panel_width") {
		f := s.out.Facts[i]
		s.state("joints.spacing", f.Value, f.Text, "", f.at)
	}
	if i, ok := s.stated["floor.covering"]; ok && s.is("cure.method", "compound") && !s.has("cure.compound_removed") && s.out.Facts[i].Value != "none" {
		f := s.out.Facts[s.stated["cure.method"]]
		s.state("cure.compound_removed", "no", f.Text, "It is taken as a curing compound that stays on, since nothing is said of its removal.", f.at)
	}
	if i, ok := s.stated["floor.sheet_thickness"]; ok && !s.has("floor.retarder") && !s.has("floor.fill_depth") {
		f := s.out.Facts[i]
		s.state("floor.retarder", "direct", f.Text, "", f.at)
		s.alongWith()
	}
	if s.readings > 1 && !s.has("floor.tests") {
		for _, path := range []string{"floor.humidity_reading", "floor.emission_reading"} {
			if i, ok := s.stated[path]; ok {
				f := s.out.Facts[i]
				s.state("floor.tests", plainNumber(float64(s.readings)), f.Text, "", f.at)
				break
			}
		}
	}
	if i, ok := s.stated["protection.removal_outside"]; ok && !s.has("weather.low") && !s.has("weather.air") {
		f := s.out.Facts[i]
		s.state("weather.low", f.Value, f.Text, "It is taken as the overnight low, too, since nothing colder is told.", f.at)
	}
	others := []string{"mix.fly_ash", "mix.slag", "mix.silica_fume"}
	named := false
	for _, path := range others {
		named = named || s.has(path)
	}
	i, ok := s.stated["mix.portland"]
	if !ok || !named || s.has("mix.cementitious") {
		return
	}
	for _, path := range others {
		if !s.has(path) {
			f := s.out.Facts[i]
			s.state(path, "0 lb/yd3", f.Text, "It is taken as a mix without what is not named in it: "+s.facts[s.byPath[path]].Name+" 0.", f.at)
		}
	}
}

// firstWinter is the age in days below which no winter lies behind a slab that is being salted.
const firstWinter = 200

// oneLoad takes what was ordered as the load in the truck where it is a single truckload that stands on the site.
func (s *solver) oneLoad() {
	i, ok := s.stated["order.volume"]
	yards, known := s.valueOf("order.volume", "yd3")
	if !ok || !known || s.has("load.volume") || s.has("load.other_slumps") || s.has("load.spacing") || yards > largestLoad {
		return
	}
	for _, path := range []string{"water.added", "water.wash", "water.withheld", "water.discharged", "load.slump", "load.age", "load.weight", "cold.chloride_dose"} {
		if s.has(path) {
			f := s.out.Facts[i]
			s.state("load.volume", f.Value, f.Text, "", f.at)
			return
		}
	}
}

// largestLoad is the most that comes in one truck, in cubic yards.
const largestLoad = 11

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

// wantedIsOrdered takes the slump that somebody wants while nothing stands on the site yet as the one to be ordered.
func (s *solver) wantedIsOrdered() {
	if !s.has("load.slump_wanted") || s.has("order.slump") || s.has("load.slump") {
		return
	}
	for _, path := range []string{"water.added", "water.allowed", "water.withheld", "load.age", "load.temperature", "load.haul", "water.moment", "load.air"} {
		if s.has(path) {
			return
		}
	}
	s.rename("load.slump_wanted", "order.slump")
	if s.has("order.slump_raised_with") && s.has("water.purpose") {
		s.drop("water.purpose")
	}
}
