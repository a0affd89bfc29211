package rulebook

import (
	"fmt"

	"hearsay/internal/limit"
	"hearsay/internal/quantity"
)

// changed says what packs changed in a practice: the rule itself, its being switched off, the limits it reads, the facts it
// reads, and the works it rests on.
func (b *Book) changed(p *Practice, cites []limit.Cite) []string {
	var list []string
	switch {
	case p.Pack != "" && p.Replaces:
		list = append(list, "rule of pack "+p.Pack+", in the place of another")
	case p.Pack != "":
		list = append(list, "rule of pack "+p.Pack)
	}
	if p.Off != "" {
		list = append(list, p.Off)
	}
	if len(b.packs) == 0 {
		return list
	}
	seen := map[string]bool{}
	for _, c := range cites {
		if l, ok := b.Limits.Find(c.Limit); ok && !seen[c.Limit] {
			seen[c.Limit] = true
			list = append(list, changedLimit(l))
		}
		if w, ok := b.Limits.Work(c.Source); ok && w.Was != nil && !seen[w.ID] {
			seen[w.ID] = true
			list = append(list, fmt.Sprintf("the work %s: named anew by pack %s", w.ID, w.Pack))
		}
	}
	for _, path := range b.factsOf(p) {
		if f, ok := b.Facts.Fact(path); ok && f.Was != nil {
			list = append(list, fmt.Sprintf("what %s means: by pack %s", f.Name, f.Pack))
		}
	}
	return list
}

func changedLimit(l *limit.Limit) string {
	if l.Was == nil {
		return fmt.Sprintf("%s: set by pack %s", l.What, l.Pack)
	}
	unit := ""
	if _, table := l.Value.(map[string]any); !table && l.Unit != "" {
		unit = " " + quantity.Symbol(l.Unit)
	}
	return fmt.Sprintf("%s: %v%s by pack %s, built in %v%s", l.What, l.Value, unit, l.Pack, l.Was.Value, unit)
}

// factsOf lists the facts that a practice reads, itself or through its figures.
func (b *Book) factsOf(p *Practice) []string {
	facts := map[string]bool{}
	for _, path := range p.Reads {
		name, isFigure := cutFigure(path)
		if !isFigure {
			facts[path] = true
			continue
		}
		for _, need := range b.Figures.Needs(name) {
			facts[need] = true
		}
	}
	return keys(facts)
}
