package folder_test

import (
	"bytes"
	"io/fs"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/folder"
)

var base = folder.Memory{"facts.yaml": []byte("a"), "limits/water.yaml": []byte("b"), "water/little.md": []byte("c"), "water/late.md": []byte("d")}

func TestMemoryIsAFolder(t *testing.T) {
	require.NoError(t, fstest.TestFS(base, base.Names()...))
	_, err := base.Open("../facts.yaml")
	assert.ErrorIs(t, err, fs.ErrInvalid)
}

func TestTheTopmostFileIsTheOneThatIsRead(t *testing.T) {
	one := folder.Layer{Owner: "one", Place: "rules/", Files: folder.Memory{"facts.yaml": []byte("of one"), "water/little.md": []byte("of one")}}
	two := folder.Layer{Owner: "two", Files: folder.Memory{"water/little.md": []byte("of two"), "snow/ice.md": []byte("of two")}}
	s := folder.Over(base, one, two)
	for name, want := range map[string][2]string{"facts.yaml": {"one", "of one"}, "limits/water.yaml": {"", "b"}, "water/little.md": {"two", "of two"}, "snow/ice.md": {"two", "of two"}} {
		text, err := fs.ReadFile(s, name)
		require.NoError(t, err)
		assert.Equal(t, want[1], string(text), name)
		assert.Equal(t, want[0], folder.Owner(s, name), name)
	}
	names, err := fs.Glob(s, "*/*.md")
	require.NoError(t, err)
	assert.Equal(t, []string{"snow/ice.md", "water/late.md", "water/little.md"}, names)

	each, err := folder.Each(s, "facts.yaml")
	require.NoError(t, err)
	require.Len(t, each, 2)
	assert.Equal(t, "facts.yaml", each[0].Name)
	assert.Equal(t, "rules/facts.yaml", each[1].Name)
	assert.EqualError(t, each[1].Wrap(assert.AnError), "pack one: "+assert.AnError.Error())
	assert.Equal(t, assert.AnError, each[0].Wrap(assert.AnError))
	assert.True(t, folder.Laid(s))
	assert.False(t, folder.Laid(base))
}

func TestAnArchiveGivesWhatWasPutIn(t *testing.T) {
	var one, two bytes.Buffer
	require.NoError(t, base.Tar(&one))
	require.NoError(t, base.Tar(&two))
	assert.Equal(t, one.Bytes(), two.Bytes())
	all := func(string) bool { return true }
	got, err := folder.Untar(&one, all, folder.Bounds{Files: 4, File: 1, Bytes: 4, Depth: 2})
	require.NoError(t, err)
	assert.Equal(t, base, got)
	for name, most := range map[string]folder.Bounds{
		"holds more than 3 files": {Files: 3, File: 1, Bytes: 9, Depth: 2},
		"is too large":            {Files: 4, File: 1, Bytes: 3, Depth: 2},
		"lies too deep":           {Files: 4, File: 1, Bytes: 9, Depth: 1},
	} {
		_, err := folder.Untar(bytes.NewReader(two.Bytes()), all, most)
		assert.ErrorContains(t, err, name)
		_, err = folder.Read(base, all, most)
		assert.ErrorContains(t, err, name)
	}
}
