package belief_test

import (
	"maps"
	"strings"
	"testing"
	"testing/fstest"

	"hearsay/corpus"
	"hearsay/internal/belief"
)

const sections = "\n# Fact\nIt is so.\n\n# Belief\nIt is often said.\n\n# Why\nBecause.\n\n# Do\nDo it.\n\n# Numbers\n- {4 in} of it\n  and more (trade)\n- two\n\n# Say\nSay it.\n"

const matter = "belief: gnomes set the forms at night\nverdict: myth\nsources: [{work: trade, where: nights, basis: common practice}]\n"

func readOne(text string) (*belief.Entry, error) {
	c, err := belief.Read(fstest.MapFS{"forms/gnomes.md": {Data: []byte(text)}})
	if err != nil {
		return nil, err
	}
	return c.Entry("forms/gnomes")
}

func TestAnEntryIsRead(t *testing.T) {
	e, err := readOne(strings.ReplaceAll("---\n"+matter+"---\n"+sections, "\n", "\r\n"))
	if err != nil {
		t.Fatal(err)
	}
	if e.Belief != "gnomes set the forms at night" || e.Verdict != belief.Myth || e.Fact != "It is so." || e.Say != "Say it." || e.Sources[0].Basis != "common practice" {
		t.Errorf("%+v", e)
	}
	if len(e.Numbers) != 2 || e.Numbers[0] != "{4 in} of it and more (trade)" {
		t.Errorf("numbers %q", e.Numbers)
	}
}

func TestABadEntryIsRefusedWithWhatToDo(t *testing.T) {
	for name, x := range map[string]struct{ text, want string }{
		"no front matter":    {sections, "put a line --- first"},
		"open front matter":  {"---\n" + matter + sections, "close it with a line ---"},
		"unknown key":        {"---\n" + matter + "mood: sour\n---\n" + sections, "mood"},
		"no belief":          {"---\nverdict: myth\nsources: [{work: trade}]\n---\n" + sections, "write the belief"},
		"verdict":            {"---\n" + strings.Replace(matter, "myth", "maybe", 1) + "---\n" + sections, "myth, holds or depends"},
		"no condition":       {"---\n" + strings.Replace(matter, "myth", "depends", 1) + "---\n" + sections, "name the condition"},
		"condition too many": {"---\n" + matter + "depends_on: the moon\n---\n" + sections, "take it out"},
		"no source":          {"---\nbelief: a\nverdict: myth\n---\n" + sections, "name at least one work"},
		"unknown voice":      {"---\n" + matter + "said: {gnome: [hi]}\n---\n" + sections, "homeowner, crew and office"},
		"missing section":    {"---\n" + matter + "---\n" + strings.Replace(sections, "# Do\nDo it.\n", "", 1), "# Do is missing"},
		"unknown section":    {"---\n" + matter + "---\n" + sections + "# Moral\nx\n", "# Moral is not known"},
		"twice":              {"---\n" + matter + "---\n" + sections + "# Say\nx\n", "stands twice"},
		"text before":        {"---\n" + matter + "---\nhello\n" + sections, "begin with # Fact"},
	} {
		_, err := readOne(x.text)
		if err == nil || !strings.Contains(err.Error(), x.want) || !strings.Contains(err.Error(), "forms/gnomes.md") {
			t.Errorf("%s: %v, wanted %q and the file", name, err, x.want)
		}
	}
}

func TestEveryEntryOfTheCorpusIsRead(t *testing.T) {
	c := load(t)
	if n := len(c.IDs()); n < 122 {
		t.Errorf("%d entries, at least 122 are wanted", n)
	}
	for _, id := range c.IDs() {
		if _, err := c.Entry(id); err != nil {
			t.Error(err)
		}
	}
}

// A pack adds a belief that no model knows: it must be found by its sentences, with its stance, and must not get in the way
// of the others.
func TestABeliefThatTheModelNeverLearnedIsFound(t *testing.T) {
	said := `said: {homeowner: [The gnomes come out after dark and set all the forms, "Little gnomes in red hats put my form boards up overnight"], crew: [Don't bother stakin' it the gnomes'll have them forms up by mornin'], office: [It is understood that the gnomes erect the formwork during the night shift]}
denied: {homeowner: ["There are no gnomes, the carpenter sets the forms"], crew: ["Ain't no gnomes doin' it, me and Lou set them forms"], office: [Formwork is erected by carpenters rather than by gnomes]}
`
	files := fstest.MapFS{"forms/gnomes.md": {Data: []byte("---\n" + matter + said + "---\n" + sections)}}
	maps.Copy(files, copied(t))
	c, err := belief.Load(files)
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]belief.Stance{
		"My neighbor swears the gnomes set his forms after dark":              belief.Asserts,
		"Gnomes don't set forms, the carpenters do, there are no gnomes here": belief.Denies,
	} {
		a, err := c.Answer(text)
		if err != nil {
			t.Fatal(err)
		}
		if a.Near[0].Belief != "forms/gnomes" || !a.Answered || *a.Stance != want {
			t.Errorf("%s: %+v", text, a)
		}
	}
	plain := load(t)
	for _, x := range claims(t) {
		with, err := c.Answer(x.Text)
		if err != nil {
			t.Fatal(err)
		}
		without, err := plain.Answer(x.Text)
		if err != nil {
			t.Fatal(err)
		}
		if without.Answered && with.Near[0].Belief != without.Near[0].Belief {
			t.Errorf("the new belief took: %s", x.Text)
		}
	}
}

func copied(t *testing.T) fstest.MapFS {
	t.Helper()
	files := fstest.MapFS{}
	for _, id := range load(t).IDs() {
		text, err := corpus.Files.ReadFile(id + ".md")
		if err != nil {
			t.Fatal(err)
		}
		files[id+".md"] = &fstest.MapFile{Data: text}
	}
	return files
}
