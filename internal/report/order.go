package report

import (
	"fmt"
	"slices"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
)

// Order is an order as it should be placed: the job corrected, what to tell the customer, and what is for an engineer.
type Order struct {
	Title    string       `json:"title,omitempty"`
	Lines    []OrderLine  `json:"lines"`
	Open     []string     `json:"open"`     // facts of the order that nobody has told
	First    []string     `json:"first"`    // what must happen at the site before it is placed
	Customer []string     `json:"customer"` // sentences for the customer
	Engineer []string     `json:"engineer"` // for a licensed engineer to decide
	Message  []string     `json:"message"`  // the same as short lines to send
	Note     string       `json:"note"`
	Made     release.Made `json:"made"`
}

// OrderLine is one thing ordered.
type OrderLine struct {
	Name  string `json:"name"`
	Value string `json:"value"`
	Was   string `json:"was,omitempty"` // what was asked for, where that was changed
	Why   string `json:"why,omitempty"`
}

// ordered lists what an order names, in the order it is read out over the phone, with its short name.
var ordered = []struct{ fact, name string }{
	{"order.volume", "volume"}, {"order.strength", "strength"}, {"order.ratio_limit", "w/cm at most"}, {"order.air", "air"},
	{"order.entrained_air", "air-entrained"}, {"order.slump", "slump"}, {"order.aggregate", "stone"}, {"order.reducer", "water reducer"},
	{"order.retarder", "retarder"}, {"cold.accelerator", "accelerator"}, {"load.temperature", "temperature"},
	{"job.date", "day"}, {"job.start", "first truck at"}, {"load.spacing", "trucks apart"},
}

// NewOrder makes the order sheet from a correction.
func NewOrder(b *rulebook.Book, c *rulebook.Correction, system quantity.System, spoken func(job.Stated, quantity.System) string) *Order {
	o := &Order{Title: c.Job.Title, Lines: []OrderLine{}, Open: []string{}, First: []string{}, Customer: []string{}, Engineer: []string{},
		Note: codeFirst, Made: b.Made()}
	changed := map[string]rulebook.Change{}
	for _, change := range c.Changes {
		changed[change.Fact.Path] = change
	}
	for _, line := range ordered {
		s, ok := c.Job.Find(line.fact)
		if !ok {
			o.Open = append(o.Open, line.name)
			continue
		}
		l := OrderLine{Name: line.name, Value: spoken(s, system)}
		if change, ok := changed[line.fact]; ok {
			l.Was, l.Why = change.Was, Plain(strings.Join(change.Reasons, "; "), system)
		}
		o.Lines = append(o.Lines, l)
	}
	for _, one := range c.Acts {
		o.First = append(o.First, Plain(one.Practice.Do, system))
	}
	o.tell(c, system)
	o.Message = o.message()
	o.Customer = append(o.Customer, safetyLine)
	return o
}

// told are the topics a customer has a hand in: wrong or open, they are worth a sentence.
var told = []string{"cure", "cold", "hot", "ground", "water", "safety"}

// mostTold is how many sentences a customer takes in.
const mostTold = 6

// tell gathers what to say to the customer, what is wrong first, and what is for an engineer to decide.
func (o *Order) tell(c *rulebook.Correction, system quantity.System) {
	var wrong, open []string
	for _, one := range c.After.Judgements {
		p := one.Practice
		switch {
		case p.Engineer && one.Concerns && one.Status != rulebook.Right:
			o.Engineer = append(o.Engineer, p.Title+": "+Plain(p.Do, system))
		case one.Status == rulebook.Wrong && !p.Act:
			wrong = append(wrong, Plain(p.Do, system))
		case one.Status == rulebook.Ask && one.Concerns && slices.Contains(told, p.Topic) && spokenOf(c.Job, p):
			open = append(open, Plain(p.Do, system))
		}
	}
	for _, change := range c.Changes {
		wrong = append(wrong, Plain(change.Practice.Do, system))
	}
	for _, text := range append(wrong, open...) {
		if len(o.Customer) < mostTold && !slices.Contains(o.Customer, text) {
			o.Customer = append(o.Customer, text)
		}
	}
}

// spokenOf says whether anything that the practice hangs on has been told: of heat nobody need be told in November.
func spokenOf(j *job.Job, p *rulebook.Practice) bool {
	return slices.ContainsFunc(p.Reads, func(path string) bool {
		_, ok := j.Value(strings.TrimPrefix(path, "input."))
		return ok
	})
}

// safetyLine goes with every order.
const safetyLine = "Wet concrete burns skin and eyes, often without pain at first: gloves, boots, glasses; rinse at once with clean water."

// messageWidth is what one text message holds.
const messageWidth = 160

// message puts the order into two or three short lines.
func (o *Order) message() []string {
	var parts []string
	for _, l := range o.Lines {
		switch {
		case l.Value == "no" || l.Value == "none":
		case l.Value == "yes":
			parts = append(parts, l.Name)
		default:
			parts = append(parts, l.Name+" "+l.Value)
		}
	}
	lines := []string{short("Order: " + strings.Join(parts, ", ") + ".")}
	if tell := whole(append(slices.Clone(o.First), o.Customer...)); tell != "" {
		lines = append(lines, tell)
	}
	return append(lines, safetyLine)
}

// mostToldShort is how many things a text message tells.
const mostToldShort = 2

// whole gives the first sentences of texts, the most important first, as far as they go whole into one message. Only where not even
// the first goes in is it cut.
func whole(texts []string) string {
	var tell []string
	for _, text := range texts {
		first, _, _ := strings.Cut(text, ". ")
		first = strings.TrimSuffix(first, ".") + "."
		if next := append(tell, first); len(strings.Join(next, " ")) <= messageWidth {
			tell = next
		}
		if len(tell) == mostToldShort {
			break
		}
	}
	if len(tell) == 0 && len(texts) > 0 {
		return short(texts[0])
	}
	return strings.Join(tell, " ")
}

// short cuts a line at a word, to the width of a message.
func short(line string) string {
	if len(line) <= messageWidth {
		return line
	}
	cut := strings.LastIndexByte(line[:messageWidth-2], ' ')
	return line[:max(cut, 0)] + " …"
}

// Text prints the order for a person.
func (o *Order) Text(w Writer, look Look) {
	fmt.Fprintln(w, look.paint(bold, "Place the order so"+suffix(o.Title)))
	for _, l := range o.Lines {
		line := l.Value
		if l.Was != "" {
			line += " (was " + l.Was + ")"
		}
		if l.Why != "" {
			line += ": " + l.Why
		}
		fmt.Fprintf(w, "  %-15s %s\n", l.Name, look.wrap(18, line))
	}
	if len(o.Open) > 0 {
		fmt.Fprintf(w, "  not decided     %s\n", look.wrap(18, strings.Join(o.Open, ", ")))
	}
	o.list(w, look, "Before it can be placed", o.First)
	o.list(w, look, "Tell the customer", o.Customer)
	o.list(w, look, "For a licensed engineer to decide", o.Engineer)
	o.list(w, look, "As a text message", o.Message)
	fmt.Fprintf(w, "\n%s\n", look.paint(faint, look.wrap(0, o.Note)))
	fmt.Fprintln(w, look.paint(faint, look.wrap(0, o.Made.Line())))
}

func (o *Order) list(w Writer, look Look, title string, items []string) {
	if len(items) == 0 {
		return
	}
	fmt.Fprintf(w, "\n%s\n", look.paint(bold, title))
	for _, i := range items {
		fmt.Fprintf(w, "  - %s\n", look.wrap(4, i))
	}
}
