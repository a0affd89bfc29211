package rulebook_test

import (
	"bytes"
	"context"
	"io/fs"
	"maps"
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

// smallGround has all facts and works, few limits and no practices; one belief, and few words.
func smallGround(f *testing.F) ground {
	g := ground{folder.Memory{}, folder.Memory{"words.yaml": []byte("numbers: {one: 1, five: 5}\nunits:\n  - {say: [in, inch, inches], is: [in]}\nfillers: [a, the]\nnegators: [no, not]\n")}}
	var err error
	for _, pattern := range []string{"*.yaml", "limits/water.yaml"} {
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

// smallest is a rulebook that is quickly read, for the many times that fuzzing reads one: a few facts, a limit, a practice.
var smallest = map[string]string{
	"facts.yaml": "member:\n  about: x\n  facts:\n    use: {kind: choice, name: use, ask: \"?\", choices: {driveway: driveway, patio: patio}}\n" +
		"water:\n  about: x\n  facts:\n    added: {kind: quantity, unit: gal, name: water added, usual: [0, 30], possible: [0, 500], ask: \"?\"}\n",
	"limits/water.yaml": "late_water: {value: 1, unit: gal, what: water that may go in late, condition: always, source: aci-117, basis: memory}\n",
	"cautions.yaml":     "skin: {text: \"It burns.\", source: aci-117, basis: memory}\n",
	"trade/late.rego":   "package trade\n\nlate if input.water.added > 0\n",
	"water/late.rego": `# METADATA
# scope: package
# title: Water goes in late
# custom:
#   stage: during
#   severity: stop
#   why: "It thins {1 gal}."
#   do: "Leave it out."
#   numbers: [water]
#   cautions: [skin]
package practice.water["late"]

here if data.trade.late

wrong contains "it is much" if {
	here
	input.water.added > data.limit.water.late_water
}

number["water"] := {"yours": "water.added", "right": data.limit.water.late_water, "unit": "gal"}

mend["water.added"] := data.limit.water.late_water
`,
}

// smallBundle is a bundle of the smallest rulebook with a pack over it.
func smallBundle(f *testing.F) folder.Memory {
	own, err := rulebook.OpenPack(inMemory(map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact, "rules/county/no-permit.rego": rule}), nil)
	if err != nil {
		f.Fatal(err)
	}
	below := folder.Memory{}
	for name, text := range smallest {
		below[name] = []byte(text)
	}
	if below["sources.yaml"], err = rules.Files.ReadFile("sources.yaml"); err != nil { // which the figures cite
		f.Fatal(err)
	}
	b, err := rulebook.Load(below, own)
	if err != nil {
		f.Fatal(err)
	}
	var out bytes.Buffer
	if err := b.WriteBundle(&out, nil); err != nil {
		f.Fatal(err)
	}
	return unpacked(f, out.Bytes())
}

// FuzzReadBundle: whatever is given as a bundle, it is refused or read.
func FuzzReadBundle(f *testing.F) {
	f.Add([]byte("not a bundle"))
	f.Add(packed(f, folder.Memory{".manifest": []byte(`{"revision": "1", "roots": ["limit"]}`), "rules/facts.yaml": []byte(permitFact), "packs/01/pack.yaml": []byte(head)}))
	f.Fuzz(func(t *testing.T, text []byte) {
		if b, err := rulebook.ReadBundle(bytes.NewReader(text), nil); err == nil && b.Revision == "" {
			t.Error("a bundle without a revision was taken")
		}
	})
}

func packed(t testing.TB, files folder.Memory) []byte {
	var out bytes.Buffer
	if err := files.Tar(&out); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// FuzzBundle: whatever stands in the files of a bundle, it is refused or judged by, soon and without harm. Its manifest names the
// revision that its content has, so that it is not refused for that alone.
func FuzzBundle(f *testing.F) {
	whole := smallBundle(f)
	if b, err := rulebook.ReadBundle(bytes.NewReader(packed(f, whole)), nil); err != nil {
		f.Fatal(err)
	} else if _, err := b.Load(); err != nil {
		f.Fatal(err)
	}
	names := append(whole.Names(), "rules/county/other.rego.off", "rules/trade/other.rego")
	for i, name := range names {
		if name != "rules/sources.yaml" {
			f.Add(uint8(i), whole[name])
		}
	}
	last := uint8(len(names) - 1)
	f.Add(last, []byte("package trade\n\nother if input.water.added > 0\n"))
	f.Add(last, []byte(rule+doubling(20)))
	f.Fuzz(func(t *testing.T, which uint8, text []byte) {
		start := time.Now()
		files := maps.Clone(whole)
		files[names[int(which)%len(names)]] = text
		b, err := rulebook.ReadBundle(bytes.NewReader(packed(t, files)), nil)
		if err != nil {
			return
		}
		if b.Revision, err = rulebook.RevisionOf(b.Rules, b.Packs...); err != nil {
			t.Fatal(err)
		}
		if book, err := b.Load(); err == nil {
			if j, _, err := job.Read(book.Facts, "job", []byte("water: {added: 10 gal}\nmember: {use: driveway}\n")); err == nil {
				book.Judge(context.Background(), j) // may fail, and must end
			}
		}
		if took := time.Since(start); took > longestPack {
			t.Errorf("it took %v", took)
		}
	})
}
