package report

import (
	"fmt"
	"sort"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// Practice is a practice explained in full, and its JSON form.
type Practice struct {
	*rulebook.Practice
	Limits   []Limit  `json:"limits"`
	Sources  []Source `json:"sources"`
	Cautions []string `json:"cautions"`
}

// Limit is a limit as it is shown.
type Limit struct {
	Name      string `json:"name"`
	What      string `json:"what"`
	Value     any    `json:"value"`
	Unit      string `json:"unit"`
	Condition string `json:"condition,omitempty"`
	Source    Source `json:"source"`
}

// Practices is the list of all practices.
type Practices []Practice

// NewPractice explains a practice.
func NewPractice(b *rulebook.Book, p *rulebook.Practice, system quantity.System) Practice {
	shown := *p
	shown.Why, shown.Do = Plain(p.Why, system), Plain(p.Do, system)
	out := Practice{Practice: &shown, Limits: []Limit{}, Cautions: []string{}}
	for _, path := range p.Limits {
		l, _ := b.Limits.Find(path)
		out.Limits = append(out.Limits, NewLimit(b, l, system))
	}
	for _, id := range p.Cautions {
		if c, ok := b.Caution(id); ok {
			out.Cautions = append(out.Cautions, Plain(c.Text, system))
		}
	}
	out.Sources = Sources(b.Limits, b.Rests(p))
	return out
}

// NewLimit shows a limit in the unit system.
func NewLimit(b *rulebook.Book, l *limit.Limit, system quantity.System) Limit {
	return Limit{Name: l.Path(), What: l.What, Value: convert(l.Value, l.Unit, system), Unit: quantity.Quantity{Unit: l.Unit}.To(system).Unit,
		Condition: Plain(l.Condition, system), Source: Sources(b.Limits, []limit.Cite{l.Cite})[0]}
}

// convert turns every number of a limit's value into the unit system.
func convert(v any, unit string, system quantity.System) any {
	switch n := v.(type) {
	case float64:
		return quantity.Quantity{Value: n, Unit: unit}.To(system).Value
	case map[string]any:
		table := map[string]any{}
		for k, cell := range n {
			table[k] = convert(cell, unit, system)
		}
		return table
	}
	return v
}

// Line prints a limit with its value, tables cell by cell.
func (l Limit) Line(system quantity.System) string {
	var text string
	switch v := l.Value.(type) {
	case float64:
		text = quantity.Quantity{Value: v, Unit: l.Unit}.Print(system)
	case map[string]any:
		text = strings.Join(cells("", v, l.Unit, system), "; ")
	}
	if l.Condition != "" {
		text += ", " + l.Condition
	}
	return l.What + ": " + text
}

func cells(prefix string, table map[string]any, unit string, system quantity.System) []string {
	names := make([]string, 0, len(table))
	for k := range table {
		names = append(names, k)
	}
	sort.Strings(names)
	var list []string
	for _, k := range names {
		switch v := table[k].(type) {
		case float64:
			list = append(list, prefix+k+" "+quantity.Quantity{Value: v, Unit: unit}.Print(system))
		case map[string]any:
			list = append(list, cells(prefix+k+" ", v, unit, system)...)
		default:
			list = append(list, fmt.Sprint(prefix, k, " ", v))
		}
	}
	return list
}

// Text lists practices by topic, one line each.
func (ps Practices) Text(w Writer, look Look) {
	topic := ""
	for _, p := range ps {
		if p.Topic != topic {
			topic = p.Topic
			fmt.Fprintln(w, look.paint(bold, topic))
		}
		fmt.Fprintf(w, "  %-34s %s\n", p.ID, look.wrap(37, p.Title))
	}
}

// Text explains one practice.
func (p Practice) Text(w Writer, look Look) {
	fmt.Fprintf(w, "%s\n%s\n\n", look.paint(bold, look.wrap(0, p.Title)), p.ID)
	fmt.Fprintf(w, "Stage: %s. If it is wrong: %s.\n", p.Stage, map[string]string{
		"stop": "stop, do not place until it is settled", "fix": "change it", "mind": "know it"}[p.Severity])
	fmt.Fprintf(w, "Why: %s\nDo: %s\n", look.wrap(5, p.Why), look.wrap(4, p.Do))
	fmt.Fprintf(w, "Reads: %s\n", look.wrap(7, strings.Join(p.Reads, ", ")))
	for _, l := range p.Limits {
		fmt.Fprintf(w, "Limit: %s\n", look.wrap(7, l.Line(quantity.US)))
		fmt.Fprintf(w, "       %s\n", look.wrap(7, l.Source.Line()))
	}
	for _, s := range p.Sources {
		fmt.Fprintf(w, "Source: %s\n", look.wrap(8, s.Line()))
	}
	for _, c := range p.Cautions {
		fmt.Fprintf(w, "Caution: %s\n", look.wrap(9, c))
	}
}

// Work is a cited work with what rests on it.
type Work struct {
	*limit.Work
	Limits  []string `json:"limits"`
	Figures []string `json:"figures"`
}

// Works is the list of all cited works.
type Works []Work

// NewWork finds what rests on a work.
func NewWork(b *rulebook.Book, w *limit.Work) Work {
	out := Work{Work: w, Limits: []string{}, Figures: []string{}}
	for _, l := range b.Limits.Limits() {
		if l.Source == w.ID {
			out.Limits = append(out.Limits, l.Path())
		}
	}
	for _, f := range b.Figures.Figures() {
		for _, c := range f.Cites {
			if c.Source == w.ID {
				out.Figures = append(out.Figures, f.Name)
				break
			}
		}
	}
	return out
}

// Text lists works, one line each.
func (ws Works) Text(w Writer, look Look) {
	for _, x := range ws {
		fmt.Fprintf(w, "%-22s %s\n", x.ID, look.wrap(23, x.line()))
	}
}

func (x Work) line() string {
	line := x.Title
	if x.Number != "" {
		line = x.Number + ", " + line
	}
	if x.By != "" {
		line += " (" + x.By + ")"
	}
	return line
}

// Text shows a work and what rests on it.
func (x Work) Text(w Writer, look Look) {
	fmt.Fprintf(w, "%s\n%s\n", look.paint(bold, x.ID), look.wrap(0, x.line()))
	fmt.Fprintf(w, "Limits: %s\n", look.wrap(8, orNone(x.Limits)))
	fmt.Fprintf(w, "Figures: %s\n", look.wrap(9, orNone(x.Figures)))
}

func orNone(list []string) string {
	if len(list) == 0 {
		return "none"
	}
	return strings.Join(list, ", ")
}

// Fact is a fact explained, and its JSON form.
type Fact struct {
	Fact      string            `json:"fact"`
	Name      string            `json:"name"`
	Kind      string            `json:"kind"`
	Unit      string            `json:"unit"`
	Question  string            `json:"question"`
	Usual     *job.Range        `json:"usual,omitempty"`
	Possible  *job.Range        `json:"possible,omitempty"`
	Choices   map[string]string `json:"choices,omitempty"`
	Practices []string          `json:"practices"` // that read it, through figures too
	group     string
	choices   []job.Choice
}

// Facts is the list of all facts.
type Facts []Fact

// NewFact explains a fact.
func NewFact(b *rulebook.Book, f *job.Fact, _ quantity.System) Fact {
	out := Fact{Fact: f.Path, Name: f.Name, Kind: f.Kind, Unit: f.Unit, Question: f.Ask, Usual: f.Usual, Possible: f.Possible, group: f.Group,
		choices: f.Choices, Practices: b.ReadersOf(f.Path)}
	if len(f.Choices) > 0 {
		out.Choices = map[string]string{}
		for _, c := range f.Choices {
			out.Choices[c.Value] = c.Name
		}
	}
	return out
}

// Text lists facts by group.
func (fs Facts) Text(w Writer, look Look) {
	group := ""
	for _, f := range fs {
		if f.group != group {
			group = f.group
			fmt.Fprintln(w, look.paint(bold, group))
		}
		fmt.Fprintf(w, "  %-30s %s\n", f.Fact, look.wrap(33, f.short()))
	}
}

func (f Fact) short() string {
	switch f.Kind {
	case job.KindFlag:
		return f.Name + " (yes or no)"
	case job.KindChoice:
		var values []string
		for _, c := range f.choices {
			values = append(values, c.Value)
		}
		return f.Name + ": " + strings.Join(values, ", ")
	case job.KindQuantity, job.KindList:
		if f.Unit == "" || f.Unit == "1" {
			return f.Name
		}
		return f.Name + " (" + quantity.Symbol(f.Unit) + ")"
	}
	return f.Name
}

// Text explains one fact.
func (f Fact) Text(w Writer, look Look) {
	fmt.Fprintf(w, "%s\n%s\n%s\n", look.paint(bold, f.Fact), f.Name, f.Question)
	print := func(v float64) string { return quantity.Quantity{Value: v, Unit: f.Unit}.Print(quantity.US) }
	if f.Usual != nil {
		fmt.Fprintf(w, "Usual: %s to %s\n", print(f.Usual.Low), print(f.Usual.High))
	}
	if f.Possible != nil {
		fmt.Fprintf(w, "Possible: %s to %s\n", print(f.Possible.Low), print(f.Possible.High))
	}
	for _, c := range f.choices {
		fmt.Fprintf(w, "  %-22s %s\n", c.Value, look.wrap(25, c.Name))
	}
	fmt.Fprintf(w, "Read by: %s\n", look.wrap(9, orNone(f.Practices)))
}
