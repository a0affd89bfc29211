package report

import (
	"strings"

	"hearsay/internal/quantity"
)

// Plain prints the quantities that stand in braces in a text, {4 in}, in the unit system asked for. What cannot be read as
// a quantity loses its braces and stays as it is.
func Plain(text string, system quantity.System) string {
	if !strings.Contains(text, "{") {
		return text
	}
	var out strings.Builder
	for {
		start := strings.IndexByte(text, '{')
		end := strings.IndexByte(text, '}')
		if start < 0 || end < start {
			out.WriteString(text)
			return out.String()
		}
		out.WriteString(text[:start])
		out.WriteString(inBraces(text[start+1:end], system))
		text = text[end+1:]
	}
}

func inBraces(inner string, system quantity.System) string {
	q, err := quantity.Parse(inner)
	if err != nil {
		return inner
	}
	return q.Print(system)
}

func plainAll(texts []string, system quantity.System) []string {
	out := make([]string, len(texts))
	for i, t := range texts {
		out[i] = Plain(t, system)
	}
	return out
}
