package belief_test

import (
	"bufio"
	"encoding/json"
	"os"
	"reflect"
	"testing"

	"hearsay/corpus"
	"hearsay/internal/belief"
)

func load(t testing.TB) *belief.Corpus {
	t.Helper()
	c, err := belief.Load(corpus.Files)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// claim is a sentence with its right answer, made apart from the corpus.
type claim struct {
	Text    string         `json:"text"`
	ID      *string        `json:"id"`
	Verdict belief.Verdict `json:"verdict"`
}

func claims(t testing.TB) []claim {
	t.Helper()
	f, err := os.Open("testdata/claims.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out []claim
	for lines := bufio.NewScanner(f); lines.Scan(); {
		var c claim
		if err := json.Unmarshal(lines.Bytes(), &c); err != nil {
			t.Fatal(err)
		}
		out = append(out, c)
	}
	return out
}

// Sentences that the model has not learned from must be answered as well as is promised.
func TestSentencesApartFromTheCorpusAreAnswered(t *testing.T) {
	c := load(t)
	own := map[string]bool{}
	for _, s := range sentences(t) {
		own[s.Text] = true
	}
	var covered, first, three, answered, right, opposite, foreign, silent float64
	for _, want := range claims(t) {
		if own[want.Text] {
			t.Errorf("stands in the corpus, so it measures nothing: %s", want.Text)
		}
		a, err := c.Answer(want.Text)
		if err != nil {
			t.Fatal(err)
		}
		if want.ID == nil {
			foreign++
			if !a.Answered {
				silent++
			}
			continue
		}
		covered++
		for i, near := range a.Near {
			if near.Belief == *want.ID {
				three++
				if i == 0 {
					first++
				}
			}
		}
		if !a.Answered {
			continue
		}
		answered++
		if *a.Belief == *want.ID && a.Verdict == want.Verdict {
			right++
		} else {
			t.Logf("%s: %s, wanted %s %s: %s", *a.Belief, a.Verdict, *want.ID, want.Verdict, want.Text)
		}
		if a.Verdict == belief.Myth && want.Verdict == belief.Holds || a.Verdict == belief.Holds && want.Verdict == belief.Myth {
			opposite++
		}
	}
	for _, x := range []struct {
		name         string
		share, least float64
	}{
		{"right belief first", first / covered, 0.88},
		{"right belief among three", three / covered, 0.96},
		{"answered", answered / covered, 0.80},
		{"belief and verdict right where answered", right / answered, 0.95},
		{"not the opposite where answered", 1 - opposite/answered, 0.96},
		{"silent on what is not covered", silent / foreign, 0.92},
	} {
		t.Logf("%s: %.1f %%", x.name, 100*x.share)
		if x.share < x.least {
			t.Errorf("%s: %.1f %%, at least %.0f %% is wanted", x.name, 100*x.share, 100*x.least)
		}
	}
}

func TestTheVerdictIsOnTheSentenceAsSaid(t *testing.T) {
	for _, x := range []struct {
		belief belief.Verdict
		stance belief.Stance
		want   belief.Verdict
	}{
		{belief.Myth, belief.Asserts, belief.Myth}, {belief.Myth, belief.Denies, belief.Holds},
		{belief.Holds, belief.Asserts, belief.Holds}, {belief.Holds, belief.Denies, belief.Myth},
		{belief.Depends, belief.Asserts, belief.Depends}, {belief.Depends, belief.Denies, belief.Depends},
	} {
		if got := x.belief.On(x.stance); got != x.want {
			t.Errorf("a sentence that %s what is %s: %s, wanted %s", x.stance, x.belief, got, x.want)
		}
	}
}

func TestNothingIsAnsweredWithoutAnEntry(t *testing.T) {
	c := load(t)
	for _, text := range []string{"", " ", "?", "####", "zzzz qqqq xxxx", "Who won the ball game last night?", "\xff\xfe"} {
		a, err := c.Answer(text)
		if err != nil {
			t.Fatal(err)
		}
		if a.Answered || a.Belief != nil || a.Stance != nil || a.Verdict != belief.Unknown || a.Text != nil || len(a.Near) != 3 {
			t.Errorf("%q: %+v", text, a)
		}
	}
}

func TestPrintTakesEveryText(t *testing.T) {
	a, err := load(t).Answer("a few gallons on the truck do no harm")
	if err != nil || !a.Answered {
		t.Fatal(a, err)
	}
	got := a.Print(func(string) string { return "x" })
	if *got.Text != (belief.Text{DependsOn: "x", Fact: "x", Belief: "x", Why: "x", Do: "x", Say: "x"}) || got.Numbers[0] != "x" {
		t.Errorf("%+v", got)
	}
	if a.Numbers[0] == "x" || a.Text.Fact == "x" {
		t.Error("the answer itself was changed")
	}
}

// FuzzAnswer: whatever is typed, the answer keeps its contract and is the same the second time.
func FuzzAnswer(f *testing.F) {
	for _, c := range claims(f) {
		f.Add(c.Text)
	}
	f.Add("don't but, not, ???")
	c := load(f)
	f.Fuzz(func(t *testing.T, text string) {
		a, err := c.Answer(text)
		if err != nil {
			t.Fatal(err)
		}
		if a.Answered != (a.Verdict != belief.Unknown) || a.Answered != (a.Belief != nil) || a.Answered != (a.Text != nil) || a.Answered && a.Far {
			t.Errorf("half an answer: %+v", a)
		}
		if a.Confidence < 0 || a.Confidence > 1 || len(a.Near) == 0 || len(a.Near) > 3 {
			t.Errorf("confidence %v, near %v", a.Confidence, a.Near)
		}
		if a.Answered && a.Near[0].Belief != *a.Belief {
			t.Errorf("answered %s, nearest %s", *a.Belief, a.Near[0].Belief)
		}
		for i := 1; i < len(a.Near); i++ {
			if a.Near[i].Score > a.Near[i-1].Score {
				t.Errorf("near is not in order: %v", a.Near)
			}
		}
		again, err := c.Answer(text)
		if err != nil || !reflect.DeepEqual(a, again) {
			t.Errorf("%+v, then %+v (%v)", a, again, err)
		}
	})
}

func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		if _, err := belief.Load(corpus.Files); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAnswer(b *testing.B) {
	c, texts := load(b), claims(b)
	i := 0
	for b.Loop() {
		if _, err := c.Answer(texts[i%len(texts)].Text); err != nil {
			b.Fatal(err)
		}
		i++
	}
}
