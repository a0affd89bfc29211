package cli

import (
	"fmt"

	"github.com/spf13/cobra"
	"github.com/spf13/cobra/doc"

	"hearsay/internal/release"
)

func (a *app) versionCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "version",
		Short: "Print the version and the revision of the rulebook",
		Args:  cobra.NoArgs,
		RunE: func(_ *cobra.Command, _ []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			if a.json {
				return a.printJSON(map[string]any{"version": release.Version(), "rulebook": book.Revision(), "practices": len(book.Practices()), "made": book.Made()})
			}
			fmt.Fprintf(a.out, "hearsay %s, rulebook %s (%d practices)\n", release.Version(), book.Revision(), len(book.Practices()))
			return nil
		},
	}
}

func (a *app) manualCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "manual DIR",
		Short: "Write the manual pages into a folder",
		Args:  cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			made, err := a.made()
			if err != nil {
				return err
			}
			source := "hearsay " + made.Version + ", rulebook " + made.Rulebook
			if err := doc.GenManTree(c.Root(), &doc.GenManHeader{Title: "HEARSAY", Section: "1", Source: source}, args[0]); err != nil {
				return badInput{fmt.Errorf("%w: name a folder that exists", err)}
			}
			return nil
		},
	}
}
