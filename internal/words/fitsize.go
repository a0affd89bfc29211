package words

import "hearsay/internal/quantity"

// A size belongs to the member, to the panels between joints, or to a mesh; what stands beside it says which.
var sizeFacts = []struct {
	near  string   // the fact whose phrases point to it
	gives []string // the facts its parts state
	bare  []string // units of bare parts
	reach float64  // how far the phrase may stand before it; 0 for any distance
	most  float64  // the largest number that such a size has
}{
	{"joints.panel_length", []string{"joints.panel_length", "joints.panel_width"}, []string{"ft", "ft"}, 1.5, 60},
	{"steel.wire", []string{"steel.spacing"}, []string{"in"}, 0.5, 12},
	{"member.length", []string{"member.length", "member.width", "member.thickness"}, []string{"ft", "ft", "in"}, 0, 1e6},
}

// sizes gives each size to what it is the size of.
func (s *solver) sizes() {
	for q := range s.items {
		if s.items[q].kind == aSize && !s.used[q] {
			s.giveSize(q)
		}
	}
}

func (s *solver) giveSize(q int) {
	best, points := len(sizeFacts)-1, 2.0
	for k, sf := range sizeFacts {
		fact := s.byPath[sf.near]
		for i := range s.nearBy[fact] {
			m := &s.nearBy[fact][i]
			reach := sf.reach
			if m.start > q {
				reach = 2
			}
			if sf.reach > 0 && s.apart(m, q) > reach {
				continue
			}
			if p := pointsNear - pointsApart*s.apart(m, q); p > points && s.sizeWithin(q, sf.most) {
				best, points = k, p
			}
		}
		for i := range s.saidBy[fact] {
			if m := &s.saidBy[fact][i]; m.at == q && pointsSaid > points {
				best, points = k, pointsSaid
			}
		}
	}
	if s.meshSize(q) || s.meshGauge(q) {
		best = 1
	}
	if best == len(sizeFacts)-1 && s.giveSection(q) {
		return
	}
	sf := sizeFacts[best]
	parts := s.items[q].parts
	if sf.near == "joints.panel_length" && len(parts) == 2 && parts[0].unit == parts[1].unit && parts[0].num.low < parts[1].num.low {
		parts = []part{parts[1], parts[0]} // a panel is as long as its longer side
	}
	if best == len(sizeFacts)-1 && s.smallMember(q) {
		return
	}
	if s.has(sf.gives[0]) {
		return
	}
	for k, p := range parts {
		if k >= len(sf.gives) || s.has(sf.gives[k]) {
			break
		}
		unit := p.unit
		if unit == "" {
			unit = sf.bare[k]
		}
		fact := s.facts[s.byPath[sf.gives[k]]]
		v, err := quantity.Quantity{Value: p.num.low, Unit: unit}.In(fact.Unit)
		if err != nil || fact.Possible != nil && !fact.Possible.Contains(v.Value) {
			return
		}
		s.state(sf.gives[k], plainNumber(p.num.low)+" "+unit, s.words(q, q), "", s.items[q].start)
	}
	s.used[q] = true
}

// giveSection gives the size of a wall or a footing whose parts are told in inches and feet: the thickness and the height of a wall, the width
// and the depth of a footing, and the length of both.
func (s *solver) giveSection(q int) bool {
	i, ok := s.stated["member.use"]
	if !ok {
		return false
	}
	var short, long []part
	for _, p := range s.items[q].parts {
		switch p.unit {
		case "in", "mm", "cm":
			short = append(short, p)
		case "ft", "m":
			long = append(long, p)
		}
	}
	if len(short) == 0 || len(short)+len(long) != len(s.items[q].parts) {
		return false
	}
	give := map[string]part{}
	switch s.out.Facts[i].Value {
	case "wall", "foundation wall", "retaining wall":
		if len(short) != 1 || len(long) == 0 {
			return false
		}
		give["member.thickness"], give["member.height"] = short[0], long[0]
		if len(long) == 2 {
			a, b := long[0], long[1]
			if a.num.low > b.num.low {
				a, b = b, a
			}
			give["member.height"], give["member.length"] = a, b
		}
	case "footing":
		if len(short) != 2 {
			return false
		}
		give["member.width"], give["member.thickness"] = short[0], short[1]
		if len(long) == 1 {
			give["member.length"] = long[0]
		}
	default:
		return false
	}
	for _, path := range []string{"member.thickness", "member.height", "member.length", "member.width"} {
		if p, ok := give[path]; ok && !s.has(path) {
			s.state(path, plainNumber(p.num.low)+" "+p.unit, s.words(q, q), "", s.items[q].start)
		}
	}
	s.used[q] = true
	return true
}

