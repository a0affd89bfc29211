package words

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/document"
	"hearsay/internal/folder"
)

// vocabulary is what corpus/words.yaml says about language, made ready for use.
type vocabulary struct {
	numbers       map[string]float64
	fractions     map[string]fraction
	units         map[string][]string
	unitWords     int // of the longest unit
	prefixes      map[string][]string
	months        map[string]int
	forms         map[string]string
	fillers       map[string]bool
	small         map[string]bool  // stems of the fillers
	ids           map[string]int32 // of stems
	starts        map[string]bool  // words that a number, a time or a day may begin with
	turns         map[string]bool
	whole         map[string]bool
	countable     map[string]bool
	labels        map[string]bool
	counted       map[string]bool
	testWords     map[string]bool
	lumber        map[string]bool
	abbreviations map[string]bool
	joined        map[string]string
	negators      map[string][][]string // by first word
	notNegators   map[string][][]string
	unsure        map[string][][]string
	classes       map[string][][]string
}

type fraction struct {
	value   float64
	ordinal bool // also an ordinal ("third"), so it needs a count before it
}

// vocabularyYAML is corpus/words.yaml. Keys that belong to other readers of the file are left alone.
type vocabularyYAML struct {
	Numbers       map[string]float64           `yaml:"numbers"`
	Fractions     map[string]float64           `yaml:"fractions"`
	Ordinals      map[string]float64           `yaml:"ordinal_fractions"`
	Units         []unitYAML                   `yaml:"units"`
	Prefixes      map[string]string            `yaml:"prefixes"`
	Months        map[string]int               `yaml:"months"`
	Forms         map[string][]string          `yaml:"forms"`
	Apart         []string                     `yaml:"apart"`
	Fillers       []string                     `yaml:"fillers"`
	Turns         []string                     `yaml:"turns"`
	Whole         []string                     `yaml:"whole"`
	Countable     []string                     `yaml:"countable"`
	Labels        []string                     `yaml:"labels"`
	Counted       []string                     `yaml:"counted"`
	TestWords     []string                     `yaml:"test_words"`
	Lumber        []string                     `yaml:"lumber"`
	Abbreviations []string                     `yaml:"abbreviations"`
	Joined        map[string]string            `yaml:"joined"`
	Negators      []string                     `yaml:"negators"`
	NotNegators   []string                     `yaml:"not_negators"`
	Unsure        []string                     `yaml:"unsure"`
	Classes       map[string][]string          `yaml:"classes"`
	Ignore        []string                     `yaml:"ignore"`
	Roles         document.Ordered[roleYAML]   `yaml:"roles"`
	Events        document.Ordered[[]string]   `yaml:"events"`
	Spans         []spanYAML                   `yaml:"spans"`
	Echoes        []echoYAML                   `yaml:"echoes"`
	Shares        map[string][]string          `yaml:"shares"`
	Topics        map[string]topicYAML         `yaml:"topics"`
	Facts         document.Ordered[sayingYAML] `yaml:"facts"`
}

type unitYAML struct {
	Say []string `yaml:"say"`
	Is  []string `yaml:"is"`
}

type roleYAML struct {
	Before []string `yaml:"before"` // said before the number
	After  []string `yaml:"after"`  // said after it
	Silent float64  `yaml:"silent"` // points of its facts where no role is said
}

// spanYAML is a fact that is the time from one event to another.
type spanYAML struct {
	Fact string `yaml:"fact"`
	From string `yaml:"from"`
	To   string `yaml:"to"`
}

// echoYAML is a phrase that says that two facts have the same value ("that's what we ordered").
type echoYAML struct {
	One   string   `yaml:"one"`
	Other string   `yaml:"other"`
	Said  []string `yaml:"said"`
}

type topicYAML struct {
	Near []string `yaml:"near"`
	Said []string `yaml:"said"`
}

// sayingYAML is how people state one fact.
type sayingYAML struct {
	Topic        string                     `yaml:"topic"` // facts of one topic share its phrases
	Role         string                     `yaml:"role"`
	Bare         string                     `yaml:"bare"`      // unit of a number said without one
	BareSaid     bool                       `yaml:"bare_said"` // only inside a phrase
	Alone        float64                    `yaml:"alone"`     // how well its unit alone points to it
	Units        map[string]float64         `yaml:"units"`     // the same for one unit
	Plain        []float64                  `yaml:"plain"`     // a bare round number between these is taken for it
	In           []string                   `yaml:"in"`        // the units it is said in; any of its kind where this is left out
	Takes        string                     `yaml:"takes"`     // of a range: low, high or middle (the default)
	Near         []string                   `yaml:"near"`
	Context      []string                   `yaml:"context"`       // what else is spoken of where the fact is
	ContextUnits []string                   `yaml:"context_units"` // a number in one of these speaks of it, too
	Said         []string                   `yaml:"said"`
	Needs        []string                   `yaml:"needs"`      // it is read only where one of these is said
	NeedsBare    []string                   `yaml:"needs_bare"` // the same for a number without its unit
	Never        []string                   `yaml:"never"`
	Is           document.Ordered[[]string] `yaml:"is"` // a value and the phrases that state it
}

