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
	if s.is("joints.made", "no") && !k.speaks(s.unsaidWords["steel"]) { // nobody leaves joints out because of steel that is not there
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
	s.computed(k)
	for _, u := range s.unsaidFacts {
		value := u.value
		if k.knows(u.fact.Path) && (u.instead == "" || !k.is(u.fact.Path, u.instead)) || !u.when(k) {
			continue
		}
		if u.like != nil {
			n, ok := k.number(u.like.Path)
			if !ok {
				continue
			}
			value = plainNumber(n) + " " + u.like.Unit
		}
		k.take(u.fact.Path, value, u.since, u.note)
	}
}

// take states it, unless it contradicts what is known.
func (k known) take(path, value, since, note string) {
	next := k.j.Clone()
	if next.Replace(k.d, path, value) != nil || next.Follow(k.d) != nil {
		return
	}
	*k.j = *next
	if i, ok := k.stated[path]; ok { // said, and meant otherwise
		k.out.Facts[i].Value = value
		return
	}
	text, at := "", len(k.text)
	if i, ok := k.stated[since]; ok {
		text, at = k.out.Facts[i].Text, k.out.Facts[i].at
	}
	k.state(path, value, text, "It is taken as "+note+".", at)
	k.out.Facts[len(k.out.Facts)-1].Taken = true
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

// number gives a quantity that is known, in the unit of its fact.
func (k known) number(path string) (float64, bool) {
	v, ok := k.j.Value(path)
	n, isNumber := v.(float64)
	return n, ok && isNumber
}

// speaks says whether one of the words stands in the text, in whatever form. What is denied, and a wall that a slab only lies
// beside, is not spoken of.
func (k known) speaks(words map[string]bool) bool {
	for i := range k.items {
		it := &k.items[i]
		if it.kind == aWord && (words[it.text] || words[it.stem]) && it.negBy < 0 && !(heldUp[it.text] && k.beside(i)) || unitIn(it, words) {
			return true
		}
	}
	return false
}

// unitIn says whether the item is a quantity in a unit that stands in the list, as gal/yd3 does.
func unitIn(it *item, words map[string]bool) bool {
	return it.kind == aQuantity && it.num.low > 0 && slices.ContainsFunc(it.units, func(u string) bool { return words[u] })
}
