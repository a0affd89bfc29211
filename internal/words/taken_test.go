package words_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"hearsay/internal/words"
)

// TestWhatGoesWithoutSayingGivesWay: it is taken until somebody says otherwise, and never against what is said.
func TestWhatGoesWithoutSayingGivesWay(t *testing.T) {
	r, d := newReader(t)
	now := time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC)
	first := r.Read("Driveway, calcium chloride in it, no blankets, 20 F tonight.", now)
	j, problems := first.Job(d)
	require.Empty(t, problems)
	taken, ok := j.Find("cold.relied_on")
	require.True(t, ok)
	require.True(t, taken.Taken)
	said := words.Reading{Facts: []words.Read{{Path: "cold.relied_on", Value: false, Text: "not relied on"}}}
	require.Empty(t, said.Add(d, j))
	v, _ := j.Value("cold.relied_on")
	require.Equal(t, false, v)
	require.Empty(t, first.Add(d, j), "what was said before stays")
	v, _ = j.Value("cold.relied_on")
	require.Equal(t, false, v)
}

func TestHalfALoadIsNoUnit(t *testing.T) {
	r, _ := newReader(t)
	for _, text := range []string{"Half a load left.", "A quarter a bucket", "half an idea"} {
		r.Read(text, time.Now())
	}
}
