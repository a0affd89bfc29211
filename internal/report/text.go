package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/muesli/reflow/wordwrap"

	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// Look says how text is printed.
type Look struct {
	Width   int  // columns; 0 means 78
	Color   bool // only on a terminal
	All     bool // every finding, not only what is wrong
	Working bool // how each number was computed
	Read    bool // what was understood, with the words it was read from
}

func (l Look) width() int {
	if l.Width <= 0 {
		return 78
	}
	return l.Width
}

const (
	bold  = "\x1b[1m"
	faint = "\x1b[2m"
	red   = "\x1b[31m"
	plain = "\x1b[0m"
)

func (l Look) paint(code, text string) string {
	if !l.Color {
		return text
	}
	return code + text + plain
}

// wrap breaks a text to the width, each line after the first set in by indent columns.
func (l Look) wrap(indent int, text string) string {
	lines := strings.Split(wordwrap.String(text, max(20, l.width()-indent)), "\n")
	return strings.Join(lines, "\n"+strings.Repeat(" ", indent))
}

// Text writes a review for a person: what is wrong, worst first, in three lines each; then the three best questions; then
// one line that counts the rest.
func (r *Review) Text(w io.Writer, look Look) {
	wrong := r.With(rulebook.Wrong)
	if look.Read {
		r.read(w, look)
	}
	for _, warning := range r.Warnings {
		fmt.Fprintf(w, "Note: %s\n", look.wrap(6, warning))
	}
	for _, u := range r.Unread {
		fmt.Fprintf(w, "Not read: %s\n", look.wrap(10, u))
	}
	for _, f := range wrong {
		f.text(w, look, r.System)
	}
	if len(wrong) == 0 {
		r.sound(w, look)
	}
	r.questions(w, look)
	if look.All {
		r.computed(w, look)
	}
	r.rest(w, look)
	r.cautions(w, look, wrong)
}

// With gives the findings of one status.
func (r *Review) With(status string) []Finding {
	var list []Finding
	for _, f := range r.Findings {
		if f.Status == status {
			list = append(list, f)
		}
	}
	return list
}

var severityWord = map[string]string{"stop": "STOP", "fix": "FIX ", "mind": "MIND"}

func (f Finding) text(w io.Writer, look Look, system quantity.System) {
	what := f.What
	if len(f.Reasons) > 0 {
		what += ": " + strings.Join(f.Reasons, "; ")
	}
	fmt.Fprintf(w, "%s %s %s\n", look.paint(red+bold, severityWord[f.Severity]), look.paint(bold, look.wrap(5, what)), look.paint(faint, "["+f.Practice+"]"))
	for i, n := range f.Numbers {
		if i > 0 && !look.All && !look.Working {
			break
		}
		fmt.Fprintf(w, "     %s\n", look.wrap(7, n.Line(system)))
		if look.Working {
			for _, step := range n.Working {
				fmt.Fprintf(w, "       = %s\n", look.wrap(9, step))
			}
			for _, a := range n.Assumed {
				fmt.Fprintf(w, "       assumed: %s\n", look.wrap(16, a))
			}
		}
	}
	fmt.Fprintf(w, "     %s %s\n", look.paint(bold, "Do:"), look.wrap(9, f.Do))
	for _, c := range f.Changed {
		fmt.Fprintf(w, "     %s\n", look.wrap(7, "Changed: "+c))
	}
	if look.All || look.Working {
		fmt.Fprintf(w, "     Why: %s\n", look.wrap(10, f.Why))
		for _, s := range f.Sources {
			fmt.Fprintf(w, "     Source: %s\n", look.wrap(13, s.Line()))
		}
	}
	fmt.Fprintln(w)
}

// Line prints a number with yours and right side by side. A right number that is known as a range only is printed as one.
func (n Number) Line(system quantity.System) string {
	right, yours := n.right(system), ""
	if n.Yours != nil {
		yours = quantity.Quantity{Value: *n.Yours, Unit: n.Unit}.Print(system)
	}
	switch {
	case yours != "" && right != "":
		return n.Name + ": yours " + yours + ", right " + right
	case right != "":
		return n.Name + ": right " + right
	case yours != "":
		return n.Name + ": " + ranged(yours, n.between(system), n.Bounded)
	}
	return n.Name + ": " + n.between(system)
}

// right prints the right side with its range; "" where there is none.
func (n Number) right(system quantity.System) string {
	if n.Right == nil {
		return ""
	}
	return ranged(quantity.Quantity{Value: *n.Right, Unit: n.Unit}.Print(system), n.between(system), n.Bounded)
}

