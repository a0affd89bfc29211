package chart

import (
	"fmt"
	"strings"
	"unicode"

	"github.com/muesli/reflow/wordwrap"
)

// Style says how a chart is drawn in characters.
type Style struct {
	Width int  // columns; 0: 60, which a phone shows
	ASCII bool // with the characters of ASCII alone
}

func (s Style) width() int {
	if s.Width <= 0 {
		return 60
	}
	return max(s.Width, 40)
}

// Text draws the chart in characters, for a terminal: lines as dots with their letters on them, so that no color is needed
// to tell them apart, the limits across, and a key and the note below. A chart without a line that can be drawn gives "".
func (c Chart) Text(s Style) string {
	p, ok := c.plot(s)
	if !ok {
		return ""
	}
	var out strings.Builder
	say := func(text string) {
		if text != "" {
			fmt.Fprintln(&out, s.Fit(text))
		}
	}
	say(c.Title)
	say(c.Y.String())
	for row := range p.rows {
		fmt.Fprintln(&out, strings.TrimRight(p.label(row)+string(p.cells[row])+" "+p.ends(row), " "))
	}
	out.WriteString(p.axis())
	if key := p.key(); key != "" {
		fmt.Fprintln(&out, key)
	}
	say(c.Note)
	return s.letters(out.String())
}

// Fit sets a text in so many columns, with the characters of the style.
func (s Style) Fit(text string) string { return wordwrap.String(s.letters(text), s.width()) }

func (s Style) letters(text string) string {
	if s.ASCII {
		return ascii(text)
	}
	return text
}

// ascii writes units and names without the characters that ASCII lacks.
func ascii(text string) string {
	text = strings.NewReplacer("\u00a0", " ", "°", "deg ", "²", "2", "³", "3", "×", "x", "·", ".", "–", "-", "−", "-", "…", "...", "’", "'").Replace(text)
	return strings.Map(func(r rune) rune {
		if r > unicode.MaxASCII {
			return '?'
		}
		return r
	}, text)
}
