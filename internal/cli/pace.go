package cli

import (
	"fmt"
	"io"
	"os"
	"time"

	"golang.org/x/term"
)

// pace says on a terminal, once a second, how far a long run has come.
type pace struct {
	to          io.Writer // nil where nobody watches
	what        string
	done        int
	began, said time.Time
}

// pace starts one, on standard error where that is a terminal and standard output is not.
func (a *app) pace(what string) *pace {
	p := &pace{what: what, began: time.Now(), said: time.Now()}
	if isTerminal(a.err) && !isTerminal(a.out) {
		p.to = a.err
	}
	return p
}

func isTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	return ok && term.IsTerminal(int(f.Fd()))
}

func (p *pace) step() {
	p.done++
	if p.to == nil || p.done%64 != 0 || time.Since(p.said) < time.Second {
		return
	}
	p.said = time.Now()
	p.print("\r")
}

// print says how many are done, and how many a second.
func (p *pace) print(start string) {
	fmt.Fprintf(p.to, "%s%d %s, %.0f a second\x1b[K", start, p.done, p.what, float64(p.done)/time.Since(p.began).Seconds())
}

func (p *pace) end() {
	if p.to != nil && p.said.After(p.began.Add(time.Second)) {
		p.print("\r")
		fmt.Fprintln(p.to)
	}
}
