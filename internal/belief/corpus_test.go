package belief_test

import (
	"reflect"
	"sort"
	"testing"

	"hearsay/corpus"
	"hearsay/internal/belief"
)

func sentences(t *testing.T) []belief.Sentence {
	t.Helper()
	c, err := belief.Read(corpus.Files)
	if err != nil {
		t.Fatal(err)
	}
	all, err := c.Sentences()
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// The corpus must be wide enough to match from: forty ways of saying each belief, twenty of denying it, in every voice.
func TestEveryBeliefIsSaidAndDeniedInEveryVoice(t *testing.T) {
	type key struct {
		belief string
		stance belief.Stance
	}
	count := map[key]int{}
	voices := map[key]map[string]bool{}
	foreign := 0
	for _, s := range sentences(t) {
		k := key{s.Belief, s.Stance}
		if s.Belief == "" {
			foreign++
			continue
		}
		count[k]++
		if voices[k] == nil {
			voices[k] = map[string]bool{}
		}
		voices[k][s.Voice] = true
	}
	c, err := belief.Read(corpus.Files)
	if err != nil {
		t.Fatal(err)
	}
	for _, id := range c.IDs() {
		for stance, least := range map[belief.Stance]int{belief.Asserts: 40, belief.Denies: 20} {
			k := key{id, stance}
			if count[k] < least {
				t.Errorf("%s: %d sentences of stance %s, at least %d are wanted", id, count[k], stance, least)
			}
			if len(voices[k]) != len(belief.VoiceNames()) {
				t.Errorf("%s: stance %s is not said in every voice", id, stance)
			}
		}
	}
	if foreign < 300 {
		t.Errorf("%d sentences that no belief covers, at least 300 are wanted", foreign)
	}
}

// A sentence that nearly repeats another adds nothing; it is to be taken out or said another way.
func TestNoSentenceNearlyRepeatsAnother(t *testing.T) {
	for _, c := range belief.Copies(sentences(t)) {
		t.Errorf("%s %s: %q shares %.0f %% with %q", c.Sentence.Belief, c.Sentence.Stance, c.Sentence.Text, 100*c.Shared, c.Of.Text)
	}
}

func TestCopiesAreFound(t *testing.T) {
	said := func(text, id string) belief.Sentence {
		return belief.Sentence{Text: text, Belief: id, Stance: belief.Asserts}
	}
	got := belief.Copies([]belief.Sentence{
		said("Throw the blankets on tonight, frost'll be out by mornin'.", "a"),
		said("Throw the blankets on tonight and the frost will be out by morning.", "a"),
		said("Throw the blankets on tonight and the frost will be out by morning!", "b"),
		said("Leave it under the insulation and Tuesday you can dig.", "a"),
	})
	if len(got) != 1 || got[0].Of.Text[0] != 'T' || got[0].Shared < 0.6 {
		t.Errorf("found %+v", got)
	}
}

// The model must have been learned from the corpus as it stands.
func TestTheModelIsUpToDate(t *testing.T) {
	c, err := belief.Read(corpus.Files)
	if err != nil {
		t.Fatal(err)
	}
	now, err := c.Head()
	if err != nil {
		t.Fatal(err)
	}
	then, err := belief.Embedded()
	if err != nil {
		t.Fatal(err)
	}
	const remedy = "run go generate ./internal/belief"
	if !reflect.DeepEqual(now.Concepts, then.Concepts) {
		t.Error("the words for the same thing have changed since the model was learned: " + remedy)
	}
	if now.Unrelated != then.Unrelated {
		t.Error("the sentences that no belief covers have changed since the model was learned: " + remedy)
	}
	prints := map[string]string{}
	for _, b := range then.Beliefs {
		prints[b.ID] = b.Print
	}
	var stale []string
	for _, b := range now.Beliefs {
		if prints[b.ID] != b.Print {
			stale = append(stale, b.ID)
		}
		delete(prints, b.ID)
	}
	sort.Strings(stale)
	if len(stale) > 0 || len(prints) > 0 {
		t.Errorf("changed since the model was learned: %v, gone: %v: %s", stale, prints, remedy)
	}
}
