package cli

import (
	"context"
	"fmt"
	"os"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// writeCorrected writes the job with the least changes that leave nothing wrong, each marked with its reason, and says
// what no change can mend.
func (a *app) writeCorrected(book *rulebook.Book, j *job.Job, file string) error {
	system, err := a.system()
	if err != nil {
		return err
	}
	c, err := book.Correct(context.Background(), j)
	if err != nil {
		return err
	}
	notes := map[string]string{}
	for _, change := range c.Changes {
		was := "was not stated"
		if change.Was != "" {
			was = "was " + change.Was
		}
		notes[change.Fact.Path] = fmt.Sprintf("%s: %s (%s)", was, report.Plain(strings.Join(change.Reasons, "; "), system), change.Practice.ID)
	}
	out, err := os.Create(file)
	if err != nil {
		return badInput{fmt.Errorf("%w: name a file that can be written", err)}
	}
	if _, err := fmt.Fprintf(out, "# Corrected. %s\n", book.Made().Line()); err != nil {
		return err
	}
	if err := job.Write(out, book.Facts, c.Job, notes); err != nil {
		return err
	}
	if err := out.Close(); err != nil {
		return err
	}
	a.sayCorrected(c, file, notes)
	return nil
}

func (a *app) sayCorrected(c *rulebook.Correction, file string, notes map[string]string) {
	fmt.Fprintf(a.err, "%s: facts changed: %d", file, len(c.Changes))
	if len(c.Acts)+len(c.Left) == 0 {
		fmt.Fprint(a.err, "; judged again, nothing in it is known to be wrong")
	}
	fmt.Fprintln(a.err)
	for _, change := range c.Changes {
		fmt.Fprintf(a.err, "  %s = %s  (%s)\n", change.Fact.Path, change.Now, notes[change.Fact.Path])
	}
	for _, one := range c.Acts {
		fmt.Fprintf(a.err, "  No number mends %s: %s\n", one.Practice.ID, one.Practice.Do)
	}
	for _, one := range c.Left {
		fmt.Fprintf(a.err, "  Still wrong: %s: %s\n", one.Practice.ID, one.Practice.Do)
	}
}
