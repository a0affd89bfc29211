package report

import (
	"fmt"
	"strings"

	"hearsay/internal/belief"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/release"
)

// Claim is a claim as it was answered, and its JSON form.
type Claim struct {
	belief.Answer
	Reckoned *Reckoned    `json:"reckoned,omitempty"`
	Made     release.Made `json:"made"`
	limits   *limit.Book
}

// NewClaim makes what is shown of an answer, quantities in the unit system asked for. limits, which may be nil, gives the
// titles of the works cited.
func NewClaim(a belief.Answer, limits *limit.Book, system quantity.System) Claim {
	return Claim{Answer: a.Print(func(text string) string { return Plain(text, system) }), limits: limits}
}

var verdictWord = map[belief.Verdict]string{belief.Myth: "NOT SO", belief.Holds: "THAT IS SO", belief.Depends: "IT DEPENDS"}

// Text prints the answer for a person: the verdict first, then the entry as it is best told.
func (c Claim) Text(w Writer, look Look) {
	if !c.Answered {
		c.unsure(w, look)
		return
	}
	fmt.Fprintf(w, "%s  %s\n", look.paint(red+bold, verdictWord[c.Verdict]), look.paint(faint, "["+*c.Belief+"]"))
	if c.Reckoned != nil {
		c.Reckoned.Text(w, look)
	}
	t := c.Answer.Text
	if t.DependsOn != "" {
		fmt.Fprintf(w, "%s\n", look.wrap(0, "It depends: "+t.DependsOn+"."))
	}
	for _, part := range []struct{ head, text string }{{"", t.Fact}, {"", t.Belief}, {"Why", t.Why}, {"Do", t.Do}} {
		c.part(w, look, part.head, part.text)
	}
	if len(c.Numbers) > 0 {
		fmt.Fprintf(w, "\n%s\n", look.paint(bold, "Numbers"))
		for _, n := range c.Numbers {
			fmt.Fprintf(w, "  - %s\n", look.wrap(4, n))
		}
	}
	c.part(w, look, "Say", t.Say)
	fmt.Fprintln(w)
	for _, x := range c.Changed {
		fmt.Fprintf(w, "%s\n", look.wrap(9, "Changed: "+x))
	}
	for _, s := range c.Sources {
		fmt.Fprintf(w, "%s\n", look.paint(faint, look.wrap(8, "Source: "+c.source(s).Line())))
	}
	fmt.Fprintln(w, look.paint(faint, look.wrap(0, codeFirst)))
	fmt.Fprintln(w, look.paint(faint, look.wrap(0, c.Made.Line())))
}

func (c Claim) part(w Writer, look Look, head, text string) {
	if text == "" {
		return
	}
	fmt.Fprintln(w)
	if head != "" {
		fmt.Fprintf(w, "%s\n", look.paint(bold, head))
	}
	fmt.Fprintln(w, look.wrap(0, text))
}

func (c Claim) source(s belief.Source) Source {
	out := Source{Work: s.Work, Title: s.Work, Where: s.Where, Basis: s.Basis}
	if c.limits != nil {
		if full := Sources(c.limits, []limit.Cite{{Source: s.Work, Where: s.Where, Basis: s.Basis}}); len(full) > 0 {
			return full[0]
		}
	}
	return out
}

// unsure asks whether one of the nearest beliefs is meant, or says that none is.
func (c Claim) unsure(w Writer, look Look) {
	defer func() { fmt.Fprintln(w, look.paint(faint, look.wrap(0, c.Made.Line()))) }()
	if c.Far || len(c.Near) == 0 {
		fmt.Fprintln(w, look.wrap(0, "I don't know that one. I can answer what is said about ordering, water, delivery, curing, finishing, cold and hot weather, the ground, steel, joints, floor moisture, durability, strength tests and safety."))
		return
	}
	fmt.Fprintln(w, "I am not sure what is meant. Is it one of these?")
	for i, n := range c.Near {
		fmt.Fprintf(w, "  %d. %s? %s\n", i+1, look.wrap(5, sentence(n.Saying)), look.paint(faint, "["+n.Belief+"]"))
	}
}

func sentence(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
