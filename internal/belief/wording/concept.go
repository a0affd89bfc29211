package wording

import "strings"

// Concepts knows the trade's words for the same thing: "mud" is concrete, "powder" is cement. A word may mean several things.
type Concepts struct {
	names map[string][]string // by stems joined with a space
	long  int                 // stems in the longest phrase
}

// NewConcepts takes the words and phrases of every concept by its name.
func NewConcepts(words map[string][]string) *Concepts {
	c := &Concepts{names: map[string][]string{}}
	for name, phrases := range words {
		for _, phrase := range phrases {
			key, n := c.key(phrase)
			if n == 0 {
				continue
			}
			c.long = max(c.long, n)
			c.names[key] = append(c.names[key], name)
		}
	}
	return c
}

func (c *Concepts) key(phrase string) (string, int) {
	var stems []string
	for _, w := range Words(Clean(phrase)) {
		if w != "," {
			stems = append(stems, Stem(w))
		}
	}
	return strings.Join(stems, " "), len(stems)
}

// in gives the concepts named by a run of stems, as often as they are named.
func (c *Concepts) in(stems []string) []string {
	if c == nil {
		return nil
	}
	var out []string
	for i := range stems {
		key := ""
		for n := 1; n <= c.long && i+n <= len(stems); n++ {
			if n > 1 {
				key += " "
			}
			key += stems[i+n-1]
			out = append(out, c.names[key]...)
		}
	}
	return out
}
