package crew

import (
	"errors"
	"fmt"
	"io/fs"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/belief"
	"hearsay/internal/folder"
)

// Lesson is what a talk says of one belief, quantities printed.
type Lesson struct {
	Belief   string   `json:"belief"` // topic/name
	Verdict  string   `json:"verdict"`
	Saying   string   `json:"saying"` // the belief as one sentence
	Depends  string   `json:"depends_on,omitempty"`
	Fact     string   `json:"fact"`
	Why      string   `json:"why,omitempty"`
	Do       string   `json:"do"`
	Say      string   `json:"say"`
	Show     string   `json:"show,omitempty"`
	Remember string   `json:"remember,omitempty"`
	Ask      []string `json:"ask,omitempty"`
}

// ErrUntranslated says that a belief does not exist in the language asked for.
var ErrUntranslated = errors.New("is not translated")

// Lesson gives what the corpus says of a belief in the trainer's language.
func (t *Trainer) Lesson(id string) (Lesson, error) {
	e, err := t.corpus.Entry(id)
	if err != nil {
		return Lesson{}, err
	}
	l := Lesson{Belief: id, Verdict: string(e.Verdict), Saying: e.Belief, Depends: e.DependsOn, Fact: e.Fact, Why: e.Why, Do: e.Do, Say: e.Say,
		Show: e.Show, Remember: e.Remember, Ask: e.Ask}
	if t.words.Language != "en" {
		if err := translate(t.files, t.words.Language, &l); err != nil {
			return Lesson{}, err
		}
	}
	for _, text := range []*string{&l.Depends, &l.Fact, &l.Why, &l.Do, &l.Say, &l.Show, &l.Remember} {
		*text = t.printer.text(*text)
	}
	l.Saying = capital(t.printer.text(l.Saying))
	ask := make([]string, len(l.Ask))
	for i, a := range l.Ask {
		ask[i] = t.printer.text(a)
	}
	l.Ask = ask
	return l, nil
}

// translate puts the texts of another language in. They stand in <language>/<topic>/<name>.md, with the sections of the
// entry and the belief in the front matter.
func translate(files fs.FS, language string, l *Lesson) error {
	name := language + "/" + l.Belief + ".md"
	text, err := fs.ReadFile(files, name)
	if folder.Owner(files, name) != folder.Owner(files, l.Belief+".md") {
		err = fs.ErrNotExist // it translates an entry that a pack replaced
	}
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s %w: write %s", l.Belief, ErrUntranslated, name)
	}
	if err != nil {
		return err
	}
	matter, prose, ok := strings.Cut(strings.TrimPrefix(string(text), "---\n"), "\n---\n")
	if !ok {
		return fmt.Errorf("%s: begin with the front matter, belief and depends_on, between lines ---", name)
	}
	var front struct {
		Belief    string `yaml:"belief"`
		DependsOn string `yaml:"depends_on"`
	}
	if err := yaml.Unmarshal([]byte(matter), &front); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	sections := map[string]string{}
	for _, part := range strings.Split("\n"+prose, "\n# ")[1:] {
		title, body, _ := strings.Cut(part, "\n")
		sections[strings.TrimSpace(title)] = strings.TrimSpace(body)
	}
	l.Saying, l.Depends, l.Ask = front.Belief, front.DependsOn, nil
	if l.Saying == "" || l.Verdict == string(belief.Depends) && l.Depends == "" {
		return fmt.Errorf("%s: belief or depends_on is missing", name)
	}
	for title, into := range map[string]*string{"Fact": &l.Fact, "Why": &l.Why, "Do": &l.Do, "Say": &l.Say, "Show": &l.Show, "Remember": &l.Remember} {
		if *into = sections[title]; *into == "" {
			return fmt.Errorf("%s: the section # %s is missing", name, title)
		}
	}
	for line := range strings.Lines(sections["Ask"]) {
		if item, ok := strings.CutPrefix(strings.TrimSpace(line), "- "); ok {
			l.Ask = append(l.Ask, item)
		}
	}
	if len(l.Ask) == 0 {
		return fmt.Errorf("%s: the section # Ask is missing", name)
	}
	return nil
}

func capital(s string) string {
	for i, r := range s {
		return strings.ToUpper(string(r)) + s[i+len(string(r)):]
	}
	return s
}
