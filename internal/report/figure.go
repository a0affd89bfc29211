package report

import (
	"fmt"
	"io"
	"strings"

	"hearsay/internal/figure"
	"hearsay/internal/quantity"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
)

// Writer is where text goes.
type Writer = io.Writer

// FigureEntry is a figure as the list shows it.
type FigureEntry struct {
	Name    string     `json:"name"`
	Title   string     `json:"title"`
	Unit    string     `json:"unit"`
	Needs   [][]string `json:"needs"`   // each way of computing it
	Refined []string   `json:"refined"` // facts that narrow it where they are known
	Method  string     `json:"method"`
	Sources []Source   `json:"sources"`
}

// NewFigureEntry describes a figure.
func NewFigureEntry(b *rulebook.Book, f *figure.Figure) FigureEntry {
	e := FigureEntry{Name: f.Name, Title: f.Title, Unit: f.Unit, Method: f.Method, Sources: Sources(b.Limits, f.Cites), Refined: []string{}}
	for _, w := range f.Ways {
		e.Needs = append(e.Needs, w.Needs)
		for _, s := range w.Sharpens {
			e.Refined = append(e.Refined, s.Fact)
		}
	}
	return e
}

// Text prints the entry for a person.
func (e FigureEntry) Text(w Writer, look Look) {
	unit := quantity.Symbol(e.Unit)
	if unit == "" {
		unit = "a plain number"
	}
	fmt.Fprintf(w, "%s  %s (%s)\n", look.paint(bold, e.Name), e.Title, unit)
	for i, needs := range e.Needs {
		word := "needs"
		if i > 0 {
			word = "or"
		}
		fmt.Fprintf(w, "    %s %s\n", word, look.wrap(10, strings.Join(needs, ", ")))
	}
}

// Figure is a computed figure, and its JSON form.
type Figure struct {
	Name    string        `json:"name"`
	Title   string        `json:"title"`
	Known   bool          `json:"known"`
	Value   *float64      `json:"value"`
	Low     *float64      `json:"low"`
	High    *float64      `json:"high"`
	Unit    string        `json:"unit"`
	Method  string        `json:"method"`
	Working []string      `json:"working"`
	Assumed []string      `json:"assumed"`
	Missing []string      `json:"missing"`
	Problem string        `json:"problem,omitempty"`
	Source  []Source      `json:"source"`
	Basis   string        `json:"basis"`          // the weakest of what it rests on
	Made    *release.Made `json:"made,omitempty"` // where it is shown by itself
	system  quantity.System
}

// NewFigure makes the result of one figure, in the unit system asked for.
func NewFigure(b *rulebook.Book, r *figure.Result, system quantity.System) Figure {
	f := Figure{Name: r.Figure.Name, Title: r.Figure.Title, Known: r.Known, Unit: r.Figure.Unit, Method: Plain(r.Figure.Method, system),
		Working: plainAll(r.Working, system), Assumed: plainAll(r.Assumed, system), Missing: nonNil(r.Missing), Problem: Plain(r.Problem, system),
		Source: Sources(b.Limits, r.Cites), Basis: basis(r), system: system}
	set := func(v float64) *float64 {
		q := quantity.Quantity{Value: v, Unit: r.Figure.Unit}.To(system)
		f.Unit = q.Unit
		return &q.Value
	}
	if r.Known {
		f.Value = set(r.Best)
	}
	if r.Known || r.Bounded {
		f.Low, f.High = set(r.Low), set(r.High)
	}
	return f
}

var basisRank = map[string]int{"published": 0, "common practice": 1, "memory": 2}

func basis(r *figure.Result) string {
	weakest := ""
	for _, c := range r.Cites {
		if weakest == "" || basisRank[c.Basis] > basisRank[weakest] {
			weakest = c.Basis
		}
	}
	return weakest
}

// Text prints the figure for a person, with its working.
func (f Figure) Text(w Writer, look Look) {
	print := func(v *float64) string { return quantity.Quantity{Value: *v, Unit: f.Unit}.Print(f.system) }
	switch {
	case f.Known && *f.Low != *f.High:
		fmt.Fprintf(w, "%s: %s (%s to %s)\n", f.Title, look.paint(bold, print(f.Value)), print(f.Low), print(f.High))
	case f.Known:
		fmt.Fprintf(w, "%s: %s\n", f.Title, look.paint(bold, print(f.Value)))
	case f.Problem != "":
		fmt.Fprintf(w, "The %s cannot be computed: %s\n", f.Title, look.wrap(2, f.Problem))
	case f.Low != nil:
		fmt.Fprintf(w, "%s: somewhere from %s to %s; to know it, state %s\n", f.Title, print(f.Low), print(f.High), strings.Join(f.Missing, ", "))
	default:
		fmt.Fprintf(w, "The %s is not known. State: %s\n", f.Title, look.wrap(2, strings.Join(f.Missing, ", ")))
	}
	for _, step := range f.Working {
		fmt.Fprintf(w, "  = %s\n", look.wrap(4, step))
	}
	for _, a := range f.Assumed {
		fmt.Fprintf(w, "  assumed: %s\n", look.wrap(11, a))
	}
	fmt.Fprintf(w, "  Method: %s\n", look.wrap(10, f.Method))
	for _, s := range f.Source {
		fmt.Fprintf(w, "  Source: %s\n", look.wrap(10, s.Line()))
	}
	if f.Made != nil {
		fmt.Fprintf(w, "  %s\n", look.paint(faint, look.wrap(2, f.Made.Line())))
	}
}
