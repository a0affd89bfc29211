package report

import (
	"fmt"

	"hearsay/internal/figure"
	"hearsay/internal/quantity"
	"hearsay/internal/reckon"
)

// Reckoned is what the numbers in a claim come to, and its JSON form.
type Reckoned struct {
	Figures []Sum         `json:"figures"` // computed from the facts the claim states
	Claimed []ClaimedSize `json:"claimed"` // numbers the claim gives, held against what is computed
	system  quantity.System
}

// Sum is one computed figure.
type Sum struct {
	Name    string   `json:"name"`
	Title   string   `json:"title"`
	Value   *float64 `json:"value"` // null where only its range is known
	Low     float64  `json:"low"`
	High    float64  `json:"high"`
	Unit    string   `json:"unit"`
	Working []string `json:"working"`
	Assumed []string `json:"assumed"`
}

// ClaimedSize is a number as it was claimed.
type ClaimedSize struct {
	Said  string   `json:"said"`
	Off   float64  `json:"off"` // by what factor it lies outside the range: above 1 too high, below 1 too low
	Sum   Sum      `json:"sum"`
	Given []string `json:"given"` // facts the claim does not state, taken from the entry
}

// NewReckoned makes what is shown of a reckoning; nil where there is nothing to show.
func NewReckoned(r reckon.Reckoning, system quantity.System) *Reckoned {
	if r.Empty() {
		return nil
	}
	out := &Reckoned{Figures: []Sum{}, Claimed: []ClaimedSize{}, system: system}
	for _, f := range r.Figures {
		out.Figures = append(out.Figures, newSum(f, system))
	}
	for _, c := range r.Claimed {
		out.Claimed = append(out.Claimed, ClaimedSize{c.Text, c.Off(), newSum(c.Figure, system), nonNil(plainAll(c.Given, system))})
	}
	return out
}

func newSum(r *figure.Result, system quantity.System) Sum {
	to := func(v float64) quantity.Quantity { return quantity.Quantity{Value: v, Unit: r.Figure.Unit}.To(system) }
	s := Sum{Name: r.Figure.Name, Title: r.Figure.Title, Low: to(r.Low).Value, High: to(r.High).Value, Unit: to(r.Low).Unit,
		Working: plainAll(r.Working, system), Assumed: plainAll(r.Assumed, system)}
	if r.Known {
		v := to(r.Best).Value
		s.Value = &v
	}
	return s
}

// Line prints a computed figure with its range.
func (s Sum) Line(system quantity.System) string {
	print := func(v float64) string { return quantity.Quantity{Value: v, Unit: s.Unit}.Print(system) }
	if s.Value != nil && s.Low == s.High {
		return s.Title + ": " + print(*s.Value)
	}
	return s.Title + ": " + print(s.Low) + " to " + print(s.High)
}

// Text prints the reckoning for a person.
func (r *Reckoned) Text(w Writer, look Look) {
	fmt.Fprintf(w, "%s\n", look.paint(bold, "What the numbers in it come to"))
	for _, c := range r.Claimed {
		fmt.Fprintf(w, "  - %s\n", look.wrap(4, "“"+c.Said+"” "+HowFar(c.Off)+": "+c.Sum.Line(r.system)))
	}
	for _, f := range r.Figures {
		fmt.Fprintf(w, "  - %s\n", look.wrap(4, f.Line(r.system)))
		f.work(w, look)
	}
	fmt.Fprintln(w)
}

// HowFar says how a claimed number stands to what is computed.
func HowFar(off float64) string {
	switch {
	case off > 1:
		return fmt.Sprintf("is too much, by a factor of %.1f", off)
	case off < 1 && off > 0:
		return fmt.Sprintf("is too little, by a factor of %.1f", 1/off)
	}
	return "is about right"
}
