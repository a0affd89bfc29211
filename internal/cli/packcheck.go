package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"regexp"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/folder"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
	"hearsay/internal/words"
	"hearsay/rules"
)

func (a *app) packCheck() *cobra.Command {
	var keyFile string
	c := &cobra.Command{
		Use:   "check DIR",
		Short: "Say whether a pack can be used, or where and why not",
		Args:  cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, p, err := a.bookWith(args[0], keyFile)
			if err != nil {
				return err
			}
			own, err := checkCorpus(book, p)
			if err := errors.Join(append(book.Problems(p), err)...); err != nil {
				return badInput{err}
			}
			fmt.Fprintf(a.out, "pack %s, by %s: it can be used (%s; %d practices in all, revision %s)\n", p.Name, p.By, strings.Join(contents(book, p, own), ", "), len(book.Practices()), book.Revision())
			if left := notRead(args[0]); len(left) > 0 {
				fmt.Fprintf(a.out, "not read: %s (a pack is its pack.yaml, rules/, corpus/ and jobs/)\n", strings.Join(left, ", "))
			}
			fmt.Fprintln(a.out, book.Made().Line())
			return nil
		},
	}
	c.Flags().StringVar(&keyFile, "key", "", "`file` of the key that it must be signed with")
	return c
}

func (a *app) packTest() *cobra.Command {
	var keyFile string
	c := &cobra.Command{
		Use:   "test DIR",
		Short: "Run the Rego tests of a pack over the whole rulebook, and judge its jobs",
		Long: `Test runs the Rego tests that stand beside the rules, and judges the two jobs of each practice
of the pack, jobs/<topic>/<name>.yaml: in the one under wrong it must be wrong, with every
number it lists, and its correction must put it right; in the one under right it must be right.`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			book, p, err := a.bookWith(args[0], keyFile)
			if err != nil {
				return err
			}
			results, err := book.RunTests()
			if err != nil {
				return badInput{err}
			}
			jobs, unproven, err := book.RunJobs(c.Context(), p)
			if err != nil {
				return badInput{err}
			}
			results = append(results, jobs...)
			failed := 0
			for _, r := range results {
				if r.Failure != "" {
					failed++
					fmt.Fprintf(a.out, "FAIL %s: %s\n", r.Name, r.Failure)
				}
			}
			for _, id := range unproven {
				fmt.Fprintf(a.out, "no jobs prove %s: write jobs/%[1]s.yaml with a job under wrong: and one under right:\n", id)
			}
			fmt.Fprintf(a.out, "%d tests, %d of them on jobs, %d failed\n", len(results), len(jobs), failed)
			fmt.Fprintln(a.out, book.Made().Line())
			if failed > 0 {
				a.status = exitWrong
			}
			return nil
		},
	}
	c.Flags().StringVar(&keyFile, "key", "", "`file` of the key that it must be signed with")
	return c
}

// notRead lists what lies in the folder of a pack and is no part of it, hidden files aside.
func notRead(path string) []string {
	entries, err := os.ReadDir(path)
	if err != nil { // an archive
		return nil
	}
	var left []string
	for _, e := range entries {
		if name := e.Name(); !strings.HasPrefix(name, ".") && !slices.Contains([]string{"pack.yaml", "rules", "corpus", "jobs"}, name) {
			left = append(left, name)
		}
	}
	return left
}

