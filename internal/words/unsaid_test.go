package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/folder"
	"hearsay/internal/job"
	"hearsay/rules"
)

func unsaidOf(t *testing.T, text string) error {
	t.Helper()
	d, err := job.LoadDictionary(rules.Files)
	require.NoError(t, err)
	r := &Reader{d: d}
	return r.loadUnsaid(folder.Memory{"unsaid.yaml": []byte(text)})
}

func TestUnsaidRefusesWithTheLine(t *testing.T) {
	require.NoError(t, unsaidOf(t, "words: {cover: [tarp]}\ntaken:\n  bare: {fact: protection.cover, is: none, since: weather.low, when: [weather.low < 32 F, not says cover]}\n"))
	for text, want := range map[string]string{
		"taken:\n  bare: {fact: protection.covr, is: none, since: weather.low, when: []}\n":                  "line 2: bare: \"protection.covr\" is no fact; the nearest is protection.cover",
		"taken:\n  bare: {fact: protection.cover, is: some, since: weather.low, when: []}\n":                 "\"some\" is not a choice",
		"taken:\n  bare: {fact: protection.cover, is: none, since: weather.low, when: [says cover]}\n":       "there is no list of words called cover",
		"taken:\n  bare: {fact: protection.cover, is: none, since: weather.low, when: [weather.low < 32]}\n": "\"weather.low < 32\"",
		"taken:\n  bare: {fact: cure.days, like: weather.low, since: weather.low, when: []}\n":               "are not in one unit",
		"taken:\n  bare: {fact: protection.cover, is: none, sins: weather.low, when: []}\n":                  "sins",
	} {
		assert.ErrorContains(t, unsaidOf(t, text), want, text)
	}
}
