package crew

import (
	"fmt"
	"io"
	"strings"

	"github.com/muesli/reflow/wordwrap"

	"hearsay/internal/release"
)

// lineWidth is how wide plain text is printed.
const lineWidth = 78

// part is one piece of a lesson with its heading.
type part struct {
	Head string
	Text string
	List []string
}

// Parts gives a lesson in the order in which it is told: what is said, the fact, why, the thing to show, the number, what
// to do, the questions, and the sentence for a customer.
func (t *Talk) Parts(l Lesson) []part {
	said := fmt.Sprintf("%s. %s.", strings.TrimSuffix(l.Saying, "."), t.Say("verdict."+l.Verdict))
	if l.Depends != "" {
		said = fmt.Sprintf("%s. %s", strings.TrimSuffix(l.Saying, "."), t.Say("depends", "on", l.Depends))
	}
	all := []part{{t.Say("talk.fact"), l.Fact, nil}, {t.Say("talk.said"), said, nil}, {t.Say("talk.why"), l.Why, nil}, {t.Say("talk.show"), l.Show, nil},
		{t.Say("talk.remember"), l.Remember, nil}, {t.Say("talk.do"), "", lines(l.Do)}, {t.Say("talk.ask"), "", l.Ask}, {t.Say("talk.tell"), l.Say, nil}}
	kept := all[:0]
	for _, p := range all {
		if p.Text != "" || len(p.List) > 0 {
			kept = append(kept, p)
		}
	}
	return kept
}

// lines parts what to do into its steps and its caution.
func lines(text string) []string {
	var list []string
	for line := range strings.Lines(text) {
		if line = strings.TrimPrefix(strings.TrimSpace(line), "- "); line != "" {
			list = append(list, line)
		}
	}
	return list
}

// Text prints the talk as plain text.
func (t *Talk) Text(w io.Writer) {
	fmt.Fprintf(w, "%s (%s)\n", strings.ToUpper(t.Title), t.Length())
	for i, l := range t.Lessons {
		fmt.Fprintf(w, "\n%d. %s\n", i+1, l.Saying)
		for _, p := range t.Parts(l) {
			fmt.Fprintf(w, "\n   %s\n", p.Head)
			if p.Text != "" {
				wrapped(w, "   ", p.Text)
			}
			for _, item := range p.List {
				wrapped(w, "   - ", item)
			}
		}
	}
	fmt.Fprintf(w, "\n%s\n", t.Say("talk.foot"))
	printMade(w, t.Made)
}

// wrapped prints a text with its lines under each other after start.
func wrapped(w io.Writer, start, text string) {
	broken := wordwrap.String(text, lineWidth-len(start))
	fmt.Fprintln(w, start+strings.ReplaceAll(broken, "\n", "\n"+strings.Repeat(" ", len(start))))
}

// Markdown prints the talk as Markdown.
func (t *Talk) Markdown(w io.Writer) {
	fmt.Fprintf(w, "# %s\n\n%s\n", t.Title, t.Length())
	for i, l := range t.Lessons {
		fmt.Fprintf(w, "\n## %d. %s\n", i+1, l.Saying)
		for _, p := range t.Parts(l) {
			fmt.Fprintf(w, "\n**%s**\n\n", p.Head)
			if p.Text != "" {
				fmt.Fprintln(w, p.Text)
			}
			for _, item := range p.List {
				fmt.Fprintf(w, "- %s\n", item)
			}
		}
	}
	fmt.Fprintf(w, "\n---\n\n%s\n", t.Say("talk.foot"))
	printMade(w, t.Made)
}

// printMade prints by what something was made, where that is known.
func printMade(w io.Writer, made *release.Made) {
	if made != nil {
		fmt.Fprintf(w, "\n%s\n", made.Line())
	}
}
