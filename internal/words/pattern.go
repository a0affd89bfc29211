package words

import (
	"fmt"
	"slices"
	"strings"
)

// A pattern is a way of saying something, as words.yaml writes it: words in any of their forms, with
//
//	#         the number that is meant        @        a time or a day (@? also a bare number of hours)
//	<size>    a size such as 24x24            *        up to four other words
//	**        up to nine words and numbers, commas too
//	#u        the same, said with its unit    N        another number
//	LABEL     the number of a truck or a bay  BAR      another number that is a bar size
//	a|b       either word                     [a]      a word that may be missing
//	<name>    any phrase of a class           NOT …    only when it is denied
//	~…        the same when it is denied      …^9      with this weight
//	=word     the word in this form only
//
// Small words (articles, "is", "about") may stand between any two elements and are left out of the pattern.
type pattern struct {
	text     string
	elements []element
	anchor   int // the first element that is a word and must be there
	literals int
	weight   float64 // 0 where none was written
	negated  bool
	blind    bool      // to negation
	far      bool      // holds a **
	needs    [][]int32 // for each word that must be there beside the anchor, the ids it may begin with
}

// points is the weight that was written, else the number of words.
func (p *pattern) points() float64 {
	if p.weight > 0 {
		return p.weight
	}
	return float64(p.literals)
}

// united says whether the number of the pattern must have its unit.
func (p *pattern) united() bool {
	return slices.ContainsFunc(p.elements, func(e element) bool { return e.what == 'u' })
}

// sizeKey is where the index keeps the patterns that are looked for from a size.
const sizeKey = "<size>"

// parsePattern reads one pattern of words.yaml.
func (v *vocabulary) parsePattern(text string) (*pattern, error) {
	p := &pattern{text: text, anchor: -1}
	body := strings.TrimSpace(text)
	if at := strings.LastIndexByte(body, '^'); at >= 0 {
		if _, err := fmt.Sscanf(body[at+1:], "%g", &p.weight); err != nil {
			return nil, fmt.Errorf("%q: a weight is a number after ^", text)
		}
		body = body[:at]
	}
	if rest, ok := strings.CutPrefix(body, "~"); ok {
		p.blind, body = true, rest
	}
	if rest, ok := strings.CutPrefix(body, "NOT "); ok {
		p.negated, body = true, rest
	}
	for field := range strings.FieldsSeq(body) {
		es, err := v.parseElement(field)
		if err != nil {
			return nil, fmt.Errorf("%q: %w", text, err)
		}
		p.elements = append(p.elements, es...)
	}
	if err := p.bounded(); err != nil {
		return nil, err
	}
	best := 1 << 30
	for i := range p.elements {
		e := &p.elements[i]
		v.number(e)
		p.far = p.far || e.what == '+'
		if e.what != 'w' || e.optional {
			continue
		}
		p.literals++
		if cost := v.commonness(e); cost < best {
			best, p.anchor = cost, i
		}
	}
	for i := range p.elements { // beside the anchor, at which it is looked for
		if e := &p.elements[i]; e.what == 'w' && !e.optional && i != p.anchor {
			p.needs = append(p.needs, e.first())
		}
	}
	slices.SortStableFunc(p.needs, func(a, b []int32) int { return len(a) - len(b) }) // the rarest is looked for first
	for i, e := range p.elements {
		if p.anchor < 0 && e.what == 'x' {
			p.anchor = i // a size is rare enough to look for
		}
	}
	if p.anchor < 0 {
		return nil, fmt.Errorf("%q has no word that must be there", text)
	}
	return p, nil
}

// A pattern of more elements, or with more places that may be filled in several ways, takes too long to match.
const (
	mostElements = 24
	mostGaps     = 5
)

func (p *pattern) bounded() error {
	gaps := 0
	for _, e := range p.elements {
		if e.what == '*' || e.what == '+' || e.optional {
			gaps++
		}
	}
	if len(p.elements) > mostElements || gaps > mostGaps {
		return fmt.Errorf("%.80q is too long: at most %d words, %d of them * or ** or in brackets", p.text, mostElements, mostGaps)
	}
	return nil
}

// near is what the pattern is worth as a phrase beside a number.
func (p *pattern) near() float64 {
	if p.weight > 0 {
		return p.weight
	}
	return pointsNear + pointsWord*float64(p.literals-1)
}

// id numbers a stem.
func (v *vocabulary) id(stem string) int32 {
	n, ok := v.ids[stem]
	if !ok {
		n = int32(len(v.ids) + 1)
		v.ids[stem] = n
	}
	return n
}
