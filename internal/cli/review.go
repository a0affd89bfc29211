package cli

import (
	"context"
	"fmt"
	"io"
	"os"

	"github.com/spf13/cobra"

	"hearsay/internal/job"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

type reviewOptions struct {
	all       bool
	working   bool
	lines     bool
	corrected string
	say       string
	picture   string
	chart     string
	forecast  string
}

func (a *app) reviewCommand() *cobra.Command {
	var o reviewOptions
	c := &cobra.Command{
		Use:   "review JOB.yaml | --say TEXT",
		Short: "Say what is wrong with a job, why, and what the right numbers are",
		Long: `Review reads a job (a YAML or JSON file, or - for standard input) and judges it
with every practice. First comes what is wrong, worst first, then the questions
that would settle most, then a count of the rest.

With --say it takes the job as somebody tells it, and first says what it understood.
What it could not read is named, and nothing is guessed.

Exit status: 0 nothing wrong, 1 something wrong, 2 nothing known to be wrong but
questions are open, 3 the job could not be used.`,
		Example: `  hearsay review testdata/jobs/shop-floor.yaml
  hearsay review --all --working job.yaml
  hearsay review --units si --json - < job.yaml
  hearsay review --say "Driveway 20x40 at 4 inches, 3000 psi, no air, no curing"
  hearsay review --forecast forecast.csv job.yaml
  hearsay review --chart --forecast forecast.csv job.yaml
  hearsay review --lines jobs.jsonl`,
		Args: func(c *cobra.Command, args []string) error {
			if c.Flags().Changed("say") {
				return cobra.NoArgs(c, args)
			}
			return cobra.ExactArgs(1)(c, args)
		},
		RunE: func(c *cobra.Command, args []string) error {
			if c.Flags().Changed("say") {
				return a.reviewSaid(o)
			}
			return a.review(args[0], o)
		},
	}
	c.Flags().BoolVar(&o.all, "all", false, "show every finding, not only what is wrong")
	c.Flags().BoolVar(&o.working, "working", false, "show how each number was computed, and its sources")
	c.Flags().BoolVar(&o.lines, "lines", false, "read one job a line (JSON) and print one JSON object a line,\nthe working of its numbers only with --working")
	c.Flags().StringVar(&o.say, "say", "", "review the job that this `text` describes")
	c.Flags().StringVar(&o.picture, "picture", "", "draw what the facts give, as SVG files in this `folder`")
	c.Flags().StringVar(&o.chart, "chart", "auto", "print charts in characters: auto (those that what is wrong hangs on), all,\nunicode, ascii (all, in these characters) or none")
	c.Flags().Lookup("chart").NoOptDefVal = "all"
	c.Flags().StringVar(&o.forecast, "forecast", "", forecastUse)
	c.Flags().StringVar(&o.corrected, "corrected", "", "write the job with the least changes that leave nothing wrong to this `file`")
	return c
}

func (a *app) review(name string, o reviewOptions) error {
	book, err := a.book()
	if err != nil {
		return err
	}
	if o.lines {
		return a.reviewLines(book, name, o.working)
	}
	j, err := a.readJob(book, name)
	if err != nil {
		return err
	}
	return a.showJob(book, j, o)
}

// reviewSaid reviews the job that a text describes.
func (a *app) reviewSaid(o reviewOptions) error {
	book, err := a.book()
	if err != nil {
		return err
	}
	j := job.New()
	if err := a.hear(book, j, o.say); err != nil {
		return err
	}
	return a.showJob(book, j, o)
}

// showJob judges a job and prints what came out.
func (a *app) showJob(book *rulebook.Book, j *job.Job, o reviewOptions) error {
	if _, err := a.stateForecast(book.Facts, j, o.forecast); err != nil {
		return err
	}
	result, err := a.judge(book, j, o.all || a.json)
	if err != nil {
		return err
	}
	a.status = status(result)
	if o.corrected != "" {
		if err := a.writeCorrected(book, j, o.corrected); err != nil {
			return err
		}
	}
	if o.picture != "" {
		if err := a.drawJob(book, j, o.picture); err != nil {
			return err
		}
	}
	if a.json {
		return a.printJSON(result)
	}
	look := a.look()
	look.All, look.Working, look.Read = o.all, o.working, o.say != ""
	result.Text(a.out, look)
	return a.chartJob(book, j, result, o.chart, look.Width)
}

func (a *app) readJob(book *rulebook.Book, name string) (*job.Job, error) {
	text, err := a.read(name)
	if err != nil {
		return nil, err
	}
	j, say, err := job.Read(book.Facts, name, text)
	if err != nil || say == "" {
		return j, err
	}
	return j, a.hear(book, j, say)
}

// judge reviews one job, with every figure that its facts give where that is asked for.
func (a *app) judge(book *rulebook.Book, j *job.Job, figures bool) (*report.Review, error) {
	system, err := a.system()
	if err != nil {
		return nil, err
	}
	review, err := book.Judge(context.Background(), j)
	if err != nil {
		return nil, err
	}
	result := report.NewReview(book, review, system)
	if figures {
		result.Compute(book, review)
	}
	return result, nil
}

func status(r *report.Review) int {
	switch {
	case len(r.With(rulebook.Wrong)) > 0:
		return exitWrong
	case len(r.With(rulebook.Ask)) > 0:
		return exitOpen
	}
	return exitClean
}

// read reads a file whole, or standard input for "-".
func (a *app) read(name string) ([]byte, error) {
	in, done, err := a.open(name)
	if err != nil {
		return nil, err
	}
	defer done()
	return io.ReadAll(in)
}

func (a *app) open(name string) (io.Reader, func() error, error) {
	if name == "-" {
		return a.in, func() error { return nil }, nil
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, nil, badInput{fmt.Errorf("%w: give the path of a job file, or - for standard input", err)}
	}
	return f, f.Close, nil
}
