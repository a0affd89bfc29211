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
	index    int       // among all patterns
	needs    [][]int32 // for each word that must be there, the ids it may begin with
}

// points is the weight that was written, else the number of words.
func (p *pattern) points() float64 {
	if p.weight > 0 {
		return p.weight
	}
	return float64(p.literals)
}

type element struct {
	what     byte       // 'w' word, or '#', '@', '?' for @?, 'x' size, '*'
	alts     [][]string // stems
	ids      []int32    // of the alternatives of one word
	phrases  [][]int32  // of the longer ones
	optional bool
}

// target says whether the element is the number, time or size that the pattern is about.
func (e *element) target() bool { return e.what != 'w' && e.what != 'n' && e.what != 'r' }

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
	best := 1 << 30
	for i := range p.elements {
		e := &p.elements[i]
		v.number(e)
		if e.what != 'w' || e.optional {
			continue
		}
		p.literals++
		p.needs = append(p.needs, e.first())
		if cost := v.commonness(e); cost < best {
			best, p.anchor = cost, i
		}
	}
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

// number gives the element the ids of its words.
func (v *vocabulary) number(e *element) {
	for _, alt := range e.alts {
		ids := make([]int32, len(alt))
		for i, stem := range alt {
			ids[i] = v.id(stem)
		}
		switch len(ids) {
		case 0:
		case 1:
			e.ids = append(e.ids, ids[0])
		default:
			e.phrases = append(e.phrases, ids)
		}
	}
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

// first lists the ids that the element may begin with.
func (e *element) first() []int32 {
	first := slices.Clone(e.ids)
	for _, p := range e.phrases {
		first = append(first, p[0])
	}
	return first
}

// commonness says how often the element will be met: patterns are looked for from their rarest word.
func (v *vocabulary) commonness(e *element) int {
	cost := len(e.alts)
	for _, alt := range e.alts {
		if len(alt) > 0 && v.small[alt[0]] {
			cost += 40
		}
	}
	return cost
}

func (v *vocabulary) parseElement(field string) ([]element, error) {
	switch field {
	case "**":
		return []element{{what: '+'}}, nil
	case "#", "@", "*":
		return []element{{what: field[0]}}, nil
	case "#u":
		return []element{{what: 'u'}}, nil
	case "BAR":
		return []element{{what: 'r'}}, nil
	case "N":
		return []element{{what: 'n'}}, nil
	case "@?":
		return []element{{what: '?'}}, nil
	case "LABEL":
		return []element{{what: 'w', alts: [][]string{{labelStem}}}}, nil
	case "<size>":
		return []element{{what: 'x', alts: [][]string{{sizeKey}}}}, nil
	}
	e := element{what: 'w'}
	if word, ok := strings.CutPrefix(field, "="); ok && !strings.Contains(field, "|") {
		e.alts = [][]string{{"=" + word}}
		return []element{e}, nil
	}
	if strings.HasPrefix(field, "[") && strings.HasSuffix(field, "]") {
		e.optional = true
		field = field[1 : len(field)-1]
	}
	if !strings.Contains(field, "|") && !strings.Contains(field, "<") {
		words := v.stems(field)
		if e.optional || len(words) == 1 {
			e.alts = [][]string{words}
			return []element{e}, nil
		}
		var es []element
		for _, w := range words {
			es = append(es, element{what: 'w', alts: [][]string{{w}}})
		}
		return es, nil
	}
	for alt := range strings.SplitSeq(field, "|") {
		if name, ok := strings.CutPrefix(alt, "<"); ok {
			class, ok := v.classes[strings.TrimSuffix(name, ">")]
			if !ok {
				return nil, fmt.Errorf("no class is called %s", alt)
			}
			e.alts = append(e.alts, class...)
			continue
		}
		if strings.HasPrefix(alt, "=") {
			e.alts = append(e.alts, []string{alt})
			continue
		}
		e.alts = append(e.alts, v.stems(alt))
	}
	return []element{e}, nil
}

// stems gives the stems of the words in a text, taken apart as a description is.
func (v *vocabulary) stems(text string) []string {
	r := &reading{Reader: &Reader{v: v}, text: text, ts: scan(text)}
	var out []string
	for i := 0; i < len(r.ts); {
		t := r.ts[i]
		if n := len(r.items); t.letters {
			if j := r.joinedWord(i); j > i {
				if len(r.items) > n {
					out = append(out, r.items[n].stem)
				}
				i = j
				continue
			}
		}
		switch {
		case t.letters:
			s := v.stem(t.text)
			if neg, ok := v.contraction(t.text); ok {
				s = neg
			}
			out = append(out, s)
		case t.digits && text1(r.ts, i+1) == "day":
			out = append(out, testAge(digits(t.text)))
			i++
		case t.digits:
			out = append(out, t.text)
		case t.text == "%":
			out = append(out, "percent")
		}
		i++
	}
	return out
}

func text1(ts []token, i int) string {
	if i < len(ts) && ts[i].glued {
		return ts[i].text
	}
	return ""
}

func digits(s string) float64 {
	var f float64
	_, _ = fmt.Sscanf(s, "%g", &f)
	return f
}
