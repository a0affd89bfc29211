package words

import (
	"slices"

	"hearsay/internal/job"
)

// This file takes for granted what nobody tells: what goes without saying where a subject is spoken of, and would be told if
// it were otherwise. Each is noted, so that whoever reads the result can say that it is not so.

// known is what a description says, with what follows from it.
type known struct {
	*solver
	j *job.Job
}

// unsaid states what goes without saying.
func (s *solver) unsaid() {
	if len(s.out.Facts) == 0 {
		return
	}
	k := known{s, job.New()}
	if s.is("joints.made", "no") && !k.speaks(steelWords) { // nobody leaves joints out because of steel that is not there
		for _, path := range []string{"steel.joints_left_out", "steel.purpose"} {
			if s.has(path) {
				s.drop(path)
			}
		}
	}
	for _, f := range s.out.Facts {
		_ = k.j.StateFrom(s.d, job.Stated{Text: f.Text}, f.Path, f.Value) // what is wrong with it is said where it is added to a job
	}
	_ = k.j.Follow(s.d)
	if i, ok := s.stated["water.purpose"]; ok && s.is("water.purpose", "to the slump ordered") && k.lostToHeat() {
		s.out.Facts[i].Value = "lost to heat"
		_ = k.j.Replace(s.d, "water.purpose", "lost to heat")
	}
	for _, list := range [][]unsaid{unsaidPlace, unsaidCold, unsaidFresh, unsaidWater, unsaidFloor, unsaidLater} {
		for _, u := range list {
			if value := u.value; !k.knows(u.path) && u.when(k) {
				if u.like != nil {
					if value = u.like(k); value == "" {
						continue
					}
				}
				k.take(u, value)
			}
		}
	}
}

// unsaid is a fact that is taken for granted.
type unsaid struct {
	path, value string
	from        string // the fact whose words it is taken from
	note        string // completes "It is taken as"
	when        func(k known) bool
	like        func(k known) string // the value, where it hangs on others
}

// take states it, unless it contradicts what is known.
func (k known) take(u unsaid, value string) {
	next := k.j.Clone()
	if next.State(k.d, u.path, value) != nil || next.Follow(k.d) != nil {
		return
	}
	*k.j = *next
	text, at := "", len(k.text)
	if i, ok := k.stated[u.from]; ok {
		text, at = k.out.Facts[i].Text, k.out.Facts[i].at
	}
	k.state(u.path, value, text, "It is taken as "+u.note+".", at)
}

// knows says whether a fact is told or follows.
func (k known) knows(path string) bool {
	_, ok := k.j.Value(path)
	return ok
}

// is says whether a choice is known to be one of the values, or a flag to be yes or no.
func (k known) is(path string, values ...string) bool {
	v, _ := k.j.Value(path)
	switch v := v.(type) {
	case string:
		return slices.Contains(values, v)
	case bool:
		return slices.Contains(values, map[bool]string{true: "yes", false: "no"}[v])
	}
	return false
}

// above and below say whether a quantity is known to lie there, in the unit of its fact.
func (k known) above(path string, n float64) bool {
	v, ok := k.number(path)
	return ok && v > n
}

func (k known) below(path string, n float64) bool {
	v, ok := k.number(path)
	return ok && v < n
}

func (k known) number(path string) (float64, bool) {
	v, ok := k.j.Value(path)
	n, isNumber := v.(float64)
	return n, ok && isNumber
}

// speaks says whether one of the words stands in the text, in whatever form.
func (k known) speaks(words map[string]bool) bool {
	return slices.ContainsFunc(k.items, func(it item) bool { return it.kind == aWord && (words[it.text] || words[it.stem]) })
}

// frost says whether it freezes where it is placed.
func (k known) frost() bool {
	return k.below("weather.low", freezing) || k.below("weather.air", freezing) || k.below("protection.removal_outside", freezing) || k.is("ground.state", "frozen")
}

const freezing = 32 // °F
