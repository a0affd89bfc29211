package wording_test

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"hearsay/internal/belief/wording"
)

func TestClean(t *testing.T) {
	for text, want := range map[string]string{
		"Don’t  pour it!":                "do not pour it!",
		"dont, cant, won't, AIN'T, isnt": "do not, can not, will not, is not, is not",
		"We're pourin' tomorrow mornin'": "we're pouring tomorrow morning",
		"3,500 psi at 0.45 and 90°F":     "#### psi at # and ## degrees f",
		"I want it":                      "i want it",
		"cannot":                         "can not",
		strings.Repeat("é", 1500):        strings.Repeat("é", 1000),
	} {
		if got := wording.Clean(text); got != want {
			t.Errorf("%q: %q, wanted %q", text, got, want)
		}
	}
}

func TestWords(t *testing.T) {
	got := strings.Join(wording.Words("we're not done, is it 5 % wet? (a 'test' #### psi)"), "|")
	if want := "we're|not|done|,|is|it|%|wet|?|a|test|####|psi"; got != want {
		t.Errorf("%s, wanted %s", got, want)
	}
}

// has tells whether a sentence has every feature that another has.
func has(text, of string, c *wording.Concepts) bool {
	all := wording.Features(text, c)
	for _, f := range wording.Features(of, c) {
		if !slices.ContainsFunc(all, func(g wording.Feature) bool { return f.Hash == g.Hash }) {
			return false
		}
	}
	return true
}

func TestWhatIsDeniedAndWhatStandsAfterAButCounts(t *testing.T) {
	count := func(text string) int { return len(wording.Features(text, nil)) }
	if a, b := count("it will never crack, so fine"), count("it will surely crack, so fine"); a == b {
		t.Error("a denial leaves no trace")
	}
	// The reach of a denial ends with its clause: both have the same features but for the comma.
	if count("no, it cracks") == count("no it cracks") {
		t.Error("a denial goes on behind a comma")
	}
	if has("he says wait and I pour", "but I pour", nil) || !has("he says wait but I pour", "I pour", nil) {
		t.Error("what stands after a but is not told apart")
	}
}

func TestConcepts(t *testing.T) {
	c := wording.NewConcepts(map[string][]string{"concrete": {"mud", "ready mix"}, "mistake": {"never pour"}})
	if got := wording.FieldsOf("Pour the mud, ready-mix or not; we never poured", c).Concepts; got != "concrete concrete mistake" {
		t.Errorf("%q", got)
	}
	if got := wording.FieldsOf("mud", nil).Concepts; got != "" {
		t.Errorf("%q without concepts", got)
	}
}

// FuzzFeatures: features are sorted, each once, and the text cleaned is valid.
func FuzzFeatures(f *testing.F) {
	f.Add("Don't pour it, but 3,500 psi will do?")
	f.Add("\xff'n't it")
	f.Fuzz(func(t *testing.T, text string) {
		if utf8.ValidString(text) && !utf8.ValidString(wording.Clean(text)) {
			t.Errorf("%q cleaned is not valid", text)
		}
		fs := wording.Features(text, nil)
		for i, x := range fs {
			if x.Count < 1 || i > 0 && fs[i-1].Hash >= x.Hash {
				t.Fatalf("feature %d: %+v after %+v", i, x, fs[max(i-1, 0)])
			}
		}
	})
}

// A word that only one of two sentences denies is turned about, in the clause of the denial alone.
func TestTurnedWordsOfADenial(t *testing.T) {
	sign := func(text, word string) float32 {
		for _, f := range wording.Turned(text) {
			if f.Hash == wording.Turned(word)[0].Hash {
				return f.Count
			}
		}
		return 0
	}
	for _, c := range []struct {
		text, word string
		want       float32
	}{
		{"let the primer go in the slab", "primer", 1},
		{"never let the primer go in the slab", "primer", -1},
		{"a permit isn't required", "permit", -1},
		{"no permit is required", "required", -1},
		{"it won't match because the pigment varies", "match", -1},
		{"it won't match because the pigment varies", "pigment", 1},
		{"don't worry, it will match", "match", 1},
		{"who needs a permit", "permit", -1},
		{"the man who needs a permit", "permit", 1},
		{"match it, or never match it", "match", 0},
	} {
		if got := sign(c.text, c.word); got != c.want {
			t.Errorf("%s: %s counts %v, not %v", c.text, c.word, got, c.want)
		}
	}
}
