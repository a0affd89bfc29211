package store

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func kept(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "kept.db")
	s, err := Open(context.Background(), path)
	require.NoError(t, err)
	for range 300 {
		_, err = s.CreateJob(context.Background(), Content{Said: "a driveway of four inches, said in more words than are needed so that it fills a page"})
		require.NoError(t, err)
	}
	require.NoError(t, s.Close())
	return path
}

func TestExamineFindsAWholeDatabase(t *testing.T) {
	path := kept(t)
	c, err := Examine(context.Background(), path)
	require.NoError(t, err)
	assert.True(t, c.There)
	assert.Equal(t, c.Known, c.Format)
	assert.Equal(t, 300, c.Jobs)
}

func TestExamineMakesNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "none", "yet.db")
	c, err := Examine(context.Background(), path)
	require.NoError(t, err)
	assert.False(t, c.There)
	_, err = os.Stat(filepath.Dir(path))
	assert.ErrorIs(t, err, os.ErrNotExist)
}

func TestExamineFindsWhatIsWrong(t *testing.T) {
	damaged := kept(t)
	text, err := os.ReadFile(damaged)
	require.NoError(t, err)
	for i := 8 << 10; i < len(text); i++ {
		text[i] ^= 0x5a
	}
	require.NoError(t, os.WriteFile(damaged, text, 0o600))
	none := filepath.Join(t.TempDir(), "letter.db")
	require.NoError(t, os.WriteFile(none, []byte("Dear sirs, this is no database but a letter that is long enough to be one, whoever reads only its size."), 0o600))
	inFile := filepath.Join(none, "kept.db")
	for name, c := range map[string]struct{ path, want string }{
		"damaged":     {damaged, "it is damaged"},
		"no database": {none, "is no database that can be read"},
		"in a file":   {inFile, "no"},
		"a folder":    {t.TempDir(), "name another file"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := Examine(context.Background(), c.path)
			assert.ErrorContains(t, err, c.want)
		})
	}
}
