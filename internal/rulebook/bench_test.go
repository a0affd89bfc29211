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

// BenchmarkJudge is the cost of judging one job with every practice, by how much of it is stated.
func BenchmarkJudge(b *testing.B) {
	book := load(b)
	jobs := rapid.Custom(func(t *rapid.T) *job.Job { return randomJob(t, book) })
	for name, keep := range map[string]int{"half-stated": 1, "barely-stated": 9} {
		j := jobs.Example(3).Clone()
		for i, s := range jobs.Example(3).Stated {
			if keep > 1 && i%keep != 0 && s.From == "" {
				j.Drop(s.Fact.Path)
			}
		}
		require.NoError(b, j.Follow(book.Facts))
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				_, err := book.Judge(context.Background(), j)
				require.NoError(b, err)
			}
		})
	}
}
