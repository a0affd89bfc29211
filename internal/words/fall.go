package words

import (
	"slices"

	"hearsay/internal/quantity"
)

// falls reads a fall that is told as so much over a length ("an inch in ten feet", "2 inches over 12 ft"), and turns the sign of a fall that
// runs toward the building.
func (s *solver) falls() {
	for q := range s.items {
		rise := &s.items[q]
		if rise.kind != aQuantity || s.used[q] || len(rise.units) == 0 || rise.units[0] != "in" && rise.units[0] != "mm" && rise.units[0] != "cm" || !s.slopes(q) {
			continue
		}
		k := q + 1
		for k < len(s.items) && k < q+7 && s.items[k].kind == aWord && (s.items[k].filler || over[s.items[k].text] || buildings[s.items[k].text]) {
			k++
		}
		if k >= len(s.items) || s.items[k].kind != aQuantity || len(s.items[k].units) == 0 {
			if k = s.runBefore(q); k < 0 {
				continue
			}
		}
		run := &s.items[k]
		up, err1 := quantity.Quantity{Value: rise.num.low, Unit: rise.units[0]}.In("in")
		along, err2 := quantity.Quantity{Value: run.num.low, Unit: run.units[0]}.In("ft")
		if err1 != nil || err2 != nil || along.Value <= 0 || s.has("member.fall") {
			continue
		}
		s.used[q] = true
		if k > q {
			s.used[k] = true // before it, the run is the length or the width, too
		}
		s.state("member.fall", plainNumber(round4(up.Value/along.Value))+" in/ft", s.words(min(q, k), max(q, k)), "", rise.start)
	}
}

// runBefore finds the length that was told before the fall over it: "it runs 12 feet out and drops 3 inches".
func (s *solver) runBefore(q int) int {
	if !slices.ContainsFunc(s.items[q:min(len(s.items), q+9)], func(it item) bool { return buildings[it.text] }) {
		return -1
	}
	for k := q - 1; k >= max(0, q-14); k-- {
		if it := &s.items[k]; it.kind == aQuantity && len(it.units) > 0 && (it.units[0] == "ft" || it.units[0] == "m") && it.num.single() {
			return k
		}
	}
	return -1
}

var over = set([]string{"over", "every", "across", "per", "in", "for", "toward", "towards", "away", "from", "off", "back", "down", "fall", "drop", "slope", "pitch", "street", "yard", "alley", "drain"})

func round4(v float64) float64 { return float64(int(v*10000+0.5)) / 10000 }

// slopes says whether the words around item q speak of a fall.
func (s *solver) slopes(q int) bool {
	for i := max(0, q-8); i < min(len(s.items), q+8); i++ {
		switch s.items[i].stem {
		case "fall", "slope", "pitch", "drop", "tilt", "drain":
			return true
		}
	}
	return false
}

// backward turns the sign of a fall toward the building.
func (s *solver) toward() {
	i, ok := s.stated["member.fall"]
	if !ok {
		return
	}
	f := &s.out.Facts[i]
	v, known := s.valueOf("member.fall", "in/ft")
	if !known || v <= 0 {
		return
	}
	for k := range s.items {
		if s.items[k].start < f.at-90 || s.items[k].start > f.at+90 || s.items[k].kind != aWord || s.items[k].negBy >= 0 {
			continue
		}
		t := s.items[k].text
		if t == "toward" || t == "towards" || t == "back" || t == "into" {
			for n := k + 1; n < k+4 && n < len(s.items); n++ {
				if buildings[s.items[n].text] {
					f.Value = plainNumber(-v) + " in/ft"
					return
				}
			}
		}
	}
}

var buildings = set([]string{"house", "garage", "building", "foundation", "wall", "home", "shop", "barn", "door", "basement"})
