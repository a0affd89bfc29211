package document_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/document"
)

type entry struct {
	Value float64                  `yaml:"value"`
	More  document.Ordered[string] `yaml:"more"`
}

func TestReadKeepsTheOrder(t *testing.T) {
	o, err := document.Read[entry]("limits.yaml", []byte("b: {value: 1, more: {z: first, a: second}}\na: {value: 2}\n"))
	require.NoError(t, err)
	assert.Equal(t, "b", o[0].Name)
	assert.Equal(t, "z", o[0].Value.More[0].Name)
	assert.Equal(t, 2, o[1].Line)
}

func TestReadRefusesWithTheLine(t *testing.T) {
	for text, want := range map[string]string{
		"a: {value: 1}\nb: {vallue: 2}\n": `limits.yaml: line 2: "vallue" does not belong here`,
		"a: {value: 1}\na: {value: 2}\n":  "limits.yaml: line 2: a stands twice",
		"- 1\n":                           "limits.yaml: line 1: a mapping",
		"a: {value: x}\n":                 "limits.yaml: line 1: a: ",
	} {
		_, err := document.Read[entry]("limits.yaml", []byte(text))
		assert.ErrorContains(t, err, want)
	}
}