// layer is a words.yaml: the built-in one, or that of a pack.
type layer struct {
	folder.File
	vocabularyYAML
}

// loadLayers reads the words.yaml of the corpus, and those of packs after it.
func loadLayers(fsys fs.FS) ([]layer, error) {
	files, err := folder.Each(fsys, "words.yaml")
	if err != nil || len(files) == 0 {
		return nil, fmt.Errorf("the words people use are missing: %w", errors.Join(err, fs.ErrNotExist))
	}
	layers := make([]layer, len(files))
	for i, f := range files {
		layers[i].File = f
		decode := yaml.NewDecoder(bytes.NewReader(f.Text))
		decode.KnownFields(f.Owner != "") // a pack's key that nothing reads is a mistake
		if err := decode.Decode(&layers[i].vocabularyYAML); err != nil && !errors.Is(err, io.EOF) {
			return nil, f.Wrap(fmt.Errorf("%s: %w", f.Name, document.Plainly(err)))
		}
	}
	return layers, nil
}

// newVocabulary makes the vocabulary of the layers ready for use.
func newVocabulary(layers []layer) (*vocabulary, error) {
	y := layers[0].vocabularyYAML
	for _, l := range layers[1:] {
		if err := y.lay(&l.vocabularyYAML); err != nil {
			return nil, l.Wrap(fmt.Errorf("%s: %w", l.Name, err))
		}
	}
	v := &vocabulary{numbers: y.Numbers, months: y.Months, joined: y.Joined,
		fillers: set(y.Fillers), turns: set(y.Turns), whole: set(y.Whole), countable: set(y.Countable), labels: set(y.Labels), counted: set(y.Counted),
		testWords: set(y.TestWords), lumber: set(y.Lumber), abbreviations: set(y.Abbreviations)}
	v.fractions, v.ids, v.small = map[string]fraction{}, map[string]int32{}, map[string]bool{}
	for w, f := range y.Fractions {
		v.fractions[w] = fraction{f, false}
	}
	for w, f := range y.Ordinals {
		v.fractions[w] = fraction{f, true}
	}
	v.loadForms(&y)
	v.loadUnits(&y)
	v.starts = set([]string{"a", "an", "the", "one", "another", "noon", "midday", "midnight", "half", "quarter", "minus", "negative", "point", "hundred"})
	for w := range v.numbers {
		v.starts[w] = true
	}
	for w := range v.fractions {
		v.starts[w] = true
	}
	for w := range v.months {
		v.starts[w] = true
	}
	for w := range v.prefixes {
		v.starts[w] = true
	}
	for w := range v.units {
		v.starts[w] = true // "inch and a half"
	}
	for w := range v.fillers {
		v.small[v.stem(w)] = true
	}
	v.negators, v.notNegators, v.unsure = phrases(y.Negators), phrases(y.NotNegators), phrases(y.Unsure)
	v.classes = map[string][][]string{}
	for name, list := range y.Classes {
		for _, phrase := range list {
			v.classes[name] = append(v.classes[name], v.stems(phrase))
		}
	}
	return v, nil
}

func (v *vocabulary) loadForms(y *vocabularyYAML) {
	v.forms = map[string]string{}
	for _, w := range y.Apart {
		v.forms[w] = w
		v.forms[w+"s"] = w
	}
	for base, forms := range y.Forms {
		for _, f := range forms {
			v.forms[f] = cut(base)
			if s, ok := v.forms[base]; ok {
				v.forms[f] = s
			}
		}
	}
}

func (v *vocabulary) loadUnits(y *vocabularyYAML) {
	v.units, v.prefixes = map[string][]string{}, map[string][]string{}
	for _, u := range y.Units {
		for _, say := range u.Say {
			var words []string
			for _, t := range scan(say) {
				words = append(words, t.text)
			}
			v.units[strings.Join(words, " ")] = u.Is
			v.unitWords = max(v.unitWords, len(words)+2)
		}
	}
	for sign, unit := range y.Prefixes {
		v.prefixes[sign] = []string{unit}
	}
}

// contraction turns "isn't", "dont" and "cannot" into a "not".
func (v *vocabulary) contraction(word string) (string, bool) {
	if strings.HasSuffix(word, "n't") || word == "cannot" || word == "not" {
		return "not", true
	}
	switch word {
	case "dont", "doesnt", "didnt", "isnt", "arent", "wasnt", "werent", "wont", "cant", "hasnt", "havent", "aint", "wouldnt", "couldnt", "hadnt":
		return "not", true
	}
	return "", false
}

func set(list []string) map[string]bool {
	m := make(map[string]bool, len(list))
	for _, w := range list {
		m[w] = true
	}
	return m
}

// phrases sorts phrases by their first word.
func phrases(list []string) map[string][][]string {
	m := map[string][][]string{}
	for _, p := range list {
		words := strings.Fields(p)
		m[words[0]] = append(m[words[0]], words)
	}
	return m
}
