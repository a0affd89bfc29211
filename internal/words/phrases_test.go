package words_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"hearsay/corpus"
)

// TestNoPhraseStatesTwoValues: a phrase that stands under two values of a fact would be read as either.
func TestNoPhraseStatesTwoValues(t *testing.T) {
	text, err := corpus.Files.ReadFile("words.yaml")
	require.NoError(t, err)
	var file struct {
		Facts map[string]struct {
			Is map[string][]string `yaml:"is"`
		} `yaml:"facts"`
	}
	require.NoError(t, yaml.Unmarshal(text, &file))
	require.NotEmpty(t, file.Facts)
	for fact, saying := range file.Facts {
		under := map[string]string{}
		for value, phrases := range saying.Is {
			for _, phrase := range phrases {
				other, twice := under[phrase]
				assert.True(t, !twice || other == value, "%s: %q stands under %s and under %s", fact, phrase, other, value)
				under[phrase] = value
			}
		}
	}
}
