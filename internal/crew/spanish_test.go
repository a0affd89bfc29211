package crew

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/quantity"
)

var braces = regexp.MustCompile(`\{[^}]*\}`)

func TestNothingIsMissingInAnyLanguage(t *testing.T) {
	first, err := readWords("en")
	require.NoError(t, err)
	for _, language := range Languages()[1:] {
		w, err := readWords(language)
		require.NoError(t, err)
		for _, key := range first.Keys() {
			if !assert.Contains(t, w.texts, key, "%s lacks %s", language, key) {
				continue
			}
			want, got := braces.FindAllString(first.texts[key], -1), braces.FindAllString(w.texts[key], -1)
			slices.Sort(want)
			slices.Sort(got)
			assert.Equal(t, want, got, "%s: %s", language, key)
		}
		for _, key := range w.Keys() {
			assert.True(t, strings.HasPrefix(key, "unit.") || first.texts[key] != "", "%s: no text asks for %s", language, key)
		}
		tr, english := trainer(t, language), trainer(t, "en")
		for _, id := range english.Beliefs() {
			l, err := tr.Lesson(id)
			if !assert.NoError(t, err) {
				continue
			}
			e, err := english.Lesson(id)
			require.NoError(t, err)
			assert.NotEqual(t, e.Fact, l.Fact, id)
			assert.Len(t, l.Ask, len(e.Ask), id)
		}
	}
}

// The numbers to remember are the same in every language.
func TestTheNumbersToRememberAreTheSame(t *testing.T) {
	english, spanish := trainer(t, "en"), trainer(t, "es")
	for _, id := range english.Beliefs() {
		e, err := english.corpus.Entry(id)
		require.NoError(t, err)
		var l Lesson
		l.Verdict, l.Belief = string(e.Verdict), id
		require.NoError(t, translate(spanish.files, "es", &l))
		for _, q := range braces.FindAllString(l.Remember+l.Fact+l.Do+l.Why+l.Say, -1) {
			_, err := quantity.Parse(strings.Trim(q, "{}"))
			assert.NoError(t, err, id)
			assert.Contains(t, e.Fact+e.Saying+e.Why+e.Do+e.Say+e.Remember+strings.Join(e.Numbers, " "), q, "%s says another number in Spanish", id)
		}
	}
}

func TestAQuizInSpanish(t *testing.T) {
	tr := trainer(t, "es")
	z, err := tr.Quiz(Plan{Beliefs: tr.Beliefs(), Questions: 150, Seed: 3})
	require.NoError(t, err)
	for _, q := range z.Questions {
		assert.NotContains(t, q.Text, "{")
		if q.Kind == "verdict" {
			assert.Contains(t, q.Text, "¿Es mito, es cierto o depende?")
		}
	}
	talk, err := tr.Talk("", []string{"cure/longer-is-stronger"})
	require.NoError(t, err)
	assert.Contains(t, talk.Lessons[0].Fact, "7 días")
}

// Every line of working that a question can have is said in Spanish, with its numbers in order, and no English word is left.
func TestTheWorkingIsSaidInSpanish(t *testing.T) {
	tr, letters := trainer(t, "es"), regexp.MustCompile(`[a-zA-Z]{2,}`)
	r, seen, missing := random(1), 0, map[string]string{}
	for _, k := range kinds() {
		for range 60 {
			right, err := tr.compute(k, k.draw(r))
			require.NoError(t, err)
			for _, line := range append(slices.Clone(right.Working), right.Figure.Method)[:max(1, len(right.Working))] {
				said := tr.words.working(line)
				assert.Equal(t, numbers.FindAllString(line, -1), numbers.FindAllString(said, -1), line)
				if letters.MatchString(numbers.ReplaceAllString(line, "")) {
					shape := numbers.ReplaceAllString(line, "#")
					if _, known := tr.words.shapes[shape]; !known {
						missing[shape] = k.figure
					}
					seen++
				}
			}
		}
	}
	assert.Empty(t, missing, "lines to add to text/working.es.yaml")
	assert.Greater(t, seen, 500)
	assert.Equal(t, "una varilla #4 de {0.2 in2} cada {16 in} = {0.15 in2/ft}", tr.words.working("a #4 bar of {0.2 in2} in every {16 in} = {0.15 in2/ft}"))
}
