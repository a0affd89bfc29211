package release

import (
	"html"
	"strings"
)

// Made says by what an answer was made, so that it can be traced.
type Made struct {
	Version  string   `json:"version"`
	Rulebook string   `json:"rulebook"`         // its revision
	Corpus   string   `json:"corpus,omitempty"` // its revision, where beliefs answer
	Packs    []string `json:"packs,omitempty"`  // laid over what is built in
}

// Line says it in a line.
func (m Made) Line() string {
	line := "Hearsay " + m.Version + ", rulebook " + m.Rulebook
	if m.Corpus != "" {
		line += ", corpus " + m.Corpus
	}
	if len(m.Packs) > 0 {
		line += ", with " + strings.Join(m.Packs, ", ")
	}
	return line + "."
}

// InSVG says it in a picture that stands by itself, where programs look for what a picture tells of itself.
func (m Made) InSVG(svg string) string {
	at := strings.LastIndex(svg, "</svg>")
	if at < 0 {
		return svg
	}
	return svg[:at] + "<metadata>" + html.EscapeString(m.Line()) + "</metadata>" + svg[at:]
}
