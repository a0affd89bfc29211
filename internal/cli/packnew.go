package cli

import (
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"github.com/spf13/cobra"
)

// newPack is what a pack starts from: an example of everything that a pack can hold. NAME and TOPIC stand for its name.
//
//go:embed all:newpack
var newPack embed.FS

var packName = regexp.MustCompile(`^[a-z][a-z0-9-]*$`)

func (a *app) packNew() *cobra.Command {
	return &cobra.Command{
		Use:     "new DIR",
		Short:   "Write a pack to start from, with an example of everything it can hold",
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
			if err := writeNewPack(dir, name); err != nil {
				return badInput{err}
			}
			fmt.Fprintf(a.out, "%s: written. `hearsay pack check %[1]s` checks it, `hearsay pack test %[1]s` tests it; `hearsay --pack %[1]s review JOB.yaml` uses it.\n", dir)
			return a.sayMade()
		},
	}
}

func writeNewPack(dir, name string) error {
	named := strings.NewReplacer("NAME", name, "TOPIC", strings.ReplaceAll(name, "-", "_"))
	return fs.WalkDir(newPack, "newpack", func(file string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := newPack.ReadFile(file)
		if err != nil {
			return err
		}
		path := filepath.Join(dir, filepath.FromSlash(named.Replace(strings.TrimPrefix(file, "newpack/"))))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return err
		}
		return os.WriteFile(path, []byte(named.Replace(string(text))), 0o644)
	})
}
