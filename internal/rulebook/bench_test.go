package rulebook_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// BenchmarkLoad is the cost of reading and parsing the rulebook; the rules are not compiled.
func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		_, err := rulebook.Load(rules.Files)
		require.NoError(b, err)
	}
}

// BenchmarkJudge is the cost of judging one job with every practice, by how much of it is stated. Jobs differ, so that
// little of one is remembered for the next; "answered" is the same job with one more answer each time, as on the page.
func BenchmarkJudge(b *testing.B) {
	book := load(b)
	random := rapid.Custom(func(t *rapid.T) *job.Job { return randomJob(t, book) })
	for name, keep := range map[string]int{"half-stated": 1, "barely-stated": 9} {
		var jobs []*job.Job
		for seed := range 100 {
			j := random.Example(seed).Clone()
			for i, s := range random.Example(seed).Stated {
				if keep > 1 && i%keep != 0 && s.From == "" {
					j.Drop(s.Fact.Path)
				}
			}
			require.NoError(b, j.Follow(book.Facts))
			jobs = append(jobs, j)
		}
		b.Run(name, func(b *testing.B) {
			for n := 0; b.Loop(); n++ {
				_, err := book.Judge(context.Background(), jobs[n%len(jobs)])
				require.NoError(b, err)
			}
		})
	}
	b.Run("answered", func(b *testing.B) {
		j := random.Example(3)
		for n := 0; b.Loop(); n++ {
			next := j.Clone()
			if err := next.Replace(book.Facts, "load.slump", map[string]any{"value": float64(n%1200) / 100, "unit": "in"}); err != nil || next.Follow(book.Facts) != nil {
				b.Fatal(err)
			}
			_, err := book.Judge(context.Background(), next)
			require.NoError(b, err)
		}
	})
}
