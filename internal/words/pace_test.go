package words_test

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// TestReadPace holds the reader to a time that grows with the length of the text and not with its square: four times the
// words would then take sixteen times as long. On two cores of its own four kilobytes take some 5.4 ms.
func TestReadPace(t *testing.T) {
	r, _ := newReader(t)
	text := fourKB(t)
	part := text[:strings.LastIndex(text[:1024], ".")+1]
	quarter, whole := time.Hour, time.Hour
	for round := 0; round < 25 || round < 300 && whole >= 12*quarter; round++ { // by turns, so that what else the machine does falls on both
		start := time.Now()
		r.Read(part, now)
		middle := time.Now()
		r.Read(text, now)
		quarter, whole = min(quarter, middle.Sub(start)), min(whole, time.Since(middle))
	}
	t.Logf("1 KB in %v, 4 KB in %v", quarter, whole)
	require.Less(t, whole, 12*quarter)
	require.Less(t, whole, time.Second)
}
