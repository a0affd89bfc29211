package rulebook_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// TestWhatIsRememberedIsWhatWouldBeJudged changes one fact of a job, as somebody does who answers a question. Most of the
// judgements are then remembered from the job before; it holds some of them against the same practice judged anew, one
// that reads the fact among them.
func TestWhatIsRememberedIsWhatWouldBeJudged(t *testing.T) {
	b := load(t)
	ctx := context.Background()
	draws(t, 25, 200)
	rapid.Check(t, func(t *rapid.T) {
		j := randomJob(t, b)
		_, err := b.Judge(ctx, j)
		require.NoError(t, err)
		f := rapid.SampledFrom(b.Facts.Facts()).Draw(t, "changed")
		next := j.Clone()
		next.Drop(f.Path)
		if value, ok := randomValue(t, f); ok && rapid.Bool().Draw(t, "stated anew") && next.State(b.Facts, f.Path, value) != nil {
			return
		}
		if next.Follow(b.Facts) != nil {
			return
		}
		review, err := b.Judge(ctx, next)
		require.NoError(t, err)
		reader := rapid.SampledFrom(append(b.ReadersOf(f.Path), "water/over-limit")).Draw(t, "reader")
		for i, remembered := range review.Judgements {
			if id := remembered.Practice.ID; id == reader || i%20 == rapid.IntRange(0, 19).Draw(t, "others") {
				anew, err := b.JudgeOne(ctx, next, id)
				require.NoError(t, err)
				require.Equal(t, anew, remembered, "%s after %s", id, f.Path)
			}
		}
	})
}
