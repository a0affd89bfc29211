package belief

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/document"
)

// front is what stands between the dashes of an entry.
type front struct {
	Belief    string            `yaml:"belief"`
	Verdict   Verdict           `yaml:"verdict"`
	DependsOn string            `yaml:"depends_on"`
	Practices []string          `yaml:"practices"`
	Topics    []string          `yaml:"topics"`
	Season    string            `yaml:"season"`
	Sources   []Source          `yaml:"sources"`
	Figures   []string          `yaml:"figures"`
	Ranges    []Range           `yaml:"ranges"`
	Reads     map[string]string `yaml:"reads"`
	Said      Voices            `yaml:"said"`
	Denied    Voices            `yaml:"denied"`
}

// split parts the text of an entry into its front matter and its prose.
func split(file string, text []byte) (matter, prose []byte, err error) {
	if bytes.IndexByte(text, '\r') >= 0 {
		text = bytes.ReplaceAll(text, []byte("\r\n"), []byte("\n"))
	}
	rest, ok := bytes.CutPrefix(text, []byte("---\n"))
	if !ok {
		return nil, nil, fmt.Errorf("%s: an entry begins with its front matter; put a line --- first, then belief, verdict and the rest, then --- again", file)
	}
	matter, prose, ok = bytes.Cut(rest, []byte("\n---\n"))
	if !ok {
		return nil, nil, fmt.Errorf("%s: the front matter does not end; close it with a line ---", file)
	}
	return matter, prose, nil
}

// parse reads one entry. The file's name names it in errors.
func parse(file, id string, text []byte) (*Entry, error) {
	matter, prose, err := split(file, text)
	if err != nil {
		return nil, err
	}
	var f front
	d := yaml.NewDecoder(bytes.NewReader(append([]byte("\n"), matter...))) // so that its lines are those of the file
	d.KnownFields(true)
	if err := d.Decode(&f); err != nil && !errors.Is(err, io.EOF) {
		return nil, fmt.Errorf("%s: %w", file, document.Plainly(err))
	}
	e := &Entry{ID: id, Belief: f.Belief, Verdict: f.Verdict, DependsOn: f.DependsOn, Practices: f.Practices, Topics: f.Topics,
		Season: f.Season, Sources: f.Sources, Figures: f.Figures, Ranges: f.Ranges, Reads: f.Reads, Said: f.Said, Denied: f.Denied}
	if err := e.readProse(string(prose)); err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	if err := e.check(); err != nil {
		return nil, fmt.Errorf("%s: %w", file, atKey(text, err))
	}
	return e, nil
}

// readProse reads the sections of an entry.
func (e *Entry) readProse(prose string) error {
	sections := map[string]string{}
	name := ""
	for line := range strings.Lines(prose) {
		if title, ok := strings.CutPrefix(line, "# "); ok {
			name = strings.TrimSpace(title)
			if _, twice := sections[name]; twice {
				return fmt.Errorf("the section # %s stands twice; keep one", name)
			}
			sections[name] = ""
			continue
		}
		if name == "" && strings.TrimSpace(line) != "" {
			return errors.New("text stands before the first section; begin with # Fact")
		}
		sections[name] += line
	}
	for _, want := range []struct {
		name string
		into *string
	}{{"Fact", &e.Fact}, {"Belief", &e.Saying}, {"Why", &e.Why}, {"Do", &e.Do}, {"Say", &e.Say}} {
		*want.into = strings.TrimSpace(sections[want.name])
		if *want.into == "" {
			return fmt.Errorf("the section # %s is missing or empty; write it", want.name)
		}
		delete(sections, want.name)
	}
	e.Show, e.Remember = strings.TrimSpace(sections["Show"]), strings.TrimSpace(sections["Remember"])
	e.Numbers, e.Ask = items(sections["Numbers"]), items(sections["Ask"])
	for _, optional := range []string{"Numbers", "Show", "Remember", "Ask"} {
		delete(sections, optional)
	}
	delete(sections, "")
	for other := range sections {
		return fmt.Errorf("the section # %s is not known; the sections are Fact, Belief, Why, Do, Numbers, Say, Show, Remember and Ask", other)
	}
	return nil
}

// items reads a list; a line that does not begin an item goes on with the one before.
func items(text string) []string {
	var list []string
	for line := range strings.Lines(text) {
		line = strings.TrimSpace(line)
		if item, ok := strings.CutPrefix(line, "- "); ok {
			list = append(list, item)
		} else if line != "" && len(list) > 0 {
			list[len(list)-1] += " " + line
		}
	}
	return list
}

func (e *Entry) check() error {
	switch {
	case e.Belief == "":
		return errors.New("belief is missing; write the belief as one plain sentence")
	case e.Verdict != Myth && e.Verdict != Holds && e.Verdict != Depends:
		return fmt.Errorf("verdict %q is not known; write myth, holds or depends", e.Verdict)
	case e.Verdict == Depends && e.DependsOn == "":
		return errors.New("depends_on is missing; name the condition as the end of \"It depends:\"")
	case e.Verdict != Depends && e.DependsOn != "":
		return fmt.Errorf("depends_on belongs to verdict depends, not to %s; take it out", e.Verdict)
	case len(e.Sources) == 0:
		return errors.New("sources is empty; name at least one work, where in it, and the basis")
	}
	for _, voices := range []Voices{e.Said, e.Denied} {
		for name := range voices {
			if !knownVoice(name) {
				return fmt.Errorf("voice %q is not known; the voices are homeowner, crew and office", name)
			}
		}
	}
	return nil
}

// atKey adds the line of the key that an error begins with, or of the name that it quotes first.
func atKey(text []byte, err error) error {
	key, rest, _ := strings.Cut(err.Error(), " ")
	quoted, _, _ := strings.Cut(strings.TrimPrefix(rest, "\""), "\"")
	row := 0
	for line := range strings.Lines(string(text)) {
		row++
		if name, _, ok := strings.Cut(strings.TrimSpace(line), ":"); ok && (name == key || key == "voice" && name == quoted) {
			return fmt.Errorf("line %d: %w", row, err)
		}
	}
	return err
}

func knownVoice(name string) bool {
	for _, v := range voiceNames {
		if v == name {
			return true
		}
	}
	return false
}
