package wording

import (
	"cmp"
	"slices"
	"strings"

	"github.com/blevesearch/snowballstem"
	"github.com/blevesearch/snowballstem/english"
)

// Feature is one property of a sentence and how often it has it. The hash stands for its name: among the hundred thousand
// features of a corpus about one pair shares a hash, which does no harm.
type Feature struct {
	Hash  uint32
	Count float32
	Block uint8
}

// Blocks of features. Each is brought to the same length before the blocks are laid side by side, so that the many pieces
// of words do not drown the few words.
const (
	BlockWords  = 0
	BlockPieces = 1
	Blocks      = 2
)

var (
	denials   = map[string]bool{"not": true, "no": true, "never": true, "nothing": true, "nobody": true, "none": true, "without": true, "nor": true, "neither": true, "hardly": true, "nowhere": true, "nope": true}
	links     = map[string]bool{",": true, "and": true, "but": true, "so": true, "since": true, "because": true, "when": true, "if": true, "then": true, "until": true, "unless": true, "though": true}
	contrasts = map[string]bool{"but": true, "though": true, "however": true, "yet": true, "actually": true, "although": true}
)

const (
	reach      = 4 // words after a denial that it is taken to deny
	pieceShort = 2
	pieceLong  = 5
)

// Turned gives the words of a sentence as features, those of a clause that denies something with a negative count: of two
// sentences that say the same, one of them with a "never", the words then speak against each other.
func Turned(text string) []Feature {
	var out []Feature
	clause, count := 0, float32(1)
	for _, w := range append(Words(Clean(text)), ",") {
		switch {
		case links[w]:
			for i := range out[clause:] {
				out[clause+i].Count = count
			}
			clause, count = len(out), 1
		case denials[w], len(out) == clause && (w == "who" || w == "why"): // who asks "who needs one" says that nobody does
			count = -1
		default:
			out = append(out, Feature{Hash: hash('w', Stem(w)), Block: BlockWords})
		}
	}
	return slices.DeleteFunc(merge(out), func(f Feature) bool { return f.Count == 0 })
}

// Negates says whether a sentence holds a word that denies.
func Negates(text string) bool {
	return slices.ContainsFunc(Words(Clean(text)), func(w string) bool { return denials[w] })
}

// Stem brings a word to its stem (the Snowball stemmer for English).
func Stem(word string) string {
	env := snowballstem.NewEnv(word)
	english.Stem(env)
	return env.Current()
}

// Features gives the features of a sentence in the order of their hashes, each once. Concepts may be nil.
func Features(text string, concepts *Concepts) []Feature {
	clean := Clean(text)
	var out []Feature
	add := func(block uint8, kind byte, parts ...string) {
		out = append(out, Feature{Hash: hash(kind, parts...), Count: 1, Block: block})
	}
	words := Words(clean)
	stems := make([]string, 0, len(words))
	denied, turned := 0, 0
	for i, w := range words {
		if w == "," {
			denied = 0
			continue
		}
		s := Stem(w)
		stems = append(stems, s)
		add(BlockWords, 'w', s)
		if denied > 0 {
			add(BlockWords, 'n', s)
			denied--
		}
		if denials[w] {
			denied = reach
		}
		if contrasts[w] && i > 1 {
			turned = len(stems)
		}
	}
	for i := 1; i < len(stems); i++ {
		add(BlockWords, 'b', stems[i-1], stems[i])
	}
	if turned > 0 {
		for _, s := range stems[turned:] {
			add(BlockWords, 'l', s)
		}
	}
	for _, c := range concepts.in(stems) {
		add(BlockWords, 'c', c)
	}
	for _, w := range strings.Fields(clean) {
		pieces(w, func(p string) { add(BlockPieces, 'p', p) })
	}
	return merge(out)
}

// pieces gives the runs of 2 to 5 bytes of a word with a space at either end.
func pieces(word string, give func(string)) {
	padded := " " + word + " "
	for n := pieceShort; n <= pieceLong; n++ {
		for i := 0; i+n <= len(padded); i++ {
			give(padded[i : i+n])
		}
	}
}

func merge(fs []Feature) []Feature {
	slices.SortFunc(fs, func(a, b Feature) int {
		return cmp.Or(cmp.Compare(a.Hash, b.Hash), cmp.Compare(a.Block, b.Block))
	})
	out := fs[:0]
	for _, f := range fs {
		if n := len(out); n > 0 && out[n-1].Hash == f.Hash {
			out[n-1].Count += f.Count
			continue
		}
		out = append(out, f)
	}
	return out
}

// hash is FNV-1a over the kind and the parts.
func hash(kind byte, parts ...string) uint32 {
	h := (uint32(2166136261) ^ uint32(kind)) * 16777619
	for _, p := range parts {
		for i := 0; i < len(p); i++ {
			h = (h ^ uint32(p[i])) * 16777619
		}
		h = (h ^ 0xff) * 16777619
	}
	return h
}
