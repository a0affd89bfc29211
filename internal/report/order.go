package report

import (
	"fmt"
	"regexp"
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

	Proposed bool `json:"proposed,omitempty"` // nobody told it: it is what the rest of the job asks for
}

// NewOrder makes the order sheet from a correction.
func NewOrder(b *rulebook.Book, c *rulebook.Correction, system quantity.System, spoken func(job.Stated, quantity.System) string) *Order {
	o := &Order{Title: c.Job.Title, Lines: []OrderLine{}, Open: []string{}, First: []string{}, Customer: []string{}, Engineer: []string{},
		Note: codeFirst, Made: b.Made()}
	changed := map[string]rulebook.Change{}
	for _, change := range c.Changes {
		changed[change.Fact.Path] = change
	}
	for _, line := range b.OrderLines() {
		s, ok := c.Job.Find(line.Fact)
		if !ok {
			if p, ok := b.Propose(line, c.Job, c.After.Sheet); ok {
				o.Lines = append(o.Lines, OrderLine{Name: line.Name, Value: proposed(p, system), Proposed: true})
			} else {
				o.Open = append(o.Open, line.Name)
			}
			continue
		}
		l := OrderLine{Name: line.Name, Value: spoken(s, system)}
		if change, ok := changed[line.Fact]; ok {
			l.Was, l.Why = change.Was, Plain(strings.Join(change.Reasons, "; "), system)
		}
		o.Lines = append(o.Lines, l)
	}
	for _, one := range c.Acts {
		o.First = append(o.First, Plain(one.Practice.Do, system))
	}
	o.tell(b, c, system)
	o.Message = o.message()
	o.Customer = append(o.Customer, waterLine, safetyLine)
	return o
}

// proposed says a proposal as one would on the phone.
func proposed(p rulebook.Proposal, system quantity.System) string {
	print := func(v float64) string { return quantity.Quantity{Value: v, Unit: p.Unit}.Print(system) }
	switch {
	case p.Low != p.High:
		return print(p.Low) + " to " + print(p.High)
	case p.At != "":
		return "at " + p.At + " " + print(p.Low)
	}
	return print(p.Low)
}

// told are the topics a customer has a hand in: wrong or open, they are worth a sentence. Those of the weather and the site are so
// where something of these was spoken of: of heat nobody need be told in November.
var told = map[string]struct{ always bool }{"cure": {true}, "water": {}, "cold": {}, "hot": {}, "ground": {}, "safety": {}}

// theirs are the groups of facts that a customer decides; outside the groups of what surrounds the work.
var (
	theirs  = []string{"protection", "cure", "ground", "water"}
	outside = []string{"weather", "ground", "load", "protection", "water", "safety"}
)

// mostTold is how many sentences a customer takes in.
const mostTold = 6

// tell gathers what to say to the customer, what is wrong first, and what is for an engineer to decide.
func (o *Order) tell(b *rulebook.Book, c *rulebook.Correction, system quantity.System) {
	var wrong, open []string
	reporter, does := NewReporter(b, system), map[*rulebook.Practice]string{}
	for _, one := range c.After.Judgements {
		p, do := one.Practice, reporter.finding(one).doWithNumber(system)
		does[p] = do
		switch {
		case p.Engineer && one.Concerns && one.Status != rulebook.Right && (one.Status == rulebook.Wrong || p.Stage != "after"):
			o.Engineer = append(o.Engineer, p.Title+": "+do)
		case one.Status == rulebook.Wrong && !p.Act:
			wrong = append(wrong, do)
		case one.Status == rulebook.Ask && worthTelling(b, c.Job, one):
			open = append(open, do)
		}
	}
	for _, change := range c.Changes {
		wrong = append(wrong, does[change.Practice])
	}
	for _, text := range append(wrong, open...) {
		if len(o.Customer) < mostTold && !slices.Contains(o.Customer, text) {
			o.Customer = append(o.Customer, text)
		}
	}
}

// given is where an instruction speaks of a number that stands beside it.
var given = regexp.MustCompile(`\b(\S+) given\b`)

// doWithNumber is what to do, with the number that it speaks of as given: the one of the unit or the name that the word before
// says, or else the first.
func (f Finding) doWithNumber(system quantity.System) string {
	at := given.FindStringSubmatchIndex(f.Do)
	if at == nil {
		return f.Do
	}
	word := f.Do[at[2]:at[3]]
	best, value := -1, ""
	for _, n := range f.Numbers {
		right := n.right(system)
		if right == "" {
			continue
		}
		fit := 0
		if strings.Contains(right, word) {
			fit = 2
		} else if strings.Contains(n.Name, word) {
			fit = 1
		}
		if fit == 0 {
			right = n.Name + " " + right
		}
		if fit > best {
			best, value = fit, right
		}
	}
	if value == "" {
		return f.Do
	}
	return f.Do[:at[1]] + " (" + value + ")" + f.Do[at[1]:]
}

// worthTelling says whether an open practice is worth a sentence: one that concerns the job, or a grave one that hangs on what
// the customer does.
func worthTelling(b *rulebook.Book, j *job.Job, one *rulebook.Judgement) bool {
	p := one.Practice
	topic, ok := told[p.Topic]
	if !ok || !one.Concerns && (p.Severity != "stop" || !slices.ContainsFunc(one.Asks, func(path string) bool { return slices.Contains(theirs, group(path)) })) {
		return false
	}
	return topic.always && one.Concerns || slices.ContainsFunc(b.HangsOn(p), func(path string) bool {
		_, spoken := j.Value(path)
		return spoken && slices.Contains(outside, group(path))
	})
}

func group(path string) string {
	name, _, _ := strings.Cut(path, ".")
	return name
}

// waterLine and safetyLine go with every order.
const (
	waterLine  = "Let nobody add water at the site to make it flow: ask for a water reducer instead."
	safetyLine = "Wet concrete burns skin and eyes, often without pain at first: gloves, boots, glasses; rinse at once with clean water."
)

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
		} else if l.Proposed {
			line += " (proposed)"
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
