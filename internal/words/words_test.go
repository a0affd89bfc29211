package words_test

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"sort"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"hearsay/corpus"
	"hearsay/internal/job"
	"hearsay/internal/words"
	"hearsay/rules"
)

// now is the moment at which the descriptions in testdata/words were said: a Monday morning in November.
var now = time.Date(2026, 11, 9, 10, 0, 0, 0, time.UTC)

func newReader(t testing.TB) (*words.Reader, *job.Dictionary) {
	t.Helper()
	d, err := job.LoadDictionary(rules.Files)
	require.NoError(t, err)
	r, err := words.New(d, corpus.Files)
	require.NoError(t, err)
	return r, d
}

type said struct {
	Say   string         `yaml:"say"`
	Facts map[string]any `yaml:"facts"`
}

// TestReadsWhatPeopleSay reads every description of testdata/words and holds it to the facts that it states: each of them
// with its value, and no other.
func TestReadsWhatPeopleSay(t *testing.T) {
	r, d := newReader(t)
	pattern := "../../testdata/words/*.yaml"
	if p := os.Getenv("SAID"); p != "" {
		pattern = p // other descriptions of the same form
	}
	files, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, files)
	stated, read, wrong := 0, 0, 0
	var misses strings.Builder
	for _, f := range files {
		text, err := os.ReadFile(f)
		require.NoError(t, err)
		var list []said
		require.NoError(t, yaml.Unmarshal(text, &list), f)
		for _, s := range list {
			got := r.Read(s.Say, now)
			missed, extra := compare(t, d, s.Facts, &got)
			stated += len(s.Facts)
			read += len(s.Facts) - len(missed)
			wrong += len(extra)
			if len(missed)+len(extra) > 0 {
				fmt.Fprintf(&misses, "\n%s said:   %s\n  missed: %s\n  extra:  %s\n  unread: %v", filepath.Base(f), s.Say, strings.Join(missed, "; "), strings.Join(extra, "; "), got.Unread)
			}
		}
	}
	t.Logf("%d facts stated, %.1f %% read, %d read that were not stated%s", stated, 100*float64(read)/float64(stated), wrong, misses.String())
	require.GreaterOrEqual(t, float64(read), leastRead*float64(stated))
	require.LessOrEqual(t, float64(wrong), mostWrong*float64(stated))
}

// The share of stated facts that must be read, and of facts that may be read without being stated.
const (
	leastRead = 0.97
	mostWrong = 0.02
)

// compare gives the facts that were missed and those that were read without being said.
func compare(t *testing.T, d *job.Dictionary, want map[string]any, got *words.Reading) (missed, extra []string) {
	j := job.New()
	got.Add(d, j)
	for path, value := range want {
		f, ok := d.Fact(path)
		require.True(t, ok, "no fact is called %s", path)
		wanted, err := f.Read(value)
		require.NoError(t, err, path)
		have, ok := j.Value(path)
		if !ok || !(f.Same(have, value) || reflect.DeepEqual(have, wanted)) {
			missed = append(missed, fmt.Sprintf("%s = %v (got %v)", path, value, have))
		}
	}
	implied := job.New()
	for path, value := range want {
		require.NoError(t, implied.State(d, path, value))
	}
	require.NoError(t, implied.Follow(d))
	assumed := map[string]bool{}
	for _, f := range got.Facts {
		assumed[f.Path] = strings.HasPrefix(f.Note, "It is taken as")
	}
	for _, s := range j.Stated {
		if s.From != "" || assumed[s.Fact.Path] {
			continue
		}
		if v, ok := implied.Value(s.Fact.Path); ok && reflect.DeepEqual(v, s.Value) {
			continue
		}
		if _, ok := want[s.Fact.Path]; !ok {
			extra = append(extra, fmt.Sprintf("%s = %v from %q", s.Fact.Path, s.Value, s.Text))
		}
	}
	sort.Strings(missed)
	return missed, extra
}
