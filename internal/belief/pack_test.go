package belief_test

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"go.yaml.in/yaml/v3"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/folder"
)

func packed(t *testing.T, layers ...folder.Layer) *belief.Corpus {
	t.Helper()
	c, err := belief.Load(folder.Over(corpus.Files, layers...))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func answer(t *testing.T, c *belief.Corpus, text string) belief.Answer {
	t.Helper()
	a, err := c.Answer(text)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// The beliefs of a pack, eight to eighteen sentences each, are found from sentences that are not in it, and those of the corpus as if there were no pack.
func TestBeliefsOfAPackAreFoundAndChangeNoOthers(t *testing.T) {
	text, err := os.ReadFile("testdata/pack-claims.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var wanted []struct {
		ID      string
		Verdict belief.Verdict
		Text    string
	}
	if err := yaml.Unmarshal(text, &wanted); err != nil {
		t.Fatal(err)
	}
	plain, c := load(t), packed(t, folder.Layer{Owner: "heron", Files: os.DirFS("testdata/pack")})
	var near, answered, right, opposite float64
	for _, want := range wanted {
		a := answer(t, c, want.Text)
		if a.Near[0].Belief == want.ID {
			near++
		}
		if !a.Answered {
			t.Logf("not answered: %s: %v", want.Text, a.Near[0])
			continue
		}
		answered++
		switch {
		case *a.Belief != want.ID:
			t.Logf("%s, wanted %s: %s", *a.Belief, want.ID, want.Text)
		case a.Verdict == want.Verdict:
			right++
			if len(a.Changed) != 1 || a.Changed[0] != "belief of pack heron" {
				t.Errorf("does not say whose it is: %v", a.Changed)
			}
		default:
			opposite++
			t.Logf("%s, wanted %s: %s", a.Verdict, want.Verdict, want.Text)
		}
	}
	n := float64(len(wanted))
	t.Logf("nearest %.0f of %.0f, answered %.0f, right %.0f, the opposite %.0f", near, n, answered, right, opposite)
	if near < 0.9*n || answered < 0.85*n || right < 0.85*answered {
		t.Error("too few")
	}

	changed := 0
	for _, x := range claims(t) {
		before, after := answer(t, plain, x.Text), answer(t, c, x.Text)
		if before.Answered && (!after.Answered || *before.Belief != *after.Belief || before.Verdict != after.Verdict) {
			t.Errorf("answered otherwise with the pack: %s", x.Text)
		}
		if !before.Answered && after.Answered {
			changed++
			t.Logf("answered with the pack alone, by %s: %s", *after.Belief, x.Text)
		}
	}
	if changed > 1 {
		t.Errorf("%d claims about other things are answered by the pack", changed)
	}
}

// A belief in the place of a built-in one answers what that answered, and what its own sentences say.
func TestAPackReplacesABelief(t *testing.T) {
	const id = "water/little-water-is-harmless"
	text, err := corpus.Files.ReadFile(id + ".md")
	if err != nil {
		t.Fatal(err)
	}
	head, _, _ := strings.Cut(string(text), "said:")
	own := head + "said:\n  office:\n    - Topping up from the tote is within our allowance.\ndenied: {}\n---\n# Fact\nOur plants allow none.\n# Belief\nb\n# Why\nw\n# Do\nd\n# Say\ns\n"
	c := packed(t, folder.Layer{Owner: "plant", Files: fstest.MapFS{id + ".md": {Data: []byte(own)}}})
	for _, said := range []string{"a few gallons on the truck do no harm", "Topping up from the tote stays within our allowance"} {
		a := answer(t, c, said)
		if !a.Answered || *a.Belief != id || a.Text.Fact != "Our plants allow none." {
			t.Errorf("%s: %+v", said, a)
			continue
		}
		if len(a.Changed) != 1 || a.Changed[0] != "belief of pack plant, in the place of the built-in one" {
			t.Errorf("does not say whose it is: %v", a.Changed)
		}
		seen := map[string]bool{}
		for _, n := range a.Near {
			if seen[n.Belief] {
				t.Errorf("offered twice: %v", a.Near)
			}
			seen[n.Belief] = true
		}
	}
}

// Words for the same thing that a pack brings are understood in claims on built-in beliefs.
func TestAPackBringsWordsForTheSameThing(t *testing.T) {
	const said = "a few gobbles of zwack on the lorry do no harm"
	plain := answer(t, load(t), said)
	c := packed(t, folder.Layer{Owner: "dialect", Files: fstest.MapFS{"synonyms.yaml": {Data: []byte("water: [zwack, gobble]\ntruck: [lorry]\nadd water: [gobbles of zwack]\n")}}})
	with := answer(t, c, said)
	if with.Near[0].Belief != "water/little-water-is-harmless" || with.Near[0].Score <= plain.Near[0].Score && plain.Near[0].Belief == with.Near[0].Belief {
		t.Errorf("before %v, with the words %v", plain.Near, with.Near)
	}
}

// A pack with sentences without end is refused when it is first asked.
func TestAPackSaysItsBeliefsInSoManyWays(t *testing.T) {
	var said strings.Builder
	for i := range 6000 {
		fmt.Fprintf(&said, "    - way %d of saying it\n", i)
	}
	text := "---\nbelief: b\nverdict: myth\nsources: [{work: trade, basis: memory}]\nsaid:\n  crew:\n" + said.String() + "---\n# Fact\nf\n# Belief\nb\n# Why\nw\n# Do\nd\n# Say\ns\n"
	c := packed(t, folder.Layer{Owner: "heron", Files: fstest.MapFS{"water/endless.md": {Data: []byte(text)}}})
	if _, err := c.Answer("way 17 of saying it"); err == nil || !strings.Contains(err.Error(), "in more than 5000 ways") {
		t.Errorf("it was taken: %v", err)
	}
}
