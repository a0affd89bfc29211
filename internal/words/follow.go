package words

import "strings"

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
