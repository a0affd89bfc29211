package wording

import "strings"

// Fields are the features of a sentence as texts for a search index: what is looked up is separated by spaces.
type Fields struct {
	Words, Stems, Pieces, Concepts string
}

// FieldsOf writes the features of a sentence as texts. Concepts may be nil.
func FieldsOf(text string, concepts *Concepts) Fields {
	clean := Clean(text)
	var words, stems, parts []string
	for _, w := range Words(clean) {
		if w != "," {
			words = append(words, w)
			stems = append(stems, Stem(w))
		}
	}
	for _, w := range strings.Fields(clean) {
		pieces(w, func(p string) {
			if len(p) > pieceShort {
				parts = append(parts, strings.ReplaceAll(p, " ", "_"))
			}
		})
	}
	var names []string
	for _, c := range concepts.in(stems) {
		names = append(names, strings.ReplaceAll(c, " ", "_"))
	}
	return Fields{strings.Join(words, " "), strings.Join(stems, " "), strings.Join(parts, " "), strings.Join(names, " ")}
}
