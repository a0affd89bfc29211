package cli

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"

	"hearsay/internal/chart"
	"hearsay/internal/job"
	"hearsay/internal/release"
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
		if err := writeSVG(file, p.SVG, book.Made()); err != nil {
			return err
		}
		fmt.Fprintf(a.err, "%s: %s\n", file, p.Title)
	}
	if len(pictures) == 0 {
		fmt.Fprintln(a.err, "Nothing can be drawn yet: state the size and the mix, and what weather comes.")
	}
	return nil
}

// writeSVG writes a picture as a file that says by what it was made.
func writeSVG(file, svg string, made release.Made) error {
	if err := os.WriteFile(file, []byte(made.InSVG(svg)), 0o644); err != nil {
		return badInput{fmt.Errorf("%w: name a file that can be written", err)}
	}
	return nil
}

// chartModes are what --chart takes.
var chartModes = []string{"auto", "all", "unicode", "ascii", "none"}

// chartJob prints the pictures of a job in characters. Without being asked for, it prints those through time that
// something wrong hangs on; where all is well nobody needs to look.
func (a *app) chartJob(book *rulebook.Book, j *job.Job, result *report.Review, mode string, width int) error {
	if !slices.Contains(chartModes, mode) {
		return badInput{fmt.Errorf("--chart=%s is not known: write %s", mode, strings.Join(chartModes, ", "))}
	}
	if mode == "none" {
		return nil
	}
	system, err := a.system()
	if err != nil {
		return err
	}
	style := chart.Style{ASCII: mode == "ascii" || mode != "unicode" && !hasUnicode(os.Getenv)}
	if width > 0 {
		style.Width = min(width, 60)
	}
	var pictures []report.Picture
	if mode != "auto" {
		pictures = report.Pictures(book, j, system)
		if len(pictures) == 0 {
			fmt.Fprintln(a.err, "Nothing can be drawn yet: state the size and the mix, and what weather comes.")
		}
	} else {
		pictures = result.PicturesOfWrong(book, j)
	}
	for _, p := range pictures {
		fmt.Fprintf(a.out, "\n%s", p.Text(style))
	}
	return nil
}

// hasUnicode says whether the locale of the environment lets a terminal show more than ASCII.
func hasUnicode(env func(string) string) bool {
	for _, name := range []string{"LC_ALL", "LC_CTYPE", "LANG"} {
		if v := strings.ToLower(env(name)); v != "" {
			return strings.Contains(v, "utf-8") || strings.Contains(v, "utf8")
		}
	}
	return runtime.GOOS == "windows" && env("WT_SESSION") != "" // its new terminal shows all, and names no locale
}