// bookWith loads the rulebook with one pack over it, and compiles it.
func (a *app) bookWith(path, keyFile string) (*rulebook.Book, *rulebook.Pack, error) {
	key, err := a.key()
	if keyFile != "" {
		key, err = readKey(keyFile)
	}
	if err != nil {
		return nil, nil, err
	}
	p, err := openPack(path, key)
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

// contents counts what is in a pack.
func contents(book *rulebook.Book, p *rulebook.Pack, beliefs int) []string {
	facts, limits, practices := 0, 0, 0
	for _, f := range book.Facts.Facts() {
		if f.Pack == p.Name {
			facts++
		}
	}
	for _, l := range book.Limits.Limits() {
		if l.Pack == p.Name {
			limits++
		}
	}
	for _, one := range book.Practices() {
		if one.Pack == p.Name {
			practices++
		}
	}
	list := []string{fmt.Sprintf("%d facts, %d limits, %d practices, %d beliefs", facts, limits, practices, beliefs)}
	if len(p.Off) > 0 {
		list = append(list, fmt.Sprintf("%d practices switched off", len(p.Off)))
	}
	if p.Signed {
		list = append(list, "its signature is good")
	}
	return list
}

// checkCorpus reads the words and every belief of a pack, gives how many beliefs there are, and every problem they have.
func checkCorpus(book *rulebook.Book, p *rulebook.Pack) (int, error) {
	laid := rulebook.Corpus(corpus.Files, p)
	var problems []error
	if _, err := words.New(book.Facts, laid); err != nil {
		problems = append(problems, err)
	}
	c, err := belief.Load(laid)
	if err != nil {
		return 0, errors.Join(append(problems, err)...)
	}
	own := 0
	for _, id := range c.IDs() {
		file := id + ".md"
		if folder.Owner(laid, file) == "" {
			continue
		}
		own++
		e, err := c.Entry(id)
		if err != nil {
			problems = append(problems, fmt.Errorf("pack %s: corpus/%w", p.Name, err))
			continue
		}
		for _, problem := range entryProblems(book, e) {
			problems = append(problems, fmt.Errorf("pack %s: corpus/%s:%d: %s", p.Name, file, lineOf(laid, file, problem.what), problem.text))
		}
	}
	return own, errors.Join(problems...)
}

var inBraces = regexp.MustCompile(`\{([^}]*)\}`)

type entryProblem struct{ what, text string }

// entryProblems says what a belief names and does not exist.
func entryProblems(book *rulebook.Book, e *belief.Entry) []entryProblem {
	var list []entryProblem
	add := func(what, format string, args ...any) {
		list = append(list, entryProblem{what, fmt.Sprintf(format, args...)})
	}
	for _, id := range e.Practices {
		if _, ok := book.Practice(id); !ok {
			add(id, "there is no practice %s: `hearsay rules` lists them", id)
		}
	}
	for _, s := range e.Sources {
		if err := book.Limits.CheckCite(limit.Cite{Source: s.Work, Basis: s.Basis}); err != nil {
			add(s.Work, "%v", err)
		}
	}
	figures := e.Figures
	for _, r := range e.Ranges {
		figures = append(figures[:len(figures):len(figures)], r.Figure)
	}
	for _, name := range figures {
		if _, ok := book.Figures.Find(name); !ok {
			add(name, "there is no figure %s: `hearsay figure` lists them", name)
		}
	}
	for as, from := range e.Reads {
		for _, path := range []string{as, from} {
			if _, ok := book.Facts.Fact(path); !ok {
				add(path, "there is no fact %s: `hearsay facts` lists them", path)
			}
		}
	}
	if !slices.Contains([]string{"", "any", "cold", "hot"}, e.Season) {
		add("season:", "season %q is none of any, cold and hot", e.Season)
	}
	for _, text := range append([]string{e.Fact, e.Saying, e.Why, e.Do, e.Say}, e.Numbers...) {
		for _, m := range inBraces.FindAllStringSubmatch(text, -1) {
			if _, err := quantity.Parse(m[1]); err != nil {
				add(m[0], "%s is no quantity: %v", m[0], err)
			}
		}
	}
	if said := len(e.Said["homeowner"]) + len(e.Said["crew"]) + len(e.Said["office"]); said < leastSaid {
		add("said", "it is said in %d ways: write at least %d, as different as people speak, so that it is found", said, leastSaid)
	}
	if e.Verdict != belief.Depends && len(e.Denied["homeowner"])+len(e.Denied["crew"])+len(e.Denied["office"]) == 0 {
		add("denied", "nobody denies it: write at least one sentence that says the opposite, or it cannot tell one from the other")
	}
	return list
}

// leastSaid is the least number of ways of saying a belief with which it is found at all reliably.
const leastSaid = 5

// lineOf finds the line of an entry that holds a text; 1 where none does.
func lineOf(files fs.FS, file, text string) int {
	content, err := fs.ReadFile(files, file)
	if err != nil {
		return 1
	}
	before, _, found := strings.Cut(string(content), text)
	if !found {
		return 1
	}
	return strings.Count(before, "\n") + 1
}
