// Command generate learns the model that package belief carries from the corpus, and writes it beside it. It is run by go
// generate after the corpus changed, takes about two minutes, and gives the same file for the same corpus.
package main

import (
	"flag"
	"fmt"
	"os"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/belief/training"
)

func main() {
	out := flag.String("o", "model.bin", "file to write")
	flag.Parse()
	if err := run(*out); err != nil {
		fmt.Fprintln(os.Stderr, "generate:", err)
		os.Exit(1)
	}
}

func run(out string) error {
	c, err := belief.Read(corpus.Files)
	if err != nil {
		return err
	}
	model, err := training.Learn(c)
	if err != nil {
		return err
	}
	return os.WriteFile(out, model, 0o644)
}
