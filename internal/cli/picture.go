package cli

import (
	"fmt"
	"os"
	"path/filepath"

	"hearsay/internal/job"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// drawJob writes the pictures of a job into a folder, and says on the error output which.
func (a *app) drawJob(book *rulebook.Book, j *job.Job, folder string) error {
	system, err := a.system()
	if err != nil {
		return err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return badInput{fmt.Errorf("%w: name a folder that can be written", err)}
	}
	pictures := report.Pictures(book, j, system)
	for _, p := range pictures {
		file := filepath.Join(folder, p.Name+".svg")
		if err := os.WriteFile(file, []byte(p.SVG), 0o644); err != nil {
			return badInput{fmt.Errorf("%w: name a folder that can be written", err)}
		}
		fmt.Fprintf(a.err, "%s: %s\n", file, p.Title)
	}
	if len(pictures) == 0 {
		fmt.Fprintln(a.err, "Nothing can be drawn yet: state the size and the mix, and what weather comes.")
	}
	return nil
}
