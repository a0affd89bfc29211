package report_test

import (
	"context"
	"encoding/json"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/internal/sample"
	"hearsay/rules"
)

// TestALineSaysWhatAReviewSays: a line, of which most is encoded once for all lines, is the review as JSON, whatever came
// before it.
func TestALineSaysWhatAReviewSays(t *testing.T) {
	b, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	random := rand.New(rand.NewPCG(3, 1))
	for _, system := range []quantity.System{quantity.US, quantity.SI} {
		lines := report.NewReporter(b, system)
		for _, share := range []int{0, 20, 50, 100, 100, 60} {
			review, err := b.Judge(context.Background(), sample.Job(random, b, share))
			require.NoError(t, err)
			whole, err := json.Marshal(report.NewReview(b, review, system))
			require.NoError(t, err)
			line, err := lines.AppendLine(nil, review)
			require.NoError(t, err)
			assert.JSONEq(t, string(whole), string(line))
		}
	}
}
