package words

// groundFloors are the uses of a floor that lies on the ground.
var groundFloors = set([]string{"garage floor", "house floor", "interior floor", "warehouse floor", "shed floor", "barn floor", "basement floor"})

// upperFloor takes a floor that is said to be an upper one, and to span or to stand on shores, for a suspended slab, whatever the house is
// for: "two-story garage, second level slab, 20 foot spans".
func (s *solver) upperFloor() {
	at, ok := s.stated["member.use"]
	if !ok || !s.is("safety.elevated", "yes") || !s.has("safety.span") && !s.has("safety.supports_removed") {
		return
	}
	if use, ok := s.out.Facts[at].Value.(string); ok && groundFloors[use] {
		s.out.Facts[at].Value = "suspended slab"
	}
}