// between prints the range; "" where there is none.
func (n Number) between(system quantity.System) string {
	if n.Low == nil || n.High == nil {
		return ""
	}
	print := func(v float64) string { return quantity.Quantity{Value: v, Unit: n.Unit}.Print(system) }
	return print(*n.Low) + " to " + print(*n.High)
}

// ranged prints a best value with its range, or the range alone where there is no best value.
func ranged(best, between string, bounded bool) string {
	switch {
	case between == "":
		return best
	case bounded:
		return between
	}
	return best + " (" + between + ")"
}

// Line prints a source for a person.
func (s Source) Line() string {
	parts := []string{s.Title}
	for _, p := range []string{s.Where, s.Edition} {
		if p != "" {
			parts = append(parts, p)
		}
	}
	line := strings.Join(parts, ", ")
	if s.Basis != "published" && (s.Work != "trade" || s.Basis != limit.Practice) { // which its title says
		line += " (" + s.Basis + ")"
	}
	return line
}

func (r *Review) sound(w io.Writer, look Look) {
	right := r.With(rulebook.Right)
	if len(right) == 0 {
		fmt.Fprintln(w, look.wrap(0, "Nothing is known to be wrong, and nothing is known to be right: too little is stated."))
		return
	}
	rests := fmt.Sprintf("%d practices are right, judged from %d stated facts", len(right), len(r.Understood))
	if len(r.With(rulebook.Ask)) == 0 {
		fmt.Fprintln(w, look.wrap(0, "Nothing is wrong with this job: "+rests+", and nothing that is still unknown can change that."))
		return
	}
	fmt.Fprintln(w, look.wrap(0, "Nothing is known to be wrong so far: "+rests+"."))
}

func (r *Review) questions(w io.Writer, look Look) {
	if len(r.Questions) == 0 {
		return
	}
	fmt.Fprintln(w, look.paint(bold, "Ask next:"))
	most := 3
	if look.All {
		most = len(r.Questions)
	}
	for i, q := range r.Questions {
		if i == most {
			break
		}
		fmt.Fprintf(w, "  %d. %s %s\n", i+1, look.wrap(5, q.Question), look.paint(faint, fmt.Sprintf("[%s; bears on %d]", q.Fact, len(q.Settles))))
	}
	fmt.Fprintln(w)
}

func (r *Review) rest(w io.Writer, look Look) {
	if look.All {
		for _, f := range r.With(rulebook.Ask) {
			f.asking(w, look)
		}
		for _, status := range []string{rulebook.Right, rulebook.NotHere} {
			for _, f := range r.With(status) {
				fmt.Fprintf(w, "%-8s %s\n", status, f.Practice)
			}
		}
		return
	}
	fmt.Fprintln(w, look.wrap(0, fmt.Sprintf("The rest: %d right, %d hang on facts not stated, %d do not concern this job (--all shows them).",
		len(r.With(rulebook.Right)), len(r.With(rulebook.Ask)), len(r.With(rulebook.NotHere)))))
}

func (f Finding) asking(w io.Writer, look Look) {
	fmt.Fprintf(w, "ask      %s  %s\n", f.Practice, look.paint(faint, f.What))
	for i, o := range f.Open {
		if i == 3 {
			fmt.Fprintf(w, "           … or in %d more ways, depending on: %s\n", len(f.Open)-3, look.wrap(13, strings.Join(f.Asks, ", ")))
			break
		}
		fmt.Fprintf(w, "           wrong if %s\n", look.wrap(13, strings.Join(o.If, " and ")))
		for _, n := range o.Note {
			fmt.Fprintf(w, "           (%s)\n", look.wrap(13, n))
		}
	}
}

func (r *Review) cautions(w io.Writer, look Look, wrong []Finding) {
	var seen []string
	for _, f := range wrong {
		for _, c := range f.Cautions {
			if !slices.Contains(seen, c) {
				seen = append(seen, c)
			}
		}
	}
	for _, c := range seen {
		fmt.Fprintf(w, "Caution: %s\n", look.wrap(9, c))
	}
	fmt.Fprintln(w, look.paint(faint, look.wrap(0, codeFirst)))
	fmt.Fprintln(w, look.paint(faint, look.wrap(0, r.Made.Line())))
}

// codeFirst stands under every answer.
const codeFirst = "Local code, the job's specification and the engineer of record come first."
