package rulebook

import (
	"slices"
	"sync"

	"hearsay/internal/limit"
)

// cites gathers what a judgement rests on: the limits its rule reads and the sources of the figures it reads. Where the
// practice does not concern the job its figures are not computed, and their own sources stand for what they would read.
func (c *court) cites(one *Judgement) []limit.Cite {
	if one.Status == NotHere {
		return one.Practice.rests
	}
	cites := append(c.cited[:0], one.Practice.limits...)
	for _, name := range one.Practice.figures {
		cites = withCites(cites, c.sheet.Result(name).Cites)
	}
	if c.cited = cites; len(cites) == 0 {
		return one.Practice.rests
	}
	return c.book.cited.same(one.Practice, cites)
}

// citations keeps the lists of citations made, so that lists which are the same are so in memory, too: there are few.
type citations struct {
	lock  sync.Mutex
	lists map[*Practice][][]limit.Cite
}

func (k *citations) same(p *Practice, cites []limit.Cite) []limit.Cite {
	k.lock.Lock()
	defer k.lock.Unlock()
	for _, list := range k.lists[p] {
		if slices.Equal(list, cites) {
			return list
		}
	}
	if k.lists == nil {
		k.lists = map[*Practice][][]limit.Cite{}
	}
	list := slices.Clone(cites)
	k.lists[p] = append(k.lists[p], list)
	return list
}

// restings finds what a practice rests on in every job.
func (b *Book) restings(p *Practice) {
	for _, path := range p.Limits {
		if l, ok := b.Limits.Find(path); ok {
			p.limits = withCites(p.limits, []limit.Cite{l.Cite})
		}
	}
	p.rests = slices.Clone(p.limits)
	for _, name := range p.figures {
		f, _ := b.Figures.Find(name)
		p.rests = withCites(p.rests, f.Cites)
	}
	if len(p.rests) == 0 { // it compares with no number of any work
		p.rests = []limit.Cite{{Source: "trade", Basis: limit.Practice}}
	}
}

// Rests lists what a practice rests on, whatever the job: the limits its rule reads and the sources of the figures it reads, or
// the common practice of the trade where it reads none.
func (b *Book) Rests(p *Practice) []limit.Cite {
	b.hangings()
	return p.rests
}

func withCites(cites, more []limit.Cite) []limit.Cite {
	for _, one := range more {
		if !slices.Contains(cites, one) {
			cites = append(cites, one)
		}
	}
	return cites
}
