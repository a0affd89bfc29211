package belief

import "strings"

// Copy is a sentence that adds little to another of the same belief and stance.
type Copy struct {
	Sentence, Of Sentence
	Shared       float64 // of their pieces, from 0 to 1
}

// Shared pieces of more than this share make a sentence a near copy: it teaches nothing the other does not.
const NearCopy = 0.45

const pieceLength = 4

// Copies finds the near copies among sentences, each beside an earlier one of the same belief and stance.
func Copies(sentences []Sentence) []Copy {
	type group struct {
		belief string
		stance Stance
	}
	seen := map[group][]int{}
	pieces := make([]map[string]bool, len(sentences))
	var out []Copy
	for i, s := range sentences {
		pieces[i] = piecesOf(s.Text)
		g := group{s.Belief, s.Stance}
		for _, j := range seen[g] {
			if share := shared(pieces[i], pieces[j]); share > NearCopy {
				out = append(out, Copy{s, sentences[j], share})
				break
			}
		}
		seen[g] = append(seen[g], i)
	}
	return out
}

// piecesOf gives every run of four letters of a text, whatever its punctuation.
func piecesOf(text string) map[string]bool {
	plain := strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9':
			return r
		case r >= 'A' && r <= 'Z':
			return r + 'a' - 'A'
		}
		return ' '
	}, text)
	plain = " " + strings.Join(strings.Fields(plain), " ") + " "
	out := map[string]bool{}
	for i := 0; i+pieceLength <= len(plain); i++ {
		out[plain[i:i+pieceLength]] = true
	}
	return out
}

// shared gives the share of pieces that two sets have in common.
func shared(a, b map[string]bool) float64 {
	both := 0
	for p := range a {
		if b[p] {
			both++
		}
	}
	return float64(both) / float64(max(len(a)+len(b)-both, 1))
}
