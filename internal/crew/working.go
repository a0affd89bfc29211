package crew

import (
	"fmt"
	"regexp"
	"strings"

	"go.yaml.in/yaml/v3"
)

// What a figure writes of its working is English. In another language each line is looked up by its shape: the line with #
// for every number.

var numbers = regexp.MustCompile(`\{[^}]*\}|#?\d[\d.,]*\d|#?\d`)

// readWorking reads the lines of working of a language, by shape. The first language has none.
func readWorking(language string) (map[string]string, error) {
	if language == Languages()[0] {
		return nil, nil
	}
	name := "text/working." + language + ".yaml"
	text, err := textFiles.ReadFile(name)
	if err != nil {
		return nil, err
	}
	shapes := map[string]string{}
	if err := yaml.Unmarshal(text, &shapes); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return shapes, nil
}

// working says a line of working in the language, its numbers as they stand. A line that the language lacks stays.
func (w Words) working(line string) string {
	own, ok := w.shapes[numbers.ReplaceAllString(line, "#")]
	if !ok {
		return line
	}
	var out strings.Builder
	rest := numbers.FindAllString(line, -1)
	for i, part := range strings.Split(own, "#") {
		if i > 0 && len(rest) > 0 {
			out.WriteString(rest[0])
			rest = rest[1:]
		}
		out.WriteString(part)
	}
	return out.String()
}
