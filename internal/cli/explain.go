package cli

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"

	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

func (a *app) rulesCommand() *cobra.Command {
	return &cobra.Command{
		Use:     "rules [PRACTICE]",
		Short:   "List the practices, or explain one in full",
		Example: "  hearsay rules\n  hearsay rules water/over-limit",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			system, err := a.system()
			if err != nil {
				return err
			}
			if len(args) == 1 {
				p, ok := book.Practice(args[0])
				if !ok {
					var ids []string
					for _, p := range book.Practices() {
						ids = append(ids, p.ID)
					}
					return badInput{fmt.Errorf("no practice is called %q: did you mean %s? (`hearsay rules` lists them)", args[0], rulebook.Nearest(args[0], ids))}
				}
				return a.show(book, "", report.NewPractice(book, p, system))
			}
			list := report.Practices{}
			for _, p := range book.Practices() {
				list = append(list, report.NewPractice(book, p, system))
			}
			return a.show(book, "practices", list)
		},
	}
}

func (a *app) sourcesCommand() *cobra.Command {
	return &cobra.Command{
		Use:     "sources [WORK]",
		Short:   "List the works cited, or show what rests on one",
		Example: "  hearsay sources\n  hearsay sources aci-318",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			if len(args) == 1 {
				w, ok := book.Limits.Work(args[0])
				if !ok {
					var ids []string
					for _, w := range book.Limits.Works() {
						ids = append(ids, w.ID)
					}
					return badInput{fmt.Errorf("no work is called %q: did you mean %s? (`hearsay sources` lists them)", args[0], rulebook.Nearest(args[0], ids))}
				}
				return a.show(book, "", report.NewWork(book, w))
			}
			list := report.Works{}
			for _, w := range book.Limits.Works() {
				list = append(list, report.NewWork(book, w))
			}
			return a.show(book, "works", list)
		},
	}
}

func (a *app) factsCommand() *cobra.Command {
	var figures string
	c := &cobra.Command{
		Use:     "facts [FACT]",
		Short:   "List the facts a job can state, or explain one in full",
		Example: "  hearsay facts\n  hearsay facts order.slump\n  hearsay facts --figures job.yaml",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			if figures != "" {
				j, err := a.readJob(book, figures)
				if err != nil {
					return err
				}
				q, err := book.Query(context.Background(), j)
				if err != nil {
					return err
				}
				return a.printJSON(q)
			}
			system, err := a.system()
			if err != nil {
				return err
			}
			if len(args) == 1 {
				f, ok := book.Facts.Fact(args[0])
				if !ok {
					return badInput{fmt.Errorf("no fact is called %q: did you mean %s? (`hearsay facts` lists them)", args[0], book.Facts.Nearest(args[0]))}
				}
				return a.show(book, "", report.NewFact(book, f, system))
			}
			list := report.Facts{}
			for _, f := range book.Facts.Facts() {
				list = append(list, report.NewFact(book, f, system))
			}
			return a.show(book, "facts", list)
		},
	}
	c.Flags().StringVar(&figures, "figures", "", "print the facts and figures of this job `file` as the rules read them (JSON)")
	return c
}

// shown is what can be printed both for a person and as JSON.
type shown interface {
	Text(w report.Writer, look report.Look)
}

// show prints one thing, or a list under its name.
func (a *app) show(book *rulebook.Book, list string, v shown) error {
	switch {
	case a.json && list != "":
		return a.printList(list, v, book.Made())
	case a.json:
		return a.printJSON(v)
	}
	v.Text(a.out, a.look())
	fmt.Fprintln(a.out, book.Made().Line())
	return nil
}
