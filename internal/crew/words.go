package crew

import (
	"embed"
	"fmt"
	"maps"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/quantity"
	"hearsay/internal/report"
)

//go:embed text/*.yaml
var textFiles embed.FS

// Words are the sentences of talks and quizzes in one language, by key. Names in braces are filled in.
type Words struct {
	Language string
	texts    map[string]string
	units    map[string]string // words of units that this language says otherwise
	shapes   map[string]string // lines of working, by their English shape
}

func readWords(language string) (Words, error) {
	text, err := textFiles.ReadFile("text/" + language + ".yaml")
	if err != nil {
		return Words{}, err
	}
	w := Words{Language: language}
	if err := yaml.Unmarshal(text, &w.texts); err != nil {
		return Words{}, fmt.Errorf("text/%s.yaml: %w", language, err)
	}
	w.units = map[string]string{}
	for key, value := range w.texts {
		if unit, ok := strings.CutPrefix(key, "unit."); ok {
			w.units[unit] = value
		}
	}
	w.shapes, err = readWorking(language)
	return w, err
}

// Say gives the sentence of a key, with names and values by turns filled in. A key that is missing shows as itself.
func (w Words) Say(key string, with ...string) string {
	text, ok := w.texts[key]
	if !ok {
		return key
	}
	for i := 0; i+1 < len(with); i += 2 {
		text = strings.ReplaceAll(text, "{"+with[i]+"}", with[i+1])
	}
	return text
}

// Keys lists every key, sorted.
func (w Words) Keys() []string { return slices.Sorted(maps.Keys(w.texts)) }

// printer prints quantities in one unit system and language.
type printer struct {
	system quantity.System
	words  Words
}

// text prints the quantities that stand in braces.
func (p printer) text(text string) string {
	var out strings.Builder
	for {
		start := strings.IndexByte(text, '{')
		end := strings.IndexByte(text, '}')
		if start < 0 || end < start {
			return out.String() + text
		}
		out.WriteString(text[:start])
		out.WriteString(p.unit(report.Plain(text[start:end+1], p.system)))
		text = text[end+1:]
	}
}

// exact gives a quantity as a fact of a job is written.
func (p printer) exact(v float64, unit string) map[string]any {
	return map[string]any{"value": v, "unit": unit}
}

func (p printer) quantity(v float64, unit string) string {
	return p.unit(quantity.Quantity{Value: v, Unit: unit}.Print(p.system))
}

// unit says the words of a unit in the language: "7 days" is "7 días".
func (p printer) unit(text string) string {
	fields := strings.Split(text, " ")
	for i, f := range fields {
		if i == 0 {
			continue
		}
		if own, ok := p.words.units[f]; ok {
			fields[i] = own
		}
	}
	return strings.TrimSpace(strings.Join(fields, " ")) // a word that the language leaves out is ""
}
