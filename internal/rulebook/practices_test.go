package rulebook_test

import (
	"context"
	"os"
	"path"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// TestEveryPracticeOnItsJobs reads the two jobs of every practice and judges them: the practice is wrong in the first
// with all its numbers and a citation for them, and putting its correction back into the job makes it go away; it is
// right in the second.
func TestEveryPracticeOnItsJobs(t *testing.T) {
	b := load(t)
	for _, p := range b.Practices() {
		t.Run(p.ID, func(t *testing.T) {
			wrongJob, rightJob := twoJobs(t, b, p)
			wrong := judgement(t, b, wrongJob, p.ID)
			require.Equal(t, rulebook.Wrong, wrong.Status, "the first job: %v", opens(wrong))
			for _, name := range p.Numbers {
				assert.True(t, hasNumber(wrong, name), "the number %q is missing from the finding", name)
			}
			if len(p.Numbers) > 0 {
				assert.NotEmpty(t, wrong.Cites, "its numbers cite nothing")
			}
			mended := mend(t, b, wrongJob, wrong)
			after := judgement(t, b, mended, p.ID)
			assert.Contains(t, []string{rulebook.Right, rulebook.NotHere}, after.Status, "the correction does not put it right: %v %v", after.Reasons, opens(after))
			right := judgement(t, b, rightJob, p.ID)
			assert.Equal(t, rulebook.Right, right.Status, "the second job: %v %v", right.Reasons, opens(right))
		})
	}
}

func twoJobs(t *testing.T, b *rulebook.Book, p *rulebook.Practice) (wrong, right *job.Job) {
	t.Helper()
	text, err := os.ReadFile(path.Join("../../testdata/practices", p.ID+".yaml"))
	require.NoError(t, err)
	var jobs map[string]any
	require.NoError(t, yaml.Unmarshal(text, &jobs))
	read := func(name string) *job.Job {
		one, err := yaml.Marshal(jobs[name])
		require.NoError(t, err)
		j, _, err := job.Read(b.Facts, p.ID+" "+name, one)
		require.NoError(t, err)
		return j
	}
	return read("wrong"), read("right")
}

func judgement(t *testing.T, b *rulebook.Book, j *job.Job, id string) *rulebook.Judgement {
	t.Helper()
	one, err := b.JudgeOne(context.Background(), j, id)
	require.NoError(t, err)
	return one
}

func hasNumber(j *rulebook.Judgement, name string) bool {
	for _, n := range j.Numbers {
		if n.Name == name {
			return true
		}
	}
	return false
}

func mend(t *testing.T, b *rulebook.Book, j *job.Job, finding *rulebook.Judgement) *job.Job {
	t.Helper()
	require.NotEmpty(t, finding.Mend, "the finding says nothing that puts it right")
	mended, err := rulebook.Mended(b.Facts, j, finding.Mend)
	require.NoError(t, err)
	return mended
}

func opens(j *rulebook.Judgement) []string {
	var all []string
	for _, o := range j.Open {
		all = append(all, o.Reason+": "+join(o.Conditions)+join(o.NoFigure))
	}
	return all
}

func join(list []string) string {
	text := ""
	for _, s := range list {
		text += s + "; "
	}
	return text
}
