// Package belief owns the corpus of beliefs, the index that finds the belief a sentence states or denies, and the verdict
// on the sentence. It alone imports bleve.
package belief

//go:generate go run ./generate

import "slices"

// Verdict is what can be said about a sentence.
type Verdict string

// Verdicts on a claim.
const (
	Myth    Verdict = "myth"    // wrong as said
	Holds   Verdict = "holds"   // right as said
	Depends Verdict = "depends" // right under a condition that the entry names
	Unknown Verdict = "unknown" // not answered
)

// Stance tells whether a sentence says what the belief says, or the opposite.
type Stance string

// Stances of a sentence to a belief.
const (
	Asserts Stance = "asserts"
	Denies  Stance = "denies"
)

// On gives the verdict on a sentence that takes this stance to a belief of verdict v: denying a myth holds, denying
// what holds is a myth, and what depends stays so either way.
func (v Verdict) On(s Stance) Verdict {
	if s == Denies {
		switch v {
		case Myth:
			return Holds
		case Holds:
			return Myth
		}
	}
	return v
}

// Entry answers one belief. Texts hold quantities in braces, {4 in}, to be printed in either unit system.
type Entry struct {
	ID        string // topic/name
	Belief    string // the belief in plain words
	Verdict   Verdict
	DependsOn string   // only of Depends: the end of "It depends:"
	Practices []string // the rules behind it, topic/name
	Topics    []string
	Season    string // any, cold or hot: when a talk on it is due
	Sources   []Source
	Figures   []string          // computed when the sentence states what they need
	Ranges    []Range           // claimed numbers that can be held against a figure
	Reads     map[string]string // fact to the fact it is read from: a volume said here is that of the load

	Fact, Saying, Why, Do, Say string
	Numbers                    []string

	// For a talk to a crew; an entry may be without them.
	Show     string   // what to do in front of the crew
	Remember string   // the number to take along
	Ask      []string // questions to the crew

	Said, Denied Voices

	Pack     string // the pack that wrote it; "" where it is built in
	Replaces bool   // the pack wrote it in the place of the built-in one
}

// Source is what an answer rests on.
type Source struct {
	Work  string `yaml:"work" json:"work"` // an id of rules/sources.yaml
	Where string `yaml:"where" json:"where,omitempty"`
	Basis string `yaml:"basis" json:"basis"` // published, common practice or memory
}

// Range lets a number claimed in a sentence be held against a computed figure.
type Range struct {
	Figure string            `yaml:"figure"`
	Words  []string          `yaml:"words"` // one of them stands near the number
	Given  map[string]string `yaml:"given"` // facts that the sentence leaves unsaid: water.added: 1 gal
}

// Voices are sentences by who says them: homeowner, crew, office.
type Voices map[string][]string

// voiceNames are the voices the corpus is written in, in the order in which they are counted.
var voiceNames = [...]string{"homeowner", "crew", "office"}

// VoiceNames gives the voices the corpus is written in.
func VoiceNames() []string { return slices.Clone(voiceNames[:]) }
