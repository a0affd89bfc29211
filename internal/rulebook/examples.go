package rulebook

import (
	"fmt"
	"io/fs"
	"math"

	"hearsay/internal/document"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// Example is a worked example of a published work, computed anew.
type Example struct {
	Name     string  `json:"name"`
	Figure   string  `json:"figure"`
	Printed  float64 `json:"printed"`
	Computed float64 `json:"computed"`
	Unit     string  `json:"unit"`
	Within   float64 `json:"within"` // how far the computed result may lie from the printed one
	Good     bool    `json:"good"`
	Source   string  `json:"source"`
	Where    string  `json:"where"`
	Note     string  `json:"note,omitempty"`
	Problem  string  `json:"problem,omitempty"`
}

type exampleYAML struct {
	Figure  string         `yaml:"figure"`
	Facts   map[string]any `yaml:"facts"`
	Printed string         `yaml:"printed"`
	Within  float64        `yaml:"within"`
	Source  string         `yaml:"source"`
	Where   string         `yaml:"where"`
	Note    string         `yaml:"note"`
}

// Examples computes every worked example of examples.yaml. It fails only where the file cannot be used; an example that
// comes out otherwise than printed is not Good.
func (b *Book) Examples(fsys fs.FS) ([]Example, error) {
	text, err := fs.ReadFile(fsys, "examples.yaml")
	if err != nil {
		return nil, err
	}
	entries, err := document.Read[exampleYAML]("examples.yaml", text)
	if err != nil {
		return nil, err
	}
	var examples []Example
	for _, e := range entries {
		one, err := b.example(e.Name, e.Value)
		if err != nil {
			return nil, fmt.Errorf("examples.yaml: line %d: %s: %w", e.Line, e.Name, err)
		}
		examples = append(examples, one)
	}
	return examples, nil
}

func (b *Book) example(name string, y exampleYAML) (Example, error) {
	out := Example{Name: name, Figure: y.Figure, Within: y.Within, Source: y.Source, Where: y.Where, Note: y.Note}
	f, ok := b.Figures.Find(y.Figure)
	if !ok {
		return out, fmt.Errorf("there is no figure %s", y.Figure)
	}
	if _, ok := b.Limits.Work(y.Source); !ok {
		return out, fmt.Errorf("source %q is not in sources.yaml", y.Source)
	}
	printed, err := quantity.ParseAs(y.Printed, f.Unit)
	if err != nil {
		return out, err
	}
	out.Printed, out.Unit = printed.Value, f.Unit
	j := job.New()
	for path, value := range y.Facts {
		if err := j.State(b.Facts, path, value); err != nil {
			return out, fmt.Errorf("%s: %w", path, err)
		}
	}
	if err := j.Follow(b.Facts); err != nil {
		return out, err
	}
	r := b.Figures.Sheet(j).Result(y.Figure)
	if !r.Known {
		out.Problem = fmt.Sprintf("it is not known: lacks %v %s", r.Missing, r.Problem)
		return out, nil
	}
	out.Computed = r.Best
	out.Good = math.Abs(r.Best-printed.Value) <= y.Within
	return out, nil
}
