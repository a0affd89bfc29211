package cli_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"hearsay/internal/cli"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/internal/sample"
	"hearsay/rules"
)

// The ratios are held loosely here, since other work may share the machine; what was reached stands in DEVELOPERS.md.

// complete is a job that leaves no question open.
const complete = "../../testdata/jobs/quillon-patio.yaml"

// programs are what is run side by side: this program and the evaluator's own.
type programs struct{ hearsay, opa, bundle string }

func build(t testing.TB) programs {
	dir := t.TempDir()
	p := programs{hearsay: filepath.Join(dir, "hearsay"), bundle: filepath.Join(dir, "rules.tar.gz")}
	out, err := exec.Command("go", "build", "-o", p.hearsay, "hearsay/cmd/hearsay").CombinedOutput()
	require.NoError(t, err, string(out))
	out, err = exec.Command("go", "tool", "-n", "opa").Output()
	require.NoError(t, err)
	p.opa = strings.TrimSpace(string(out))
	require.NoError(t, exec.Command(p.hearsay, "bundle", p.bundle).Run())
	return p
}

// input writes what a stock evaluator is given for a job.
func (p programs) input(t testing.TB, file string, to ...string) {
	out, err := exec.Command(p.hearsay, "facts", "--figures", file).Output()
	require.NoError(t, err)
	var query struct{ Input json.RawMessage }
	require.NoError(t, json.Unmarshal(out, &query))
	for _, name := range to {
		require.NoError(t, os.WriteFile(name, query.Input, 0o644))
	}
}

// took runs a command to its end. An exit status below 4 is an answer.
func took(t testing.TB, name string, args ...string) (time.Duration, *os.ProcessState) {
	c := exec.Command(name, args...)
	c.Stdout = io.Discard
	began := time.Now()
	err := c.Run()
	if err != nil && c.ProcessState.ExitCode() >= 4 {
		t.Fatalf("%s %v: %v", name, args, err)
	}
	return time.Since(began), c.ProcessState
}

// lines writes jobs like the complete one, a line each.
func lines(t testing.TB, n, keep int) string {
	book, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	text, err := os.ReadFile(complete)
	require.NoError(t, err)
	base, _, err := job.Read(book.Facts, complete, text)
	require.NoError(t, err)
	name := filepath.Join(t.TempDir(), "jobs.jsonl")
	f, err := os.Create(name)
	require.NoError(t, err)
	defer f.Close()
	random := rand.New(rand.NewPCG(uint64(keep), 1))
	for range n {
		require.NoError(t, sample.Line(f, sample.Near(random, book, base, keep)))
	}
	return name
}

// TestPace: a cold review against `opa eval` of the same rules on the same facts, lines of jobs against `opa exec`, and
// memory that does not grow with the lines.
func TestPace(t *testing.T) {
	p := build(t)
	dir := t.TempDir()

	var inputs []string
	for i := range 120 {
		inputs = append(inputs, filepath.Join(dir, strconv.Itoa(i)+".json"))
	}
	p.input(t, complete, inputs...)
	var cold, eval []time.Duration
	for range 7 {
		took1, _ := took(t, p.hearsay, "review", "--json", complete)
		took2, _ := took(t, p.opa, "eval", "--bundle", p.bundle, "--input", inputs[0], "data.practice")
		cold, eval = append(cold, took1), append(eval, took2)
	}
	ratio := slices.Min(cold).Seconds() / slices.Min(eval).Seconds()
	t.Logf("a cold review takes %.2f of an evaluation of the bundle", ratio)
	require.Less(t, ratio, 1.2)

	few, many := lines(t, 1, 100), lines(t, 1200, 100)
	start, _ := took(t, p.hearsay, "review", "--lines", few)
	whole, state := took(t, p.hearsay, "review", "--lines", many)
	base, _ := took(t, p.opa, "exec", "--bundle", p.bundle, "--decision", "practice", inputs[0])
	exec, _ := took(t, p.opa, append([]string{"exec", "--bundle", p.bundle, "--decision", "practice"}, inputs...)...)
	ours := (whole - start).Seconds() / 1199
	theirs := (exec - base).Seconds() / float64(len(inputs)-1)
	t.Logf("lines of jobs go %.1f times as fast as opa exec: %.0f and %.0f a second", theirs/ours, 1/ours, 1/theirs)
	require.Greater(t, theirs/ours, 2.0)

	_, small := took(t, p.hearsay, "review", "--lines", lines(t, 300, 100))
	t.Logf("memory of 300 lines %d MB, of 1,200 lines %d MB", peak(small), peak(state))
	require.Less(t, float64(peak(state)), 1.5*float64(peak(small)))
}

// peak is the most memory a finished process held, MB.
func peak(state *os.ProcessState) int64 {
	return state.SysUsage().(*syscall.Rusage).Maxrss / 1024
}

// BenchmarkLines is `review --lines`: jobs like a complete one, every number moved, and the same with half of the facts missing.
func BenchmarkLines(b *testing.B) {
	for name, keep := range map[string]int{"complete": 100, "half": 50} {
		b.Run(name, func(b *testing.B) {
			const n = 500
			file := lines(b, n, keep)
			for b.Loop() {
				var errs bytes.Buffer
				if status := cli.Main([]string{"review", "--lines", file}, nil, io.Discard, &errs); status != 0 {
					b.Fatal(fmt.Sprint(status, errs.String()))
				}
			}
			b.ReportMetric(float64(n*b.N)/b.Elapsed().Seconds(), "jobs/s")
		})
	}
}
