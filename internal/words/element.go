package words

import (
	"fmt"
	"slices"
	"strings"
)

type element struct {
	what     byte       // 'w' word, or '#', '@', '?' for @?, 'x' size, '*'
	alts     [][]string // stems
	ids      []int32    // of the alternatives of one word
	phrases  [][]int32  // of the longer ones
	optional bool
}

// target says whether the element is the number, time or size that the pattern is about.
func (e *element) target() bool { return e.what != 'w' && e.what != 'n' && e.what != 'r' }

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
