package cli

import (
	"fmt"

	"github.com/spf13/cobra"

	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// check is one thing the doctor looked at.
type check struct {
	Name string `json:"name"`
	Good bool   `json:"good"`
	Says string `json:"says"`
}

// health is what the doctor found.
type health struct {
	Checks   []check            `json:"checks"`
	Examples []rulebook.Example `json:"examples"`
}

func (a *app) doctorCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "doctor",
		Short: "Check this installation: rulebook, corpus, index, and every worked example computed anew",
		Args:  cobra.NoArgs,
		RunE: func(_ *cobra.Command, _ []string) error {
			h, err := a.examine()
			if err != nil {
				return err
			}
			for _, c := range h.Checks {
				if !c.Good {
					a.status = exitWrong
				}
			}
			for _, e := range h.Examples {
				if !e.Good {
					a.status = exitWrong
				}
			}
			if a.json {
				return a.printJSON(h)
			}
			a.sayHealth(h)
			return nil
		},
	}
}

func (a *app) examine() (health, error) {
	var h health
	add := func(name, says string, err error) {
		if err != nil {
			says = err.Error()
		}
		h.Checks = append(h.Checks, check{name, err == nil, says})
	}
	book, err := a.book()
	if err != nil {
		return h, err
	}
	add("rulebook", fmt.Sprintf("%d practices, %d limits, %d figures, %d facts; revision %s; it compiles",
		len(book.Practices()), len(book.Limits.Limits()), len(book.Figures.Figures()), len(book.Facts.Facts()), book.Revision()), book.Compile())
	desk, err := a.claims()
	add("corpus and index", "the index answers", err)
	if err == nil {
		answer, err := desk.answer("hardening is just drying")
		if err == nil && !answer.Answered {
			err = fmt.Errorf("the index does not find a belief by its own words: the build is broken, install it again")
		}
		add("a known claim", "answered", err)
	}
	_, err = a.words(book)
	add("reader of words", "it reads", err)
	h.Examples, err = book.Examples(rules.Files)
	return h, err
}

func (a *app) sayHealth(h health) {
	word := map[bool]string{true: "ok   ", false: "WRONG"}
	for _, c := range h.Checks {
		fmt.Fprintf(a.out, "%s %s: %s\n", word[c.Good], c.Name, c.Says)
	}
	fmt.Fprintln(a.out, "\nWorked examples from published works, printed against computed:")
	for _, e := range h.Examples {
		print := func(v float64) string { return quantity.Quantity{Value: v, Unit: e.Unit}.Print(quantity.US) }
		fmt.Fprintf(a.out, "%s %-22s %-24s printed %-14s computed %-14s %s, %s\n", word[e.Good], e.Name, e.Figure, print(e.Printed), print(e.Computed), e.Source, e.Where)
		if e.Note != "" {
			fmt.Fprintf(a.out, "      %s\n", e.Note)
		}
		if e.Problem != "" {
			fmt.Fprintf(a.out, "      %s\n", e.Problem)
		}
	}
}
