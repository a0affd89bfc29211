package words_test

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// TestReadPace holds the reader to a time that grows with the length of the text and no faster: four times the words take
// no more than eight times as long. On a machine of its own, four kilobytes take less than 5 ms.
func TestReadPace(t *testing.T) {
	r, _ := newReader(t)
	text := fourKB(t)
	fastest := func(text string) time.Duration {
		best := time.Hour
		for range 7 {
			start := time.Now()
			r.Read(text, now)
			best = min(best, time.Since(start))
		}
		return best
	}
	quarter, whole := fastest(text[:strings.LastIndex(text[:1024], ".")+1]), fastest(text)
	t.Logf("1 KB in %v, 4 KB in %v", quarter, whole)
	require.Less(t, whole, 8*quarter)
	require.Less(t, whole, 250*time.Millisecond)
}
