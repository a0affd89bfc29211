package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"hearsay/corpus"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/internal/words"
	"hearsay/rules"
)

// whole is a description of testdata/words that says more than its facts: the practices that are certainly wrong in it,
// those that it satisfies, and the figures that somebody who hears it would want, each with the interval it must lie in.
type whole struct {
	Say     string
	Wrong   []string
	Right   []string
	Figures map[string]string
}

// The shares that must come out of the whole jobs.
const (
	leastWrongFound = 0.93
	leastFigures    = 0.90
)

// TestWholeJobs reads, judges and computes every description that names what is wrong in it.
func TestWholeJobs(t *testing.T) {
	book, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	reader, err := words.New(book.Facts, corpus.Files)
	require.NoError(t, err)
	pattern := "../../../testdata/words/whole-*.yaml"
	if p := os.Getenv("SAID"); p != "" {
		pattern = p // other descriptions of the same form
	}
	files, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, files)
	var sum totals
	for _, f := range files {
		text, err := os.ReadFile(f)
		require.NoError(t, err)
		var list []whole
		require.NoError(t, yaml.Unmarshal(text, &list), f)
		for _, w := range list {
			if len(w.Wrong)+len(w.Right)+len(w.Figures) > 0 {
				w.judge(t, book, reader, &sum)
			}
		}
	}
	t.Logf("wrong practices found %v, false alarms %v, figures inside %v", sum.must, sum.alarms, sum.inside)
	require.GreaterOrEqual(t, float64(sum.must.found), leastWrongFound*float64(sum.must.of))
	require.GreaterOrEqual(t, float64(sum.inside.found), leastFigures*float64(sum.inside.of))
	require.Zero(t, sum.alarms.found)
}

func (w *whole) judge(t *testing.T, book *rulebook.Book, reader *words.Reader, sum *totals) {
	d := description{Text: w.Say, Must: w.Wrong, MustNot: w.Right}
	for name, within := range w.Figures {
		n := interval{Name: name}
		parts := strings.SplitN(within, " ", 4)
		require.Len(t, parts, 4, "%s: %s", name, within)
		_, err := fmt.Sscan(parts[0]+" "+parts[2], &n.Low, &n.High)
		require.NoError(t, err)
		n.Unit = parts[3]
		if n.Unit == "ratio" {
			n.Unit = ""
		}
		d.Numbers = append(d.Numbers, n)
	}
	r := &result{d: d, got: reader.Read(w.Say, now)}
	said := false
	r.log = func(format string, args ...any) {
		if !said {
			said = true
			t.Log(w.Say)
		}
		t.Logf("    "+format, args...)
	}
	r.job = job.New()
	r.got.Add(book.Facts, r.job)
	require.NoError(t, r.judged(book, sum))
}

// now is when the descriptions were said: a Monday morning in November.
var now = time.Date(2026, 11, 9, 10, 0, 0, 0, time.UTC)
