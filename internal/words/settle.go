package words

import "sort"

// solver settles which number belongs to which fact.
type solver struct {
	*reading
	degrees   string // F or C, as the text gives its temperatures
	metric    bool   // every quantity said with its unit is metric
	saidBy    map[int][]match
	nearBy    map[int][]match
	neverBy   map[int][]match
	contextBy map[int][]match
	needBy    map[int][]match
	valueBy   map[int][]match
	roleHits  []match
	eventHit  []match
	shareHit  []match
	echoHit   []match
	when      map[int]moment // by event
	roleOf    map[int]role   // by item
	used      map[int]bool   // items that are done with
	holds     map[*match]int
	fits      map[int][]fit // by item
	gauged    map[int]bool  // sizes of mesh whose gauge was told
	bar       *item         // the thickness of the bars in millimeters
	readings  int           // how many readings of moisture were told
	out       Reading
	stated    map[string]int // path to index in out.Facts
}

// role is the part that a number plays: ordered, measured, a limit. index is -1 where nothing says so.
type role struct {
	index  int
	points float64
}

// settle gives every number, time and phrase to the fact it states.
func (r *reading) settle(found []match) Reading {
	s := r.solver(found)
	s.values()
	s.chances()
	s.times()
	s.spanFacts(true)
	s.meshes()
	s.trucks()
	s.lists()
	s.sizes()
	s.falls()
	s.barsInInches()
	s.chlorides()
	s.leftOver()
	s.weatherList()
	s.truckLists()
	s.smallSections()
	s.quantities()
	s.feetDeep()
	s.pastFrost()
	s.bareHumidity()
	s.remaining()
	s.wallLength()
	s.fixed()
	s.derive()
	s.unread()
	sort.SliceStable(s.out.Facts, func(i, k int) bool { return s.out.Facts[i].at < s.out.Facts[k].at })
	sort.SliceStable(s.out.Unread, func(i, k int) bool { return s.out.Unread[i].at < s.out.Unread[k].at })
	return s.out
}

func (r *reading) solver(found []match) *solver {
	s := &solver{reading: r, saidBy: map[int][]match{}, nearBy: map[int][]match{}, neverBy: map[int][]match{}, contextBy: map[int][]match{}, needBy: map[int][]match{}, valueBy: map[int][]match{},
		roleOf: map[int]role{}, used: map[int]bool{}, holds: map[*match]int{}, fits: map[int][]fit{}, stated: map[string]int{}, when: map[int]moment{}, gauged: map[int]bool{}}
	s.degrees, s.metric = r.system()
	s.sortOut(found)
	return s
}

func (s *solver) sortOut(found []match) {
	for _, m := range found {
		switch m.use.role {
		case useSaid:
			s.saidBy[m.use.target] = append(s.saidBy[m.use.target], m)
		case useNear:
			if m.at < 0 {
				s.nearBy[m.use.target] = append(s.nearBy[m.use.target], m)
			} else {
				s.saidBy[m.use.target] = append(s.saidBy[m.use.target], m)
			}
		case useContext:
			s.contextBy[m.use.target] = append(s.contextBy[m.use.target], m)
		case useNeeds:
			s.needBy[m.use.target] = append(s.needBy[m.use.target], m)
		case useNever:
			s.neverBy[m.use.target] = append(s.neverBy[m.use.target], m)
		case useValue:
			s.valueBy[m.use.target] = append(s.valueBy[m.use.target], m)
		case useBefore, useAfter:
			s.roleHits = append(s.roleHits, m)
		case useEvent:
			s.eventHit = append(s.eventHit, m)
		case useEcho:
			s.echoHit = append(s.echoHit, m)
		case useShare:
			if m.at >= 0 && !s.used[m.at] && len(s.items[m.at].units) > 0 && s.items[m.at].units[0] == "%" {
				s.shareHit = append(s.shareHit, m)
				s.used[m.at] = true // no other fact gets it
			}
		case useIgnore:
			if m.at >= 0 && (len(s.items[m.at].units) == 0 || m.use.pattern.united()) {
				s.used[m.at] = true
			}
		}
	}
}

// system says in what units the text speaks: the scale of the first temperature that is said with its unit, and whether every
// other quantity is metric.
func (r *reading) system() (degrees string, metric bool) {
	n, customary := 0, 0
	for i := range r.items {
		if len(r.items[i].units) == 0 {
			continue
		}
		switch u := r.items[i].units[0]; u {
		case "F", "C":
			if degrees == "" {
				degrees = u
			}
		case "mm", "MPa", "kg/m3", "km/h", "m3", "L", "kg", "m2", "m/s":
			n++
		case "in", "psi", "lb", "lb/yd3", "ft", "mph", "gal", "ft2", "yd3", "bags/yd3":
			customary++
		}
	}
	metric = customary == 0 && (n > 0 || degrees == "C")
	if degrees == "" {
		degrees = "F"
		if metric {
			degrees = "C"
		}
	}
	return degrees, metric
}
