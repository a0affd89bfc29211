package words_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"
)

// FuzzRead holds the reader to taking any text: it neither fails nor hangs, what it read can be made a job of, and every
// text it gives as the source of a fact is a piece of what was said.
func FuzzRead(f *testing.F) {
	r, d := newReader(f)
	for _, text := range []string{"", "   ", "8 1/2 yards of 4000 for 7 tomorrow", "24x24 at 4 inches", "no chloride in it", "slump 3, slump 7",
		"½ in., 3⁄8 stone, −15 °C", "from 2 till 5", "half past", "1/0 0/1 99999999999999999999 yards", "Heute wird betoniert, 20 cm dick.",
		"6'3\" by 4' x 5", "point", "between", "$ # R- W", "a an the of", "\x00\xff\xfe", strings.Repeat("4 ", 3000)} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got := r.Read(text, now)
		j, _ := got.Job(d)
		if j == nil {
			t.Fatal("no job")
		}
		for _, fact := range got.Facts {
			if fact.Text == "" {
				t.Fatalf("%s was read from nothing", fact.Path)
			}
			if !strings.Contains(fact.Text, " … ") && !strings.Contains(text, fact.Text) {
				t.Fatalf("%q is no piece of what was said", fact.Text)
			}
		}
	})
}

// TestClearAnswers holds the reader to answering what is no description of a job.
func TestClearAnswers(t *testing.T) {
	r, d := newReader(t)
	for _, text := range []string{"", "   \n", "Der Estrich muss noch trocknen.", "What a lovely day it is, isn't it?", "¿Cuándo viene el camión?"} {
		got := r.Read(text, now)
		assert.Empty(t, got.Facts, text)
	}
	long := strings.Repeat("The slab is 6 inches thick and the crew had lunch. ", 1000)
	got := r.Read(long, now)
	j, problems := got.Job(d)
	assert.Empty(t, problems)
	v, _ := j.Value("member.thickness")
	assert.Equal(t, 6.0, v)
}

// TestContradictionsAreNamed holds the reader to naming what is said twice in different ways, and to reading the rest.
func TestContradictionsAreNamed(t *testing.T) {
	r, d := newReader(t)
	got := r.Read("Measured slump 3 inches, air 6 percent. Tested slump 7 inches.", now)
	j, problems := got.Job(d)
	require.Len(t, problems, 1)
	assert.Contains(t, problems[0], "measured slump is said twice")
	v, _ := j.Value("load.slump")
	assert.Equal(t, 3.0, v)
	_, ok := j.Value("load.air")
	assert.True(t, ok)
}

// TestAmbiguousNumbersAreAsked holds the reader to asking what a number means rather than guessing.
func TestAmbiguousNumbersAreAsked(t *testing.T) {
	r, _ := newReader(t)
	got := r.Read("It will take 20 minutes.", now)
	assert.Empty(t, got.Facts)
	require.NotEmpty(t, got.Unread)
	assert.Contains(t, got.Unread[0].Text, "20 minutes")
}

func BenchmarkRead4KB(b *testing.B) {
	r, _ := newReader(b)
	text := fourKB(b)
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		r.Read(text, now)
	}
}

func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		newReader(b)
	}
}

// fourKB is four kilobytes of descriptions.
func fourKB(b testing.TB) string {
	files, err := filepath.Glob("../../testdata/words/whole-*.yaml")
	require.NoError(b, err)
	var text strings.Builder
	for _, f := range files {
		raw, err := os.ReadFile(f)
		require.NoError(b, err)
		var list []said
		require.NoError(b, yaml.Unmarshal(raw, &list))
		for _, s := range list {
			text.WriteString(s.Say + " ")
		}
	}
	return text.String()[:4096]
}
