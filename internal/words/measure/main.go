// Command measure says how well descriptions of jobs are read and judged: it takes a file of descriptions with the facts
// they state, the practices that are certainly wrong, those that may not be reported, and the figures a right answer
// computes, one JSON object a line, and prints the share of each that comes out.
//
//	go run ./internal/words/measure [-v] FILE
package main

import (
	"bufio"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"time"

	"hearsay/corpus"
	"hearsay/internal/rulebook"
	"hearsay/internal/words"
	"hearsay/rules"
)

// description is one line of the file.
type description struct {
	ID      string
	Text    string
	Facts   []fact
	Must    []string
	MustNot []string `json:"must_not"`
	Numbers []interval
}

// fact is one fact that the description states. Value is a number or text.
type fact struct {
	What  string
	Value any
	Unit  string
}

// interval is where a figure of a right answer lies.
type interval struct {
	Name      string
	Low, High float64
	Unit      string
}

// share counts what came out of what should have.
type share struct{ found, of int }

func (s share) String() string {
	if s.of == 0 {
		return "none"
	}
	return fmt.Sprintf("%d of %d (%.1f %%)", s.found, s.of, 100*float64(s.found)/float64(s.of))
}

type totals struct {
	numbers, texts       share // stated facts read: numbers, and those said in words
	wrong                share // of the numbers read, those that are not among the stated
	must, alarms, inside share
}

func main() {
	verbose := flag.Bool("v", false, "print what was missed")
	flag.Parse()
	if flag.NArg() != 1 {
		fmt.Fprintln(os.Stderr, "usage: measure [-v] FILE")
		os.Exit(2)
	}
	if err := run(flag.Arg(0), *verbose); err != nil {
		fmt.Fprintln(os.Stderr, "measure:", err)
		os.Exit(1)
	}
}

func run(name string, verbose bool) error {
	book, err := rulebook.Load(rules.Files)
	if err != nil {
		return err
	}
	reader, err := words.New(book.Facts, corpus.Files)
	if err != nil {
		return err
	}
	f, err := os.Open(name)
	if err != nil {
		return err
	}
	defer f.Close()
	var t totals
	lines := bufio.NewScanner(f)
	lines.Buffer(make([]byte, 1<<20), 1<<22)
	for lines.Scan() {
		var d description
		if err := json.Unmarshal(lines.Bytes(), &d); err != nil {
			return err
		}
		got := reader.Read(d.Text, time.Now())
		r := &result{d: d, got: got, log: func(string, ...any) {}}
		if verbose {
			fmt.Printf("\n%s  %s\n", d.ID, d.Text)
			r.log = func(format string, args ...any) { fmt.Printf("   "+format+"\n", args...) }
		}
		r.facts(book.Facts, &t)
		if err := r.judged(book, &t); err != nil {
			return err
		}
	}
	fmt.Printf("facts read, numbers:       %v\n", t.numbers)
	fmt.Printf("facts read, in words:      %v\n", t.texts)
	fmt.Printf("numbers read wrongly:      %v\n", t.wrong)
	fmt.Printf("wrong practices found:     %v\n", t.must)
	fmt.Printf("false alarms:              %v\n", t.alarms)
	fmt.Printf("figures inside:            %v\n", t.inside)
	return lines.Err()
}
