package cli

import (
	"encoding/csv"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"github.com/spf13/cobra"

	"hearsay/internal/release"
	"hearsay/internal/store"
)

func (a *app) crewExport() *cobra.Command {
	var data, name, format string
	c := &cobra.Command{
		Use:     "export",
		Short:   "Print everything kept of a crew, or of all, as JSON or its answers as CSV",
		Example: `  hearsay crew export --crew "north yard" --format csv > answers.csv`,
		Args:    cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			return a.kept(cmd.Context(), data, func(kept *store.Store) error {
				x, err := kept.ExportCrews(cmd.Context(), name)
				if err != nil {
					return err
				}
				made, err := a.made()
				if err != nil {
					return err
				}
				switch format {
				case "json":
					return a.printJSON(exported{x, made})
				case "csv":
					return a.answersCSV(x, made)
				}
				return badInput{fmt.Errorf("--format %s is not known: write json or csv", format)}
			})
		},
	}
	c.Flags().StringVar(&data, "data", "", dataHelp)
	c.Flags().StringVar(&name, "crew", "", "the crew (default: all)")
	c.Flags().StringVar(&format, "format", "json", "json (which can be imported) or csv")
	return c
}

// exported is what was kept of crews, and by what it was written.
type exported struct {
	store.CrewExport
	Made release.Made `json:"made,omitzero"`
}

func (a *app) answersCSV(x store.CrewExport, made release.Made) error {
	out := csv.NewWriter(a.out)
	crews, held := map[string]string{}, map[string]time.Time{}
	for _, s := range x.Sessions {
		crews[s.Code], held[s.Code] = s.Crew, s.Held
	}
	rows := [][]string{{"crew", "session", "held", "person", "question", "belief", "chosen", "right", "answered", "version", "rulebook"}}
	for _, r := range x.Answers {
		rows = append(rows, []string{cell(crews[r.Code]), r.Code, held[r.Code].Format(time.RFC3339), cell(r.Person), strconv.Itoa(r.Question + 1), r.Belief,
			string(rune('A' + r.Chosen)), strconv.FormatBool(r.Correct), r.Answered.Format(time.RFC3339), made.Version, made.Rulebook})
	}
	return out.WriteAll(rows)
}

// cell keeps a spreadsheet from taking a name for a formula.
func cell(text string) string {
	if text != "" && (text[0] == '=' || text[0] == '+' || text[0] == '-' || text[0] == '@') {
		return "'" + text
	}
	return text
}

func (a *app) crewImport() *cobra.Command {
	var data string
	c := &cobra.Command{
		Use:   "import FILE",
		Short: "Keep what was exported as JSON; sessions that are there already stay as they are",
		Args:  cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			in, done, err := a.open(args[0])
			if err != nil {
				return err
			}
			defer done()
			var x exported
			decode := json.NewDecoder(in)
			decode.DisallowUnknownFields()
			if err := decode.Decode(&x); err != nil {
				return badInput{fmt.Errorf("%s is not an export of crews: %w; make one with `hearsay crew export`", args[0], err)}
			}
			return a.kept(cmd.Context(), data, func(kept *store.Store) error {
				n, err := kept.ImportCrews(cmd.Context(), x.CrewExport)
				if err != nil {
					return err
				}
				fmt.Fprintf(a.out, "Kept %d sessions; %d were there already.\n", n, len(x.Sessions)-n)
				return a.sayMade()
			})
		},
	}
	c.Flags().StringVar(&data, "data", "", dataHelp)
	return c
}

func (a *app) crewBackup() *cobra.Command {
	var data string
	c := &cobra.Command{
		Use:   "backup FILE",
		Short: "Write a copy of the whole database, also while it is in use",
		Args:  cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			return a.kept(cmd.Context(), data, func(kept *store.Store) error {
				if err := kept.Backup(cmd.Context(), args[0]); err != nil {
					return badInput{err}
				}
				return nil
			})
		},
	}
	c.Flags().StringVar(&data, "data", "", dataHelp)
	return c
}

func (a *app) crewRestore() *cobra.Command {
	var data string
	c := &cobra.Command{
		Use:   "restore FILE",
		Short: "Put a backup in the place of the database; nothing else may have it open",
		Args:  cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			path, err := storePath(data)
			if err != nil {
				return err
			}
			if err := store.Restore(cmd.Context(), args[0], path); err != nil {
				return badInput{err}
			}
			fmt.Fprintf(a.out, "Restored. What was there before stands in %s.before-restore; delete it when it is no longer wanted.\n", filepath.Base(path))
			return a.sayMade()
		},
	}
	c.Flags().StringVar(&data, "data", "", dataHelp)
	return c
}

func (a *app) crewForget() *cobra.Command {
	var data, name, person string
	var all bool
	c := &cobra.Command{
		Use:   "forget",
		Short: "Delete a person with every answer, or a whole crew",
		Example: `  hearsay crew forget --crew "north yard" --person Ana
  hearsay crew forget --crew "north yard" --everybody`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			if name == "" || (person == "") == !all {
				return badInput{errors.New("say whom to forget: --crew with --person, or --crew with --everybody")}
			}
			return a.kept(cmd.Context(), data, func(kept *store.Store) error {
				if all {
					return kept.ForgetCrew(cmd.Context(), name)
				}
				return kept.ForgetPerson(cmd.Context(), name, person)
			})
		},
	}
	f := c.Flags()
	f.StringVar(&data, "data", "", dataHelp)
	f.StringVar(&name, "crew", "", "the crew")
	f.StringVar(&person, "person", "", "the person to forget")
	f.BoolVar(&all, "everybody", false, "forget the crew with all its people and sessions")
	return c
}

// storePath is where the database stands.
func storePath(given string) (string, error) {
	if given != "" {
		return given, nil
	}
	if path := os.Getenv("HEARSAY_DATA"); path != "" {
		return path, nil
	}
	folder, err := os.UserConfigDir()
	if err != nil {
		return "", badInput{fmt.Errorf("%w: name the database file with --data", err)}
	}
	return filepath.Join(folder, "hearsay", "hearsay.db"), nil
}
