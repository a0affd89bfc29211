package crew

import (
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/corpus"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

var theBook = sync.OnceValues(func() (*rulebook.Book, error) { return rulebook.Load(rules.Files) })

func trainer(t testing.TB, language string) *Trainer {
	t.Helper()
	book, err := theBook()
	require.NoError(t, err)
	tr, err := NewTrainer(corpus.Files, book, language, quantity.US)
	require.NoError(t, err)
	return tr
}

func TestTheKeyIsTheFigureAndNoOtherChoiceIsRight(t *testing.T) {
	tr := trainer(t, "en")
	all := kinds()
	assert.GreaterOrEqual(t, len(all), 12)
	rapid.Check(t, func(r *rapid.T) {
		k := rapid.SampledFrom(all).Draw(r, "kind")
		source := random(rapid.Uint64Range(1, 1<<40).Draw(r, "seed"))
		v := k.draw(source)
		q, err := tr.ask(source, k, v)
		require.NoError(r, err)
		if q == nil {
			return
		}
		j := job.New()
		for _, d := range k.draws {
			require.NoError(r, j.State(tr.book.Facts, d.fact, tr.printer.exact(v[d.fact], d.unit)))
		}
		for fact, value := range k.fixed {
			require.NoError(r, j.State(tr.book.Facts, fact, value))
		}
		require.NoError(r, j.Follow(tr.book.Facts))
		right := tr.book.Figures.Sheet(j).Result(k.figure)
		require.Len(r, q.Options, 1+wrongChoices)
		require.InEpsilon(r, right.Best, q.Options[q.Key].Value, 1e-9)
		for i, o := range q.Options {
			if i == q.Key {
				require.Empty(r, o.Slip)
				continue
			}
			require.NotEmpty(r, o.Slip)
			require.False(r, o.Value >= right.Low && o.Value <= right.High, "%s: %s is right as well (%g to %g)", q.Text, o.Text, right.Low, right.High)
			for j, other := range q.Options {
				require.True(r, i == j || o.Text != other.Text, "%s: %s stands twice", q.Text, o.Text)
			}
		}
		require.NotEmpty(r, q.Why)
		require.NotContains(r, q.Text, "{")
		require.False(r, strings.HasPrefix(q.Text, "ask."), q.Text)
	})
}

func TestEveryKindCanBeAsked(t *testing.T) {
	tr := trainer(t, "en")
	for _, k := range kinds() {
		r, made := random(7), 0
		for range 40 {
			q, err := tr.ask(r, k, k.draw(r))
			require.NoError(t, err)
			if q == nil {
				continue
			}
			if made++; made == 1 {
				var choices []string
				for i, o := range q.Options {
					choices = append(choices, Letter(i)+" "+o.Text+" ("+o.Slip+")")
				}
				t.Logf("%s\n  %s\n  key %s: %s", q.Text, strings.Join(choices, "\n  "), q.KeyLetter(), strings.Join(q.Why, "; "))
			}
		}
		assert.Greater(t, made, 10, "%s can hardly ever be asked", k.figure)
		_, err := tr.corpus.Entry(k.belief)
		assert.NoError(t, err)
	}
}
