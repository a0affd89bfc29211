package report

import (
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
