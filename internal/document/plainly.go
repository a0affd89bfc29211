package document

import (
	"errors"
	"fmt"
	"regexp"
	"strings"

	"go.yaml.in/yaml/v3"
)

var (
	wrongKind  = regexp.MustCompile("^line (\\d+): cannot unmarshal (?:!!\\w+)(?: `(.*)`)? into (.+)$")
	wrongField = regexp.MustCompile(`^line (\d+): field (.+) not found in type .+$`)
	yamlLine   = regexp.MustCompile(`^yaml: line (\d+): `)
)

// Plainly says what is wrong with a YAML file without the words of the reader: with the line, and what is wanted there.
func Plainly(err error) error {
	var kinds *yaml.TypeError
	if errors.As(err, &kinds) {
		text := kinds.Errors[0]
		if m := wrongField.FindStringSubmatch(text); m != nil {
			return fmt.Errorf("line %s: %q does not belong here", m[1], m[2])
		}
		if m := wrongKind.FindStringSubmatch(text); m != nil {
			what := "this"
			if m[2] != "" {
				what = fmt.Sprintf("%q", m[2])
			}
			return fmt.Errorf("line %s: %s stands where %s is wanted", m[1], what, wanted(m[3], m[2]))
		}
		return errors.New(text)
	}
	if text := err.Error(); yamlLine.MatchString(text) {
		return errors.New(yamlLine.ReplaceAllString(text, "line $1: this cannot be read as YAML (") +
			"): look for a bracket or a quote that is not closed, a tab, or a line that begins at the wrong place")
	}
	return err
}

// wanted names what a type of Go takes, with an example made of what stands there.
func wanted(kind, have string) string {
	switch {
	case strings.HasPrefix(kind, "[]"):
		if have == "" {
			return "a list, such as [a, b],"
		}
		return "a list, such as [" + have + "],"
	case strings.HasPrefix(kind, "map["):
		return "a mapping, such as {name: value},"
	case strings.Contains(kind, "float") || strings.HasPrefix(kind, "int") || strings.HasPrefix(kind, "uint"):
		return "a number"
	case kind == "bool":
		return "true or false"
	case kind == "string":
		return "text"
	}
	return "a mapping, such as {name: value},"
}
