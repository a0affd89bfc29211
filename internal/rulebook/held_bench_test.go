package rulebook

import (
	"math"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/figure"
	"hearsay/internal/limit"
	"hearsay/rules"
)

// cell is one number of a limit: the limit's own, or one of its table.
type cell struct {
	path  string // limit.topic.name
	keys  []string
	value float64
}

// name is how the files of edges call it: "most_slump / driveway", with the topic before it.
func (c cell) name() string {
	return strings.Join(append([]string{strings.TrimPrefix(c.path, "limit.")}, c.keys...), " / ")
}

// cellsOf lists the numbers of a limit. Words of a table are none.
func cellsOf(l *limit.Limit) []cell {
	var all []cell
	var walk func(v any, keys []string)
	walk = func(v any, keys []string) {
		switch v := v.(type) {
		case float64:
			all = append(all, cell{l.Path(), keys, v})
		case map[string]any:
			for _, k := range keysInOrder(v) {
				walk(v[k], append(slices.Clone(keys), k))
			}
		}
	}
	walk(l.Value, nil)
	return all
}

func keysInOrder(table map[string]any) []string {
	names := map[string]bool{}
	for k := range table {
		names[k] = true
	}
	return keys(names)
}

// changes gives the values that a number is changed to on one side of it: 5 % away, and a whole small number a step away too.
func (c cell) changes(up bool) []float64 {
	sign := 1.0
	if !up {
		sign = -1
	}
	var all []float64
	if c.value != 0 {
		all = append(all, c.value+sign*0.05*math.Abs(c.value))
	}
	if c.value == math.Trunc(c.value) && math.Abs(c.value) <= 30 {
		all = append(all, c.value+sign)
	}
	return all
}

// bench is a rulebook with limits of its own, of which one at a time is changed. Each limit is cited by its path, so that what
// a computation read can be seen. It is for one goroutine.
type bench struct {
	book    *Book
	rules   map[string][]*ast.Rule
	readers map[string][]*Practice // by limit
}

func newBench(b *Book) (*bench, error) {
	limits, err := limit.Load(rules.Files)
	if err != nil {
		return nil, err
	}
	for _, l := range limits.Limits() {
		l.Cite.Limit = l.Path()
	}
	figures, err := figure.New(limits)
	if err != nil {
		return nil, err
	}
	own := &bench{readers: map[string][]*Practice{}, book: &Book{Facts: b.Facts, Limits: limits, Figures: figures,
		practices: b.practices, byID: b.byID, modules: b.modules}}
	own.book.plain = own.book.plains()
	own.rules = own.book.rulesByName()
	for _, p := range b.practices {
		for _, path := range p.Limits {
			own.readers[path] = append(own.readers[path], p)
		}
	}
	return own, nil
}

// with computes something while a number is changed.
func (b *bench) with(c cell, value float64, compute func()) {
	b.set(c, value)
	defer b.set(c, c.value)
	compute()
}

func (b *bench) set(c cell, value float64) {
	l, _ := b.book.Limits.Find(c.path)
	if len(c.keys) == 0 {
		l.Value = value
	} else {
		table := l.Value.(map[string]any)
		for _, k := range c.keys[:len(c.keys)-1] {
			table = table[k].(map[string]any)
		}
		table[c.keys[len(c.keys)-1]] = value
	}
	if len(b.readers[c.path]) == 0 {
		return
	}
	reader := &plainReader{limits: b.book.Limits.Data(), rules: b.rules, read: map[string]*term{}}
	for _, p := range b.readers[c.path] {
		b.book.plain[p.ID], _ = reader.practice(p)
	}
}
