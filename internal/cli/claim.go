package cli

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"regexp"
	"strings"
	"time"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"hearsay/internal/belief"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/reckon"
	"hearsay/internal/release"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

func (a *app) claimCommand() *cobra.Command {
	var lines string
	c := &cobra.Command{
		Use:   "claim [TEXT]",
		Short: "Say whether what somebody says about concrete is so, and why",
		Long: `Claim takes a sentence as it was said and answers: is it so, what really happens,
what to do, the numbers, and one sentence to say to the customer. When it is not
sure it asks which belief is meant; what it does not know it says.

Without a sentence, in a terminal, it goes on asking. Exit status: 0 answered, 2 not
answered.`,
		Example: `  hearsay claim "a few gallons on the truck won't hurt"
  hearsay claim --json "hardening is just drying"
  hearsay claim --lines sentences.txt`,
		RunE: func(_ *cobra.Command, args []string) error {
			desk, err := a.claims()
			if err != nil {
				return err
			}
			switch {
			case lines != "":
				return desk.lines(lines)
			case len(args) > 0:
				return desk.one(strings.Join(args, " "))
			}
			return desk.talk()
		},
	}
	c.Flags().StringVar(&lines, "lines", "", "read one claim a line from this `file` (- for standard input), print one JSON object a line")
	return c
}

// claims is what answering claims needs.
type claims struct {
	*app
	corpus   *belief.Corpus
	works    *limit.Book
	made     release.Made
	reckoner *reckon.Reckoner
}

func (a *app) claims() (*claims, error) {
	ruleFiles, corpusFiles, err := a.knowledge()
	if err != nil {
		return nil, err
	}
	c, err := belief.Load(corpusFiles)
	if err != nil {
		return nil, a.blame(err)
	}
	works, err := limit.LoadWorks(ruleFiles)
	if err != nil {
		return nil, a.blame(err)
	}
	made, err := rulebook.MadeOf(rules.Files, a.opened...)
	made.Corpus = c.Revision()
	return &claims{app: a, corpus: c, works: works, made: made}, err
}

func (c *claims) answer(text string) (report.Claim, error) {
	system, err := c.system()
	if err != nil {
		return report.Claim{}, err
	}
	answer, err := c.corpus.Answer(text)
	if err != nil {
		return report.Claim{}, c.blame(err)
	}
	out := report.NewClaim(answer, c.works, system)
	out.Made = c.made
	if answer.Answered && len(answer.Entry.Figures)+len(answer.Entry.Ranges) > 0 && hasNumber(text) {
		out.Reckoned, err = c.reckon(text, answer.Entry, system)
	}
	return out, c.blame(err)
}

// reckon judges the numbers in a claim. What it needs is loaded for the first claim that has one.
func (c *claims) reckon(text string, e *belief.Entry, system quantity.System) (*report.Reckoned, error) {
	if c.reckoner == nil {
		ruleFiles, corpusFiles, err := c.knowledge()
		if err != nil {
			return nil, err
		}
		r, err := reckon.New(ruleFiles, corpusFiles)
		if err != nil {
			return nil, c.blame(err)
		}
		c.reckoner = r
	}
	sums, err := c.reckoner.Of(text, e, time.Now())
	return report.NewReckoned(sums, system), err
}

// numberWords are words that tell that a claim without digits may hold a number.
var numberWords = regexp.MustCompile(`(?i)\d|\b(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fourteen|fifteen|twenty|thirty|forty|fifty|ninety|hundred|thousand|half|quarter|couple|gallon)\b`)

func hasNumber(text string) bool { return numberWords.MatchString(text) }

func (c *claims) one(text string) error {
	if strings.TrimSpace(text) == "" {
		return badInput{fmt.Errorf("the claim is empty: give the sentence that was said")}
	}
	answer, err := c.answer(text)
	if err != nil {
		return err
	}
	if !answer.Answered {
		c.status = exitOpen
	}
	if c.json {
		return c.printJSON(answer)
	}
	answer.Text(c.out, c.look())
	return nil
}

func (c *claims) lines(name string) error {
	in, done, err := c.open(name)
	if err != nil {
		return err
	}
	defer done()
	out := bufio.NewWriter(c.out)
	defer out.Flush()
	encode := json.NewEncoder(out)
	encode.SetEscapeHTML(false)
	lines := bufio.NewScanner(in)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		answer, err := c.answer(lines.Text())
		if err != nil {
			return err
		}
		if err := encode.Encode(answer); err != nil {
			return err
		}
	}
	return lines.Err()
}

// talk answers what is typed, line after line, until an empty line or the end.
func (c *claims) talk() error {
	f, isFile := c.in.(*os.File)
	prompt := isFile && term.IsTerminal(int(f.Fd()))
	if !prompt {
		text, err := io.ReadAll(c.in)
		if err != nil {
			return err
		}
		return c.one(strings.TrimSpace(string(text)))
	}
	lines := bufio.NewScanner(c.in)
	for {
		fmt.Fprint(c.out, "What did they say? (empty line ends)\n> ")
		if !lines.Scan() || strings.TrimSpace(lines.Text()) == "" {
			return lines.Err()
		}
		answer, err := c.answer(lines.Text())
		if err != nil {
			return err
		}
		answer.Text(c.out, c.look())
	}
}
