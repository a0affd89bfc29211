package belief

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/document"
	"hearsay/internal/folder"
)

// Files of a corpus beside the entries.
const (
	synonymsFile  = "synonyms.yaml"
	unrelatedFile = "unrelated.yaml"
)

// taught are the keys of the front matter that matching is learned from.
var taught = [...]string{"belief", "verdict", "said", "denied"}

// Sentence is one way of saying a belief or of denying it, or a sentence that no belief covers.
type Sentence struct {
	Text   string
	Belief string // id; empty: no belief covers it
	Stance Stance // empty without a belief
	Voice  string
}

// Sentences gives every sentence of the corpus, by belief, stance and voice in their order.
func (c *Corpus) Sentences() ([]Sentence, error) {
	var out []Sentence
	for _, id := range c.IDs() {
		e, err := c.Entry(id)
		if err != nil {
			return nil, err
		}
		out = append(out, e.sentences()...)
	}
	foreign, err := c.unrelated()
	if err != nil {
		return nil, err
	}
	return append(out, foreign...), nil
}

func (e *Entry) sentences() []Sentence {
	var out []Sentence
	for _, voice := range voiceNames {
		for _, t := range e.Said[voice] {
			out = append(out, Sentence{t, e.ID, Asserts, voice})
		}
		for _, t := range e.Denied[voice] {
			out = append(out, Sentence{t, e.ID, Denies, voice})
		}
	}
	return out
}

func (c *Corpus) unrelated() ([]Sentence, error) {
	voices := Voices{}
	if err := readYAML(c.files, unrelatedFile, &voices); err != nil {
		return nil, err
	}
	var out []Sentence
	for _, voice := range voiceNames {
		for _, t := range voices[voice] {
			out = append(out, Sentence{Text: t, Voice: voice})
		}
	}
	return out, nil
}

// readSynonyms reads the words for the same thing, by the name of what they mean. A corpus without the file has none.
func readSynonyms(files fs.FS) (map[string][]string, error) {
	var words map[string][]string
	err := readYAML(files, synonymsFile, &words)
	return words, err
}

// laidSynonyms adds to the words that the model learned with those of packs.
func laidSynonyms(files fs.FS, learned map[string][]string) (map[string][]string, error) {
	if !folder.Laid(files) {
		return learned, nil
	}
	each, err := folder.Each(files, synonymsFile)
	if err != nil {
		return nil, err
	}
	words := maps.Clone(learned)
	for _, f := range each {
		if f.Owner == "" {
			continue
		}
		more, err := document.Read[[]string](f.Name, f.Text)
		if err != nil {
			return nil, f.Wrap(err)
		}
		for _, e := range more {
			words[e.Name] = append(slices.Clone(words[e.Name]), e.Value...)
		}
	}
	return words, nil
}

func readYAML(files fs.FS, name string, into any) error {
	text, err := fs.ReadFile(files, name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	if err := yaml.Unmarshal(text, into); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	return nil
}

// list finds the entries of a corpus and fingerprints their front matter, which is what matching is learned from. The revision is a
// hash over all of them, prose included.
func list(files fs.FS) (prints map[string]string, revision string, err error) {
	prints = map[string]string{}
	names, err := fs.Glob(files, "*/*.md")
	if err != nil {
		return nil, "", err
	}
	slices.Sort(names)
	all := sha256.New()
	for _, name := range names {
		text, err := fs.ReadFile(files, name)
		if err != nil {
			return nil, "", err
		}
		matter, _, err := split(name, text)
		if err != nil {
			if owner := folder.Owner(files, name); owner != "" {
				err = fmt.Errorf("pack %s: corpus/%w", owner, err)
			}
			return nil, "", err
		}
		fmt.Fprintf(all, "%s %d\n", name, len(text))
		all.Write(text)
		prints[strings.TrimSuffix(name, path.Ext(name))] = fingerprint(matter)
	}
	return prints, hex.EncodeToString(all.Sum(nil))[:12], nil
}

// fingerprint gives the same for front matters that teach the same. Keys that matching does not learn from may change.
func fingerprint(matter []byte) string {
	h := sha256.New()
	taken := false
	for line := range bytes.Lines(matter) {
		if line[0] != ' ' && line[0] != '-' {
			key, _, _ := bytes.Cut(line, []byte(":"))
			taken = slices.Contains(taught[:], string(key))
		}
		if taken {
			h.Write(line)
		}
	}
	return hex.EncodeToString(h.Sum(nil)[:8])
}
