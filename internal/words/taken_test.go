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
	first := r.Read("Driveway, no air, rinse water left in the drum, 8 gallons of it, 20 F tonight.", now)
	j, problems := first.Job(d)
	require.Empty(t, problems)
	taken, ok := j.Find("water.wash_counted")
	require.True(t, ok)
	require.True(t, taken.Taken)
	said := words.Reading{Facts: []words.Read{{Path: "water.wash_counted", Value: true, Text: "counted"}}}
	require.Empty(t, said.Add(d, j))
	v, _ := j.Value("water.wash_counted")
	require.Equal(t, true, v)
	require.Empty(t, first.Add(d, j), "what was said stays")
	v, _ = j.Value("water.wash_counted")
	require.Equal(t, true, v)
}

func TestHalfALoadIsNoUnit(t *testing.T) {
	r, _ := newReader(t)
	for _, text := range []string{"Half a load left.", "A quarter a bucket", "half an idea"} {
		r.Read(text, time.Now())
	}
}
