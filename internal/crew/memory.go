package crew

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"hearsay/internal/store"
)

// Memory is what a crew has been told and has answered, by person and belief.
type Memory struct {
	records map[key]*record
}

type key struct{ person, belief string }

// record is one person's history with one belief.
type record struct {
	heard   time.Time // told last
	reviews []Review  // one for each session that asked, in time
}

// Remember makes a memory of kept sessions and answers. Somebody who was asked about a belief several times in one session
// knew it where every answer was right.
func Remember(sessions []store.CrewSession, answers []store.CrewAnswer) *Memory {
	m := &Memory{map[key]*record{}}
	held := map[string]time.Time{}
	for _, s := range sessions {
		held[s.Code] = s.Held
		for _, p := range s.Present {
			for _, b := range s.Beliefs {
				if r := m.at(p, b); s.Held.After(r.heard) {
					r.heard = s.Held
				}
			}
		}
	}
	type asking struct {
		key
		code string
	}
	right := map[asking]bool{}
	for _, a := range answers {
		k := asking{key{strings.ToLower(a.Person), a.Belief}, a.Code}
		before, seen := right[k]
		right[k] = a.Correct && (!seen || before)
		m.at(a.Person, a.Belief)
	}
	for k, ok := range right {
		r := m.records[k.key]
		r.reviews = append(r.reviews, Review{held[k.code], ok})
	}
	for _, r := range m.records {
		slices.SortFunc(r.reviews, func(a, b Review) int { return a.At.Compare(b.At) })
	}
	return m
}

func (m *Memory) at(person, belief string) *record {
	k := key{strings.ToLower(person), belief}
	if m.records[k] == nil {
		m.records[k] = &record{}
	}
	return m.records[k]
}

// Due is something that somebody should be asked again.
type Due struct {
	Person  string    `json:"person"` // in lower case
	Belief  string    `json:"belief"`
	Due     time.Time `json:"due"`
	Asked   int       `json:"asked"` // sessions in which it was asked
	Lapses  int       `json:"lapses"`
	Believe bool      `json:"believes"` // the last answer was wrong
}

// Due lists what falls due up to a time, the longest overdue first.
func (m *Memory) Due(until time.Time) []Due {
	list := []Due{}
	for k, r := range m.records {
		d := Due{Person: k.person, Belief: k.belief, Asked: len(r.reviews)}
		if len(r.reviews) > 0 {
			card := schedule(r.reviews)
			d.Due, d.Lapses, d.Believe = card.Due, int(card.Lapses), !r.reviews[len(r.reviews)-1].Right
		} else {
			d.Due = r.heard.Add(firstAsking)
		}
		if !d.Due.After(until) {
			list = append(list, d)
		}
	}
	slices.SortFunc(list, func(a, b Due) int {
		return cmp.Or(a.Due.Compare(b.Due), cmp.Compare(a.Belief, b.Belief), cmp.Compare(a.Person, b.Person))
	})
	return list
}

// Progress is how a crew stands with one belief.
type Progress struct {
	Belief string `json:"belief"`
	Told   int    `json:"told"`      // people who heard it
	Asked  int    `json:"asked"`     // people who were asked
	First  int    `json:"first"`     // of them, wrong at the first asking
	Now    int    `json:"now"`       // wrong at the last
	Back   int    `json:"came_back"` // wrong after having been right
}

// Progress gives how the crew stands with each belief it was told or asked about, the most held first.
func (m *Memory) Progress() []Progress {
	all := map[string]*Progress{}
	for k, r := range m.records {
		p := all[k.belief]
		if p == nil {
			p = &Progress{Belief: k.belief}
			all[k.belief] = p
		}
		if !r.heard.IsZero() {
			p.Told++
		}
		if len(r.reviews) == 0 {
			continue
		}
		p.Asked++
		p.First += count(!r.reviews[0].Right)
		p.Now += count(!r.reviews[len(r.reviews)-1].Right)
		p.Back += count(cameBack(r.reviews))
	}
	list := make([]Progress, 0, len(all))
	for _, p := range all {
		list = append(list, *p)
	}
	slices.SortFunc(list, func(a, b Progress) int {
		return cmp.Or(cmp.Compare(b.Now, a.Now), cmp.Compare(b.First, a.First), cmp.Compare(a.Belief, b.Belief))
	})
	return list
}

func cameBack(reviews []Review) bool {
	knew := false
	for _, r := range reviews {
		if knew && !r.Right {
			return true
		}
		knew = knew || r.Right
	}
	return false
}

func count(b bool) int {
	if b {
		return 1
	}
	return 0
}

// Rank gives what a crew keeps getting wrong, for Choice.Rank: the more people hold it the higher, and higher where it came
// back.
func (m *Memory) Rank() map[string]int {
	rank := map[string]int{}
	for _, p := range m.Progress() {
		if n := 2*p.Now + p.Back; n > 0 {
			rank[p.Belief] = n
		}
	}
	return rank
}

// AskedBefore gives the names of every question that a crew was asked.
func AskedBefore(sessions []store.CrewSession) (map[string]bool, error) {
	asked := map[string]bool{}
	for _, s := range sessions {
		if s.Quiz == "" {
			continue
		}
		z, err := ReadQuiz([]byte(s.Quiz))
		if err != nil {
			return nil, err
		}
		for _, q := range z.Questions {
			asked[q.ID] = true
		}
	}
	return asked, nil
}
