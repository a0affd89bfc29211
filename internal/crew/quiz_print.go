package crew

import (
	"fmt"
	"io"
	"strings"
)

// Number is how a quiz is called on paper.
func (z *Quiz) Number() string {
	if z.Code != "" {
		return z.Say("quiz.code") + " " + z.Code
	}
	return z.Say("quiz.number") + " " + z.SeedText()
}

// Explain says why the key of a question is right, and what leads to the wrong choices.
func (z *Quiz) Explain(q Question) []string {
	list := append([]string{}, q.Why...)
	for i, o := range q.Options {
		if o.Slip != "" {
			list = append(list, fmt.Sprintf("%s: %s", Letter(i), o.Slip))
		}
	}
	return list
}

// Text prints the questions as plain text, and the key after them where it is wanted.
func (z *Quiz) Text(w io.Writer, key bool) {
	fmt.Fprintf(w, "%s (%s)\n%s ____________________\n", strings.ToUpper(z.Title), z.Number(), z.Say("quiz.name"))
	for i, q := range z.Questions {
		fmt.Fprintln(w)
		wrapped(w, fmt.Sprintf("%2d. ", i+1), q.Text)
		for o, option := range q.Options {
			fmt.Fprintf(w, "    %s  %s\n", Letter(o), option.Text)
		}
	}
	printMade(w, z.Made)
	if !key {
		return
	}
	fmt.Fprintf(w, "\f\n%s: %s (%s)\n", strings.ToUpper(z.Say("quiz.key")), z.Title, z.Number())
	for i, q := range z.Questions {
		fmt.Fprintf(w, "\n%2d. %s  %s\n", i+1, q.KeyLetter(), q.Options[q.Key].Text)
		for _, line := range z.Explain(q) {
			wrapped(w, "    ", line)
		}
	}
}

// Markdown prints the questions as Markdown, and the key after them where it is wanted.
func (z *Quiz) Markdown(w io.Writer, key bool) {
	fmt.Fprintf(w, "# %s\n\n%s. %s: ____________________\n", z.Title, z.Number(), z.Say("quiz.name"))
	for i, q := range z.Questions {
		fmt.Fprintf(w, "\n%d. %s\n\n", i+1, q.Text)
		for o, option := range q.Options {
			fmt.Fprintf(w, "   - [ ] %s. %s\n", Letter(o), option.Text)
		}
	}
	printMade(w, z.Made)
	if !key {
		return
	}
	fmt.Fprintf(w, "\n---\n\n## %s\n", z.Say("quiz.key"))
	for i, q := range z.Questions {
		fmt.Fprintf(w, "\n%d. **%s** %s\n\n", i+1, q.KeyLetter(), q.Options[q.Key].Text)
		for _, line := range z.Explain(q) {
			fmt.Fprintf(w, "   - %s\n", line)
		}
	}
}
