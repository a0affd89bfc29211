package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"hearsay/corpus"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// packs opens the packs named by HEARSAY_PACKS and by --pack, in that order, once.
func (a *app) packs() ([]*rulebook.Pack, error) {
	if a.opened != nil {
		return a.opened, nil
	}
	var dirs []string
	if env := os.Getenv("HEARSAY_PACKS"); env != "" {
		dirs = filepath.SplitList(env)
	}
	key, err := a.key()
	if err != nil {
		return nil, err
	}
	packs := []*rulebook.Pack{}
	for _, dir := range append(dirs, a.packDirs...) {
		p, err := openPack(dir, key)
		if err != nil {
			return nil, err
		}
		packs = append(packs, p)
	}
	a.opened = packs
	return packs, nil
}

// knowledge gives the rules and the corpus, with those of the packs laid over them.
func (a *app) knowledge() (ruleFiles, corpusFiles fs.FS, err error) {
	packs, err := a.packs()
	if err != nil {
		return nil, nil, err
	}
	return rulebook.Rules(rules.Files, packs...), rulebook.Corpus(corpus.Files, packs...), nil
}

// blame says that an error in what was loaded is one in the input, where packs were laid over what is built in.
func (a *app) blame(err error) error {
	if err != nil && len(a.opened) > 0 {
		return badInput{err}
	}
	return err
}

// key reads the key that packs must be signed with; nil where none was given.
func (a *app) key() (*rulebook.Key, error) {
	file := a.packKey
	if file == "" {
		file = os.Getenv("HEARSAY_PACK_KEY")
	}
	if file == "" {
		return nil, nil
	}
	return readKey(file)
}

func readKey(file string) (*rulebook.Key, error) {
	text, err := os.ReadFile(file)
	if err != nil {
		return nil, badInput{fmt.Errorf("%w: name the file that holds the key", err)}
	}
	k, err := rulebook.ReadKey(text)
	if err != nil {
		return nil, badInput{fmt.Errorf("%s: %w", file, err)}
	}
	return k, nil
}

// openPack opens a pack from its folder or its archive.
func openPack(path string, key *rulebook.Key) (*rulebook.Pack, error) {
	p, err := readPack(path, key)
	if errors.Is(err, fs.ErrNotExist) {
		err = fmt.Errorf("%w: a pack is a folder with a pack.yaml (`hearsay pack new DIR` writes one) or an archive of it", err)
	}
	if err != nil {
		return nil, badInput{fmt.Errorf("pack %s: %w", path, err)}
	}
	return p, nil
}

func readPack(path string, key *rulebook.Key) (*rulebook.Pack, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	switch {
	case info.IsDir():
		root, err := os.OpenRoot(path) // which no link leads out of
		if err != nil {
			return nil, err
		}
		defer root.Close()
		return rulebook.OpenPack(root.FS(), key)
	case info.Mode().IsRegular():
		f, err := os.Open(path)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		return rulebook.UnpackPack(f, key)
	}
	return nil, errors.New("it is neither a folder nor an archive")
}

func (a *app) packCommand() *cobra.Command {
	c := &cobra.Command{
		Use:   "pack",
		Short: "Write, check, test and sign a pack: your own rules, limits, facts, beliefs and words over the built-in ones",
		Long: `A pack is a folder that is laid over what the tool knows: local code, a company's policy,
another country's practice, what people say where you are. Use it with --pack or
HEARSAY_PACKS, as a folder or as an archive. What it changes shows on every finding and on
every claim that it answers.

A pack can be signed. Where a key is given (--pack-key or HEARSAY_PACK_KEY), packs that do
not carry its signature, or were changed after it, are refused.`,
	}
	c.AddCommand(a.packNew(), a.packCheck(), a.packTest(), a.packSign(), a.packArchive())
	return c
}
