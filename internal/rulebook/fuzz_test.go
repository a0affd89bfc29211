package rulebook_test

import (
	"bytes"
	"context"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
	"time"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/folder"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/internal/words"
	"hearsay/rules"
)

// longestPack is how long anything may take to be made of a pack.
const longestPack = 20 * time.Second

// use does with a pack all that the commands do: load, judge, read words, answer a claim.
// The rulebook and the corpus below it are small, so that many packs can be tried.
func use(t *testing.T, below ground, p *rulebook.Pack) {
	t.Helper()
	start := time.Now()
	defer func() {
		if took := time.Since(start); took > longestPack {
			t.Errorf("it took %v", took)
		}
	}()
	b, err := rulebook.Load(below.rules, p)
	if err == nil {
		err = b.Compile()
	}
	if err == nil {
		j, _, err := job.Read(b.Facts, "job", []byte("member: {use: driveway, thickness: 3 in}\nwater: {added: 10 gal}\nload: {volume: 9 yd3}\n"))
		if err == nil {
			b.Judge(context.Background(), j) // may fail, and must end
		}
		laid := rulebook.Corpus(below.corpus, p)
		if r, err := words.New(b.Facts, laid); err == nil {
			r.Read("driveway 20x40 at 4 inches, 3000 psi, five gallons to nine yards at the county line, no permit in hand", time.Now())
		}
	}
	c, err := belief.Load(rulebook.Corpus(below.corpus, p))
	if err == nil {
		c.Answer("a driveway needs no permit here, and a few gallons do no harm")
	}
}

// ground is what a pack is laid over.
type ground struct{ rules, corpus folder.Memory }

// smallGround has all facts, limits and works, and no practices; one belief, and few words.
func smallGround(f *testing.F) ground {
	g := ground{folder.Memory{}, folder.Memory{"words.yaml": []byte("numbers: {one: 1, five: 5}\nunits:\n  - {say: [in, inch, inches], is: [in]}\nfillers: [a, the]\nnegators: [no, not]\n")}}
	var err error
	for _, pattern := range []string{"*.yaml", "limits/*.yaml"} {
		names, globbed := fs.Glob(rules.Files, pattern)
		if globbed != nil {
			f.Fatal(globbed)
		}
		for _, name := range names {
			if g.rules[name], err = rules.Files.ReadFile(name); err != nil {
				f.Fatal(err)
			}
		}
	}
	const id = "water/little-water-is-harmless.md"
	if g.corpus[id], err = corpus.Files.ReadFile(id); err != nil {
		f.Fatal(err)
	}
	return g
}

// FuzzPack: whatever stands in the files of a pack, it is refused or used, soon and without harm.
func FuzzPack(f *testing.F) {
	names := []string{"pack.yaml", "rules/facts.yaml", "rules/sources.yaml", "rules/limits/county.yaml", "rules/cautions.yaml", "rules/county/no-permit.rego",
		"corpus/words.yaml", "corpus/synonyms.yaml", "corpus/county/paper.md"}
	seed := func(name string) []byte {
		text, err := os.ReadFile(filepath.Join("../cli/newpack", filepath.FromSlash(name)))
		if err != nil {
			f.Fatal(err)
		}
		return bytes.ReplaceAll(bytes.ReplaceAll(text, []byte("TOPIC"), []byte("county")), []byte("NAME"), []byte("county"))
	}
	own := []string{"pack.yaml", "rules/facts.yaml", "rules/sources.yaml", "rules/limits/TOPIC.yaml", "rules/cautions.yaml", "rules/TOPIC/no-permit.rego",
		"corpus/words.yaml", "corpus/synonyms.yaml", "corpus/TOPIC/permit-is-paper.md"}
	below := smallGround(f)
	whole := make([][]byte, len(names))
	for i, name := range own {
		whole[i] = seed(name)
		f.Add(uint8(i), whole[i])
	}
	f.Add(uint8(5), []byte(rule+doubling(20)))
	f.Add(uint8(1), []byte(bomb()))
	f.Add(uint8(6), []byte("facts:\n  order.slump: {said: [\"# ** * ** inch\"], units: {in: 1}}\nnumbers: {umpteen: 1e9}\n"))
	f.Fuzz(func(t *testing.T, which uint8, text []byte) {
		files := map[string]string{}
		for i, name := range names {
			files[name] = string(whole[i])
			if i == int(which)%len(names) {
				files[name] = string(text)
			}
		}
		p, err := rulebook.OpenPack(inMemory(files), nil)
		if err != nil {
			return
		}
		use(t, below, p)
	})
}

// FuzzUnpackPack: whatever is given as the archive of a pack, it is refused or read within its bounds.
func FuzzUnpackPack(f *testing.F) {
	p, err := rulebook.OpenPack(inMemory(map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact, "rules/county/no-permit.rego": rule}), nil)
	if err != nil {
		f.Fatal(err)
	}
	var out bytes.Buffer
	if err := p.Files.Tar(&out); err != nil {
		f.Fatal(err)
	}
	f.Add(out.Bytes())
	f.Add([]byte{0x1f, 0x8b, 8, 0, 0, 0, 0, 0})
	f.Fuzz(func(t *testing.T, text []byte) {
		p, err := rulebook.UnpackPack(bytes.NewReader(text), nil)
		if err != nil {
			return
		}
		var all int
		for _, content := range p.Files {
			all += len(content)
		}
		if all > 8<<20 {
			t.Errorf("%d bytes were read", all)
		}
	})
}

// FuzzReadBundle: whatever is given as a bundle, it is refused or read.
func FuzzReadBundle(f *testing.F) {
	f.Add([]byte("not a bundle"))
	f.Fuzz(func(t *testing.T, text []byte) {
		if b, err := rulebook.ReadBundle(bytes.NewReader(text), nil); err == nil && b.Revision == "" {
			t.Error("a bundle without a revision was taken")
		}
	})
}
