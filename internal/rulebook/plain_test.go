package rulebook

import (
	"context"
	"math/rand/v2"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/rules"
)

// TestEveryPracticeIsPlain: a rule that can no longer be decided without the evaluator costs every job its time.
func TestEveryPracticeIsPlain(t *testing.T) {
	b, err := Load(rules.Files)
	require.NoError(t, err)
	for _, p := range b.Practices() {
		require.Contains(t, b.plain, p.ID)
	}
}

// TestPlainAgreesWithTheEvaluator: on random jobs, from barely to wholly stated, what is decided without Open Policy Agent
// is what its partial evaluation gives: status, reasons, what stays open on which conditions, numbers and mends.
func TestPlainAgreesWithTheEvaluator(t *testing.T) {
	b, err := Load(rules.Files)
	require.NoError(t, err)
	policy, err := Load(rules.Files)
	require.NoError(t, err)
	clear(policy.plain)
	jobs := uint64(40)
	if os.Getenv("HEARSAY_THOROUGH") != "" {
		jobs = 800
	}
	for seed := range jobs {
		j := randomFacts(t, b, rand.New(rand.NewPCG(seed, 5)))
		quick, err := b.Judge(context.Background(), j)
		require.NoError(t, err)
		whole, err := policy.Judge(context.Background(), j)
		require.NoError(t, err)
		for i, one := range quick.Judgements {
			one, other := *one, *whole.Judgements[i]
			other.Practice = one.Practice
			require.Equal(t, other, one, "%s, seed %d", one.Practice.ID, seed)
		}
	}
}

// randomFacts states some share of the dictionary, whether or not the facts agree with each other.
func randomFacts(t *testing.T, b *Book, random *rand.Rand) *job.Job {
	j, share := job.New(), 10+random.IntN(91)
	for _, f := range b.Facts.Facts() {
		if random.IntN(100) >= share {
			continue
		}
		next := j.Clone()
		var err error
		switch f.Kind {
		case job.KindQuantity:
			err = next.State(b.Facts, f.Path, map[string]any{"value": f.Usual.Low + (f.Usual.High-f.Usual.Low)*random.Float64(), "unit": f.Unit})
		case job.KindChoice:
			err = next.State(b.Facts, f.Path, f.Choices[random.IntN(len(f.Choices))].Value)
		case job.KindFlag:
			err = next.State(b.Facts, f.Path, random.IntN(2) == 0)
		}
		if err == nil && next.Clone().Follow(b.Facts) == nil {
			j = next
		}
	}
	require.NoError(t, j.Follow(b.Facts))
	return j
}
