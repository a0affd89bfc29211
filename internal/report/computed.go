package report

import (
	"fmt"
	"io"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// Compute adds every figure that the facts of the job give, whether or not a finding shows it. What comes out the same
// without any fact says nothing of the job and is left out.
func (r *Review) Compute(b *rulebook.Book, judged *rulebook.Review) {
	nothing := b.Figures.Sheet(job.New())
	for _, f := range judged.Sheet.All() {
		if f.Figure.Private || !f.Known {
			continue
		}
		if n := nothing.Result(f.Figure.Name); n.Known && n.Value == f.Value {
			continue
		}
		r.Figures = append(r.Figures, newSum(f, r.System))
	}
}

// computed prints the figures that no finding above has shown.
func (r *Review) computed(w io.Writer, look Look) {
	shown := map[string]bool{}
	for _, f := range r.With(rulebook.Wrong) {
		for _, n := range f.Numbers {
			shown[n.Figure] = true
		}
	}
	first := true
	for _, s := range r.Figures {
		if shown[s.Name] {
			continue
		}
		if first {
			fmt.Fprintf(w, "%s\n", look.paint(bold, "What the facts come to:"))
			first = false
		}
		fmt.Fprintf(w, "  - %s\n", look.wrap(4, s.Line(r.System)))
		if look.Working {
			s.work(w, look)
		}
	}
	if !first {
		fmt.Fprintln(w)
	}
}

// work prints how a figure was computed.
func (s Sum) work(w io.Writer, look Look) {
	for _, step := range s.Working {
		fmt.Fprintf(w, "      = %s\n", look.wrap(8, step))
	}
	for _, a := range s.Assumed {
		fmt.Fprintf(w, "      assumed: %s\n", look.wrap(15, a))
	}
}
