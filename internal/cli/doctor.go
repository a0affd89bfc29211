package cli

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"

	"hearsay/internal/belief"
	"hearsay/internal/quantity"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
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
	Version  string             `json:"version"`
	Rulebook string             `json:"rulebook"`
	Checks   []check            `json:"checks"`
	Examples []rulebook.Example `json:"examples"`
}

func (a *app) doctorCommand() *cobra.Command {
	var database string
	c := &cobra.Command{
		Use:   "doctor",
		Short: "Check this installation: rulebook, corpus, index, database, and every worked example computed anew",
		Long: `Doctor looks at everything that answers rest on: whether the rules compile and pass their
tests, whether every belief can be read, names what exists and is found by its own words,
whether the database is whole, of a format that is known and can be written to, and
whether the worked examples of published works come out as they are printed. It changes
nothing. Exit status: 0 all good, 1 something wrong.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			h, err := a.examine(c.Context(), database)
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
	c.Flags().StringVar(&database, "database", "", dataHelp)
	c.Flags().StringVar(&database, "data", "", "the same as --database, as in other commands")
	return c
}

func (a *app) examine(ctx context.Context, database string) (health, error) {
	h := health{Version: release.Version()}
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
	h.Rulebook = book.Revision()
	add("rulebook", fmt.Sprintf("%d practices, %d limits, %d figures, %d facts; revision %s; it compiles",
		len(book.Practices()), len(book.Limits.Limits()), len(book.Figures.Figures()), len(book.Facts.Facts()), book.Revision()), book.Compile())
	tests, err := testRules(book)
	add("tests of the rules", tests, err)
	for _, p := range book.Packs() {
		add("pack "+p.Name, "by "+p.By+map[bool]string{true: "; its signature is good", false: "; its signature was not checked"}[p.Signed], nil)
	}
	desk, err := a.claims()
	if err != nil {
		add("corpus", "", err)
	} else {
		beliefs, err := checkBeliefs(desk.corpus, book)
		add("corpus", beliefs, err)
		found, err := checkIndex(desk.corpus)
		add("index", found, err)
	}
	_, err = a.words(book)
	add("reader of words", "it reads", err)
	kept, err := checkDatabase(ctx, database)
	add("database", kept, err)
	h.Examples, err = book.Examples(rules.Files)
	return h, err
}

func testRules(book *rulebook.Book) (string, error) {
	results, err := book.RunTests()
	if err != nil {
		return "", err
	}
	for _, r := range results {
		if r.Failure != "" {
			return "", fmt.Errorf("%s: %s", r.Name, r.Failure)
		}
	}
	return fmt.Sprintf("%d, none fails", len(results)), nil
}

// checkBeliefs reads every entry, and looks whether what it names exists and whether the model was learned from it as it stands.
func checkBeliefs(c *belief.Corpus, book *rulebook.Book) (string, error) {
	for _, id := range c.IDs() {
		e, err := c.Entry(id)
		if err != nil {
			return "", err
		}
		if problems := entryProblems(book, e); len(problems) > 0 {
			return "", fmt.Errorf("%s: %s", id, problems[0].text)
		}
	}
	if old := c.Outdated(); len(old) > 0 {
		return "", fmt.Errorf("the matching was learned before %s changed: the build is broken, install it again", old[0])
	}
	return fmt.Sprintf("%d beliefs, revision %s", len(c.IDs()), c.Revision()), nil
}

// leastFound is the least share of beliefs that must be found first by their own words.
const leastFound = 0.9

func checkIndex(c *belief.Corpus) (string, error) {
	found := 0
	for _, id := range c.IDs() {
		e, err := c.Entry(id)
		if err != nil {
			return "", err
		}
		answer, err := c.Answer(e.Belief)
		if err != nil {
			return "", err
		}
		if answer.Near[0].Belief == id {
			found++
		}
	}
	if float64(found) < leastFound*float64(len(c.IDs())) {
		return "", fmt.Errorf("of %d beliefs %d are found by their own words: the build is broken, install it again", len(c.IDs()), found)
	}
	return fmt.Sprintf("%d of %d beliefs are found first by their own words", found, len(c.IDs())), nil
}

func checkDatabase(ctx context.Context, given string) (string, error) {
	path, err := storePath(given)
	if err != nil {
		return "", err
	}
	c, err := store.Examine(ctx, path)
	switch {
	case err != nil:
		return "", fmt.Errorf("%s: %w", path, err)
	case !c.There:
		return path + ": none yet, and one can be made", nil
	case c.Format < c.Known:
		return fmt.Sprintf("%s: whole and writable; format %d, brought to %d when it is next used", path, c.Format, c.Known), nil
	}
	return fmt.Sprintf("%s: whole and writable; format %d, %d jobs, %d crews", path, c.Format, c.Jobs, c.Crews), nil
}

func (a *app) sayHealth(h health) {
	fmt.Fprintf(a.out, "hearsay %s, rulebook %s\n\n", h.Version, h.Rulebook)
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
