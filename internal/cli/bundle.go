package cli

import (
	"fmt"
	"os"

	"github.com/spf13/cobra"
)

func (a *app) bundleCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "bundle FILE.tar.gz",
		Short: "Write the rulebook as a standard bundle of Open Policy Agent",
		Long: `Bundle writes the rules, limits and a manifest with roots and revision as a standard
bundle, which any stock Open Policy Agent loads. Its input is what
"hearsay facts --figures JOB.yaml" prints.`,
		Example: "  hearsay bundle rulebook.tar.gz\n  opa run --server -b rulebook.tar.gz",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			out, err := os.Create(args[0])
			if err != nil {
				return badInput{fmt.Errorf("%w: name a file that can be written", err)}
			}
			if err := book.WriteBundle(out); err != nil {
				return err
			}
			if err := out.Close(); err != nil {
				return err
			}
			fmt.Fprintf(a.err, "%s: revision %s, %d practices\n", args[0], book.Revision(), len(book.Practices()))
			return nil
		},
	}
}
