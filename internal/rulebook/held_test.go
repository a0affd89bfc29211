package rulebook

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"hearsay/internal/job"
)

// edge holds a number of a limit from outside, by small jobs and what they come to, all written out: two jobs that lie close to
// either side of it and what a practice says of each; or one job and what a figure, a number of a finding or a correction
// comes to.
type edge struct {
	Practice string         `yaml:"practice"`
	Wrong    map[string]any `yaml:"wrong"`
	Right    map[string]any `yaml:"right"`
	NotHere  map[string]any `yaml:"not here"`
	Figure   string         `yaml:"figure"`
	Line     string         `yaml:"line"`   // how the line of the figure's working begins that shows it
	Number   string         `yaml:"number"` // of the practice's finding
	Mend     string         `yaml:"mend"`   // the fact that the practice corrects
	Job      map[string]any `yaml:"job"`
	Gives    string         `yaml:"gives"`
}

const heldFolder = "../../testdata/limits"

// readEdges gives the edges by the name of the number they hold.
func readEdges(t *testing.T) map[string][]edge {
	files, err := filepath.Glob(heldFolder + "/*.yaml")
	require.NoError(t, err)
	all := map[string][]edge{}
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		decoder := yaml.NewDecoder(bytes.NewReader(text))
		decoder.KnownFields(true)
		var held map[string][]edge
		require.NoError(t, decoder.Decode(&held), file)
		topic := strings.TrimSuffix(filepath.Base(file), ".yaml")
		for name, edges := range held {
			all[topic+"."+name] = edges
		}
	}
	return all
}

// check is one job of an edge and what it must come to.
type check struct {
	edge
	facts map[string]any
	job   *job.Job
	want  string
	known bool // it is no range for want of facts
}

// checks gives an edge's jobs, ready to be computed.
func (b *bench) checks(e edge) ([]check, error) {
	sides := map[string]map[string]any{}
	if e.Job != nil {
		sides[e.Gives] = e.Job
	}
	for status, facts := range map[string]map[string]any{Wrong: e.Wrong, Right: e.Right, NotHere: e.NotHere} {
		if facts != nil {
			sides[status] = facts
		}
	}
	var all []check
	for _, want := range slices.Sorted(maps.Keys(sides)) {
		j, err := b.jobOf(sides[want])
		if err != nil {
			return nil, err
		}
		all = append(all, check{edge: e, facts: sides[want], job: j, want: want})
	}
	return all, nil
}

// jobOf states facts as a job file does.
func (b *bench) jobOf(facts map[string]any) (*job.Job, error) {
	j := job.New()
	for _, path := range slices.Sorted(maps.Keys(facts)) {
		if err := j.State(b.book.Facts, path, facts[path]); err != nil {
			return nil, err
		}
	}
	return j, j.Follow(b.book.Facts)
}