// meshSize says whether a size is that of a mesh: its wire follows ("6x6 W1.4", "6x6 10/10").
func (s *solver) meshSize(q int) bool {
	i := q + 1
	for i < len(s.items) && (s.items[i].kind == aBreak && s.items[i].pause == pauseComma || s.items[i].filler) {
		i++
	}
	return i < len(s.items) && s.items[i].kind == aQuantity && len(s.items[i].units) > 0 && s.items[i].units[0] == "W" && s.sizeWithin(q, 12)
}

func (s *solver) sizeWithin(q int, most float64) bool {
	for _, p := range s.items[q].parts {
		if p.num.low > most {
			return false
		}
	}
	return true
}

// smallMember says whether a bare size stands beside a footing, a column or a beam, whose sizes are said in inches as often
// as in feet: then it is a question.
func (s *solver) smallMember(q int) bool {
	for _, p := range s.items[q].parts {
		if p.unit != "" {
			return false
		}
	}
	i, ok := s.stated["member.use"]
	if !ok {
		return false
	}
	switch s.out.Facts[i].Value {
	case "footing":
		if p := s.items[q].parts; len(p) == 2 && p[0].num.low >= 12 && p[0].num.low <= 48 && p[1].num.low >= 6 && p[1].num.low <= p[0].num.low && !s.metric {
			for k := range p { // no footing is 20 feet by 10
				s.items[q].parts[k].unit = "in"
			}
			return s.giveSection(q)
		}
		return true
	case "column", "beam", "pier":
		return true
	}
	return false
}

// smallSections reads the bare widths and depths of footings, columns, beams and walls ("24 wide by 10 deep", "600 wide by 300"), which are
// inches or millimeters where no such member is as many feet or meters.
func (s *solver) smallSections() {
	i, ok := s.stated["member.use"]
	if !ok {
		return
	}
	switch s.out.Facts[i].Value {
	case "footing", "column", "beam", "pier", "wall", "foundation wall", "retaining wall", "curb", "steps":
	default:
		return
	}
	unit, least, most := "in", 6.0, 60.0
	if s.metric {
		unit, least, most = "mm", 100, 2000
	}
	for q := 0; q < len(s.items); q++ {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || len(it.units) > 0 || !it.num.single() || it.num.low < least || it.num.low > most {
			continue
		}
		path := ""
		switch s.wordAt(q + 1) {
		case "wide":
			path = "member.width"
			if use := s.out.Facts[i].Value; use == "wall" || use == "foundation wall" || use == "retaining wall" {
				path = "member.thickness"
			}
		case "deep", "thick":
			path = "member.thickness"
		}
		if s.wordAt(q-1) == "by" && s.wordAt(q-2) == "wide" && path == "" {
			path = "member.thickness"
		}
		if path == "" || s.has(path) {
			continue
		}
		s.used[q] = true
		s.state(path, plainNumber(it.num.low)+" "+unit, s.words(q, q), "", it.start)
	}
}

// feetDeep takes a bare small number as the depth in feet of a footing whose width in feet is told: "two wide and one deep".
func (s *solver) feetDeep() {
	i, ok := s.stated["member.use"]
	if !ok || s.metric || s.out.Facts[i].Value != "footing" || s.has("member.thickness") {
		return
	}
	if width, ok := s.valueOf("member.width", "ft"); !ok || width > 8 {
		return
	}
	for q := range s.items {
		it := &s.items[q]
		word := s.wordAt(q + 1)
		if it.kind != aQuantity || s.used[q] || len(it.units) > 0 || !it.num.single() || it.num.low < 0.5 || it.num.low > 4 || word != "deep" && word != "thick" {
			continue
		}
		s.used[q] = true
		s.state("member.thickness", plainNumber(it.num.low)+" ft", s.words(q, q+1), "", it.start)
		return
	}
}

// wordAt is the word at item i, "" where none is.
func (s *solver) wordAt(i int) string {
	if i < 0 || i >= len(s.items) {
		return ""
	}
	return s.items[i].text
}

// wallLength takes a length that no other fact has taken as that of the wall or the footing whose section is told.
func (s *solver) wallLength() {
	i, ok := s.stated["member.use"]
	if !ok || s.has("member.length") {
		return
	}
	least := 0.0
	switch s.out.Facts[i].Value {
	case "wall", "foundation wall", "retaining wall":
		least, ok = s.valueOf("member.height", "ft")
	case "footing":
		least, ok = s.valueOf("member.width", "ft")
	default:
		return
	}
	if !ok || !s.has("member.thickness") {
		return
	}
	only := -1
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || len(it.units) == 0 || it.units[0] != "ft" && it.units[0] != "m" || !it.num.single() {
			continue
		}
		if v, ok := convert(it.num, it.units[0], "ft"); !ok || v.low <= least || only >= 0 {
			return
		}
		only = q
	}
	if only >= 0 {
		s.used[only] = true
		s.state("member.length", plainNumber(s.items[only].num.low)+" "+s.items[only].units[0], s.words(only, only), "", s.items[only].start)
	}
}
