package rulebook

import (
	"crypto/sha256"
	"encoding/binary"
	"maps"
	"math"
	"slices"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/job"
)

// memo remembers judgements. What a practice comes out as hangs on the facts it reads, itself or through figures, and on
// nothing else: while somebody types or answers, and from one job to the next, most of them stay as they were.
type memo struct {
	lock       sync.Mutex
	young, old map[memoKey]*Judgement
}

// memoKey names a practice and what is stated of the facts it hangs on.
type memoKey struct {
	practice string
	facts    [sha256.Size]byte
	tersely  bool
}

// mostRemembered is how many judgements a generation holds; the one before it is kept beside it. Some 10 MB in all.
const mostRemembered = 3000

func (m *memo) find(k memoKey) (*Judgement, bool) {
	m.lock.Lock()
	defer m.lock.Unlock()
	if one, ok := m.young[k]; ok {
		return one, true
	}
	one, ok := m.old[k]
	if ok {
		m.put(k, one)
	}
	return one, ok
}

func (m *memo) keep(k memoKey, one *Judgement) {
	m.lock.Lock()
	defer m.lock.Unlock()
	m.put(k, one)
}

func (m *memo) put(k memoKey, one *Judgement) {
	if m.young == nil || len(m.young) >= mostRemembered {
		m.young, m.old = make(map[memoKey]*Judgement, mostRemembered), m.young
	}
	m.young[k] = one
}

// HangsOn lists every fact that can bear on the judgement of a practice.
func (b *Book) HangsOn(p *Practice) []string {
	b.hangings()
	return p.hangs
}

// hangsOn lists every fact that can bear on the judgement of a practice: those that its rule names, in references or as the
// side of a number, those that its figures need, and those that rule one of them out.
func (b *Book) hangsOn(p *Practice) []string {
	facts := map[string]bool{}
	add := func(path string) {
		if name, _, isFigure := cutRange(path); isFigure {
			for _, need := range b.Figures.Needs(name) {
				facts[need] = true
			}
		} else if _, ok := b.Facts.Fact(path); ok {
			facts[path] = true
		}
	}
	for _, path := range p.Reads {
		add(path)
	}
	for _, name := range p.Costs {
		add("figure." + name)
	}
	ast.WalkTerms(p.module, func(t *ast.Term) bool {
		if s, ok := t.Value.(ast.String); ok {
			add(string(s))
		}
		return false
	})
	for path := range maps.Clone(facts) {
		f, ok := b.Facts.Fact(path)
		if !ok {
			continue
		}
		for _, i := range f.Implies {
			for _, then := range i.Then {
				facts[then.Fact.Path] = true
			}
		}
	}
	return keys(facts)
}

// said is what a job states, written for keys, by the place of the fact in the dictionary.
type said [][]byte

func (b *Book) said(j *job.Job) said {
	all := make(said, len(b.Facts.Facts()))
	room := make([]byte, 0, 4096)
	for _, s := range j.Stated {
		from := len(room)
		room = append(appendValue(room, s.Value), 0)
		all[s.Fact.Place] = room[from:len(room):len(room)]
	}
	return all
}

// keyOf writes what a job states of the facts a practice hangs on, in an order that does not hang on how it was said.
func keyOf(p *Practice, all said, tersely bool) memoKey {
	var room [1024]byte
	text := room[:0]
	for _, place := range p.hangsAt {
		if len(all[place]) > 0 {
			text = append(binary.LittleEndian.AppendUint16(text, uint16(place)), all[place]...)
		}
	}
	return memoKey{p.ID, sha256.Sum256(text), tersely}
}

func appendValue(text []byte, value any) []byte {
	number := func(v float64) { text = binary.LittleEndian.AppendUint64(text, math.Float64bits(v)) }
	switch v := value.(type) {
	case float64:
		number(v)
	case string:
		text = append(text, v...)
	case bool:
		if v {
			text = append(text, 1)
		} else {
			text = append(text, 2)
		}
	case []float64:
		text = binary.AppendUvarint(text, uint64(len(v)))
		for _, n := range v {
			number(n)
		}
	case []map[string]float64:
		text = binary.AppendUvarint(text, uint64(len(v)))
		for _, row := range v {
			for _, column := range slices.Sorted(maps.Keys(row)) {
				text = append(append(text, column...), 0)
				number(row[column])
			}
			text = append(text, 3)
		}
	}
	return text
}
