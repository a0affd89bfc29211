// Package cli owns the commands: what is typed, what it is answered with, and the exit status.
package cli

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"
	"sync"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/internal/words"
	"hearsay/rules"
)

// Exit statuses.
const (
	exitClean    = 0 // nothing wrong, or the claim was answered
	exitWrong    = 1 // something is wrong
	exitOpen     = 2 // nothing known to be wrong but questions are open, or the claim was not answered
	exitBadInput = 3 // the input could not be used
	exitFailed   = 4 // the program failed
)

// app is what the commands share: where they read and write, and the flags that every command has.
type app struct {
	in         io.Reader
	out, err   io.Writer
	json       bool
	units      string
	packDirs   []string
	packKey    string
	opened     []*rulebook.Pack // once they were
	color      string
	status     int
	reader     *words.Reader // made when the first words are read
	readerLock sync.Mutex
}

// badInput is an error in what the user gave, shown as it is and ending with exitBadInput.
type badInput struct{ error }

// Main runs one command and gives its exit status.
func Main(args []string, in io.Reader, out, errs io.Writer) int {
	// One command, then the end: compiling the rules allocates much and frees little, so nothing is collected below this.
	debug.SetGCPercent(-1)
	debug.SetMemoryLimit(128 << 20)
	a := &app{in: in, out: out, err: errs}
	root := a.root()
	root.SetArgs(args)
	root.SetIn(in)
	root.SetOut(out)
	root.SetErr(errs)
	if err := root.Execute(); err != nil {
		return a.fail(err)
	}
	return a.status
}

func (a *app) fail(err error) int {
	fmt.Fprintln(a.err, "hearsay:", err)
	var bad badInput
	var problems job.Problems
	if errors.As(err, &bad) || errors.As(err, &problems) || isUsage(err) {
		return exitBadInput
	}
	return exitFailed
}

// isUsage recognizes the errors that cobra makes for a wrong command line.
func isUsage(err error) bool {
	for _, start := range []string{"unknown command", "unknown flag", "unknown shorthand", "accepts ", "requires ", "invalid argument", "flag needs", "bad flag"} {
		if strings.HasPrefix(err.Error(), start) {
			return true
		}
	}
	return false
}

func (a *app) root() *cobra.Command {
	root := &cobra.Command{
		Use:   "hearsay",
		Short: "Checks what is said about concrete, and what is planned with it, before it is placed",
		Long: `Hearsay answers two questions for people who sell, teach or place concrete:
somebody says something about concrete, is it so; and this is the job, what is
wrong with how it will be done, why, and what are the right numbers.

It shows its working and its sources, and says what it does not know. Local
code, the job's specification and licensed practice come first.`,
		SilenceUsage:  true,
		SilenceErrors: true,
	}
	flags := root.PersistentFlags()
	flags.BoolVar(&a.json, "json", false, "print JSON, for programs")
	flags.StringVar(&a.units, "units", "us", "units to print in: us or si")
	flags.StringArrayVar(&a.packDirs, "pack", nil, "lay this `pack` of your own rules, limits, beliefs and words over the built-in ones, a folder or a .tar.gz (also HEARSAY_PACKS)")
	flags.StringVar(&a.packKey, "pack-key", "", "`file` of the key that packs must be signed with (also HEARSAY_PACK_KEY)")
	flags.StringVar(&a.packKey, "key", "", "the same as --pack-key")
	if err := flags.MarkHidden("key"); err != nil {
		panic(err) // the flag is made in the line above
	}
	flags.StringVar(&a.color, "color", "auto", "color on a terminal: auto, always or never")
	root.AddCommand(a.claimCommand(), a.reviewCommand(), a.figureCommand(), a.rulesCommand(), a.sourcesCommand(), a.factsCommand(),
		a.checklistCommand(), a.orderCommand(), a.planCommand(), a.serveCommand(), a.bundleCommand(), a.packCommand(), a.doctorCommand(), a.versionCommand(), a.manualCommand())
	root.AddCommand(a.crewCommand())
	return root
}

func (a *app) system() (quantity.System, error) {
	switch strings.ToLower(a.units) {
	case "us", "":
		return quantity.US, nil
	case "si", "metric":
		return quantity.SI, nil
	}
	return quantity.US, badInput{fmt.Errorf("--units %s is not known: write us or si", a.units)}
}

func (a *app) look() report.Look {
	look := report.Look{Color: a.color == "always"}
	f, ok := a.out.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return look
	}
	if w, _, err := term.GetSize(int(f.Fd())); err == nil {
		look.Width = min(w, 100)
	}
	look.Color = look.Color || a.color == "auto" && os.Getenv("NO_COLOR") == ""
	return look
}

// book loads the rulebook with the packs over it.
func (a *app) book() (*rulebook.Book, error) {
	packs, err := a.packs()
	if err != nil {
		return nil, err
	}
	book, err := rulebook.Load(rules.Files, packs...)
	return book, a.blame(err)
}
