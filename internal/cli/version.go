package cli

import (
	"fmt"
	"runtime/debug"

	"github.com/spf13/cobra"
	"github.com/spf13/cobra/doc"
)

// release is the version of a release build; the release script sets it.
var release string

// version is the release, or what the build knows of itself.
func version() string {
	if release != "" {
		return release
	}
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" && info.Main.Version != "(devel)" {
		return info.Main.Version
	}
	return "development"
}

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
				return a.printJSON(map[string]any{"version": version(), "rulebook": book.Revision(), "practices": len(book.Practices())})
			}
			fmt.Fprintf(a.out, "hearsay %s, rulebook %s (%d practices)\n", version(), book.Revision(), len(book.Practices()))
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
			if err := doc.GenManTree(c.Root(), &doc.GenManHeader{Title: "HEARSAY", Section: "1", Source: "hearsay " + version()}, args[0]); err != nil {
				return badInput{fmt.Errorf("%w: name a folder that exists", err)}
			}
			return nil
		},
	}
}
