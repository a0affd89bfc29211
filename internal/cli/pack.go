package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"github.com/spf13/cobra"

	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// packs opens the packs named by --pack and by HEARSAY_PACKS, in that order after those of the environment.
func (a *app) packs() ([]*rulebook.Pack, error) {
	var dirs []string
	if env := os.Getenv("HEARSAY_PACKS"); env != "" {
		dirs = filepath.SplitList(env)
	}
	var packs []*rulebook.Pack
	for _, dir := range append(dirs, a.packDirs...) {
		p, err := openPack(dir)
		if err != nil {
			return nil, err
		}
		packs = append(packs, p)
	}
	return packs, nil
}

func openPack(dir string) (*rulebook.Pack, error) {
	p, err := rulebook.OpenPack(os.DirFS(dir))
	if err != nil {
		return nil, badInput{fmt.Errorf("%s: %w", dir, err)}
	}
	return p, nil
}

func (a *app) packCommand() *cobra.Command {
	c := &cobra.Command{
		Use:   "pack",
		Short: "Write, check and test a pack: your own rules, limits and facts over the built-in ones",
		Long: `A pack is a folder that is laid over what the tool knows: local code, a company's policy,
another country's practice. Use it with --pack DIR or HEARSAY_PACKS. What it changes
shows on every finding.`,
	}
	c.AddCommand(a.packNew(), a.packCheck(), a.packTest())
	return c
}

var packName = regexp.MustCompile(`^[a-z][a-z0-9-]*$`)

const newPackYAML = `# The head of a pack. ` + "`off`" + ` switches practices off, each with the reason.
name: %s
by: who answers for it
about: what it is for
# off:
#   order/short-volume: orders are measured by the plant
`

const newPackFacts = `# Facts of your own: group, then facts, as in the built-in dictionary (hearsay facts).
%s:
  about: What is asked here
  facts:
    permit: {kind: flag, name: a permit was given, ask: "Was a permit given?"}
`

const newPackRule = `# METADATA
# scope: package
# title: The driveway has no permit
# custom:
#   stage: order
#   severity: stop
#   why: "Work without a permit can be stopped with the truck on the road."
#   do: "Get the permit first."
package practice.%[1]s["no-permit"]

here if input.member.use == "driveway"

wrong contains "no permit was given" if {
	here
	input.%[1]s.permit == false
}

mend["%[1]s.permit"] := true
`

const newPackTest = `package practice.%[1]s["no-permit_test"]

test_wrong_without_a_permit if {
	data.practice.%[1]s["no-permit"].wrong["no permit was given"] with input as {"member": {"use": "driveway"}, "%[1]s": {"permit": false}}
}

test_right_with_a_permit if {
	count(data.practice.%[1]s["no-permit"].wrong) == 0 with input as {"member": {"use": "driveway"}, "%[1]s": {"permit": true}}
}
`

func (a *app) packNew() *cobra.Command {
	return &cobra.Command{
		Use:     "new DIR",
		Short:   "Write a pack to start from: one fact, one practice, its test",
		Example: "  hearsay pack new heron-county",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			dir := args[0]
			name := filepath.Base(dir)
			if !packName.MatchString(name) {
				return badInput{fmt.Errorf("%q cannot name a pack: use small letters, digits and hyphens", name)}
			}
			if _, err := os.Stat(dir); !errors.Is(err, fs.ErrNotExist) {
				return badInput{fmt.Errorf("%s is there already: name a new folder", dir)}
			}
			topic := strings.ReplaceAll(name, "-", "_")
			files := map[string]string{
				"pack.yaml":                               fmt.Sprintf(newPackYAML, name),
				"rules/facts.yaml":                        fmt.Sprintf(newPackFacts, topic),
				"rules/" + topic + "/no-permit.rego":      fmt.Sprintf(newPackRule, topic),
				"rules/" + topic + "/no-permit_test.rego": fmt.Sprintf(newPackTest, topic),
			}
			for file, text := range files {
				path := filepath.Join(dir, filepath.FromSlash(file))
				if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
					return badInput{err}
				}
				if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
					return badInput{err}
				}
			}
			fmt.Fprintf(a.out, "%s: written. `hearsay pack test %s` tests it; `hearsay --pack %s review JOB.yaml` uses it.\n", dir, dir, dir)
			return nil
		},
	}
}

func (a *app) packCheck() *cobra.Command {
	return &cobra.Command{
		Use:   "check DIR",
		Short: "Say whether a pack can be used, or where and why not",
		Args:  cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, p, err := a.bookWith(args[0])
			if err != nil {
				return err
			}
			fmt.Fprintf(a.out, "pack %s, by %s: it can be used (%d practices, revision %s)\n", p.Name, p.By, len(book.Practices()), book.Revision())
			return nil
		},
	}
}

func (a *app) packTest() *cobra.Command {
	return &cobra.Command{
		Use:   "test DIR",
		Short: "Run the Rego tests of a pack over the whole rulebook",
		Args:  cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, _, err := a.bookWith(args[0])
			if err != nil {
				return err
			}
			results, err := book.RunTests()
			if err != nil {
				return err
			}
			failed := 0
			for _, r := range results {
				if r.Failure != "" {
					failed++
					fmt.Fprintf(a.out, "FAIL %s: %s\n", r.Name, r.Failure)
				}
			}
			fmt.Fprintf(a.out, "%d tests, %d failed\n", len(results), failed)
			if failed > 0 {
				a.status = exitWrong
			}
			return nil
		},
	}
}

// bookWith loads the rulebook with one pack over it, and compiles it.
func (a *app) bookWith(dir string) (*rulebook.Book, *rulebook.Pack, error) {
	p, err := openPack(dir)
	if err != nil {
		return nil, nil, err
	}
	book, err := rulebook.Load(rules.Files, p)
	if err == nil {
		err = book.Compile()
	}
	if err != nil {
		return nil, nil, badInput{err}
	}
	return book, p, nil
}
