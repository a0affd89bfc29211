package rulebook

import (
	"fmt"
	"io"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/document"
	"hearsay/internal/folder"
)

// Pack is somebody's own rules, limits, facts, beliefs and words, laid over the built-in ones: a folder with pack.yaml, and
// below rules/ and corpus/ the same shape as the built-in folders.
type Pack struct {
	Name   string
	By     string // who answers for it
	About  string
	Off    map[string]string // practices switched off, with the reason
	Signed bool              // its signature was checked and is good
	Files  folder.Memory
	rules  fs.FS
	corpus fs.FS
}

// mostPack is what a pack may hold at most, so that a hostile one gets an error and does the machine no harm.
var mostPack = folder.Bounds{Files: 2000, File: 512 << 10, Bytes: 8 << 20, Depth: 5}

// How long a rule file of a pack may be, and all of them together, in bytes; the longest built-in one has 4,000, all of them 300,000.
const (
	mostRule  = 64 << 10
	mostRules = 1 << 20
)

// packFile says whether a file is one of a pack: its head, its signature and what lies below rules/, corpus/ and jobs/. Whatever else
// lies beside them is not looked at, and nor are the hidden files and copies that editors leave.
func packFile(name string) bool {
	base := path.Base(name)
	first, _, _ := strings.Cut(name, "/")
	switch {
	case name == "pack.yaml" || name == signaturesFile:
		return true
	case strings.HasPrefix(base, ".") || strings.HasSuffix(base, "~"):
		return false
	}
	return first == "rules" || first == "corpus" || first == "jobs"
}

// OpenPack reads a pack from its folder, within bounds. With a key it must carry a good signature.
func OpenPack(files fs.FS, key *Key) (*Pack, error) {
	read, err := folder.Read(files, packFile, mostPack)
	if err != nil {
		return nil, err
	}
	return newPack(read, key)
}

// UnpackPack reads a pack from a .tar.gz archive, within bounds. With a key it must carry a good signature.
func UnpackPack(r io.Reader, key *Key) (*Pack, error) {
	read, err := folder.Untar(r, packFile, mostPack)
	if err != nil {
		return nil, err
	}
	return newPack(read, key)
}

func newPack(files folder.Memory, key *Key) (*Pack, error) {
	text, ok := files["pack.yaml"]
	if !ok {
		return nil, fmt.Errorf("a pack is a folder with a pack.yaml (`hearsay pack new DIR` writes one), or such a folder in an archive (`hearsay pack archive DIR FILE.tar.gz`)")
	}
	p := &Pack{Files: files, Off: map[string]string{}}
	if key != nil {
		if err := key.Verify(files); err != nil {
			return nil, err
		}
		p.Signed = true
	}
	if err := checkFiles(files); err != nil {
		return nil, err
	}
	head, err := document.Read[any]("pack.yaml", text)
	if err != nil {
		return nil, err
	}
	for _, e := range head {
		if err := p.head(e); err != nil {
			return nil, err
		}
	}
	if p.Name == "" || p.By == "" {
		return nil, fmt.Errorf("pack.yaml: give the pack a name, and by whom it is: a line `name: …` and a line `by: …`")
	}
	if p.rules, err = fs.Sub(files, "rules"); err != nil {
		return nil, err
	}
	p.corpus, err = fs.Sub(files, "corpus")
	return p, err
}

const (
	longestName = 80  // letters of the name of a pack
	longestHead = 500 // letters of what else its head says
)

func (p *Pack) head(e document.Entry[any]) error {
	text, isText := e.Value.(string)
	switch {
	case isText && len(text) > longestHead || e.Name == "name" && len(text) > longestName:
		return fmt.Errorf("pack.yaml: line %d: %s is too long: a name has at most %d letters, the rest %d", e.Line, e.Name, longestName, longestHead)
	case e.Name == "name" && isText:
		p.Name = text
	case e.Name == "by" && isText:
		p.By = text
	case e.Name == "about" && isText:
		p.About = text
	case e.Name == "off":
		list, ok := e.Value.(map[string]any)
		if !ok {
			return fmt.Errorf("pack.yaml: line %d: off is a mapping of practices to the reason for each", e.Line)
		}
		for id, reason := range list {
			if text, ok := reason.(string); ok && text != "" {
				p.Off[id] = text
				continue
			}
			return fmt.Errorf("pack.yaml: line %d: say why %s is switched off", e.Line, id)
		}
	default:
		return fmt.Errorf("pack.yaml: line %d: %q does not belong here: the keys are name, by, about, off", e.Line, e.Name)
	}
	return nil
}

// packPlaces are the files that something reads.
var packPlaces = regexp.MustCompile(`^(pack\.yaml|\.signatures\.json|rules/(facts|sources|cautions)\.yaml|rules/limits/[a-z0-9_]+\.yaml|rules/[a-z][a-z0-9_]*/[a-z0-9_-]+\.rego` +
	`|jobs/[a-z][a-z0-9_]*/[a-z0-9_-]+\.yaml|corpus/(words|unsaid|synonyms)\.yaml|corpus/(es/)?[a-z][a-z0-9_-]*/[a-z0-9_-]+\.md)$`)

// checkFiles refuses a file that nothing would read, and text that is not what it seems.
func checkFiles(files folder.Memory) error {
	rules := 0
	for _, name := range files.Names() {
		text := files[name]
		if path.Ext(name) == ".rego" {
			rules += len(text)
		}
		if rules > mostRules {
			return fmt.Errorf("%s: the rules are too large: all rule files together may have %d KB", name, mostRules>>10)
		}
		if !packPlaces.MatchString(name) {
			return fmt.Errorf("%s: nothing reads this file: there are rules/facts.yaml, rules/sources.yaml, rules/cautions.yaml, rules/limits/<topic>.yaml, "+
				"rules/<topic>/<name>.rego, jobs/<topic>/<name>.yaml, corpus/words.yaml, corpus/unsaid.yaml, corpus/synonyms.yaml and corpus/<topic>/<name>.md, in small letters and digits", name)
		}
		if err := checkFile(name, text); err != nil {
			return err
		}
	}
	return nil
}

// Rules gives the built-in rules with those of packs laid over them.
func Rules(base fs.FS, packs ...*Pack) fs.FS {
	layers := make([]folder.Layer, len(packs))
	for i, p := range packs {
		layers[i] = folder.Layer{Owner: p.Name, Place: "rules/", Files: p.rules}
	}
	return folder.Over(base, layers...)
}

// Corpus gives the built-in corpus with those of packs laid over it.
func Corpus(base fs.FS, packs ...*Pack) fs.FS {
	layers := make([]folder.Layer, len(packs))
	for i, p := range packs {
		layers[i] = folder.Layer{Owner: p.Name, Place: "corpus/", Files: p.corpus}
	}
	return folder.Over(base, layers...)
}

// add adds the practices of a pack, in the place of those of the same id, and switches off what it switches off.
func (b *Book) add(p *Pack) error {
	texts, err := readAll(p.rules)
	if err != nil {
		return err
	}
	for name := range texts {
		if path.Dir(name) == "trade" {
			return fmt.Errorf("rules/%s: the shared conditions of trade/ cannot be changed by a pack: write the condition into the practice", name)
		}
	}
	modules, practices, err := parse(texts)
	if err == nil {
		err = checkForms(modules)
	}
	if err != nil {
		return fmt.Errorf("rules/%w", err)
	}
	for name, m := range modules {
		b.modules[name] = m
	}
	layTexts(b.texts, p.Name, texts)
	for _, one := range practices {
		if !document.Printable(strings.Join(append([]string{one.Title, one.Why, one.Do}, one.Numbers...), " ")) {
			return fmt.Errorf("%s: a character stands in its description that does not print: take it out", one.File)
		}
		one.Pack = p.Name
		b.practices = slices.DeleteFunc(b.practices, func(old *Practice) bool {
			one.Replaces = one.Replaces || old.ID == one.ID
			return old.ID == one.ID
		})
		b.practices = append(b.practices, one)
	}
	slices.SortFunc(b.practices, func(x, y *Practice) int { return strings.Compare(x.ID, y.ID) })
	return b.switchOff(p)
}

func (b *Book) switchOff(p *Pack) error {
	for id, reason := range p.Off {
		i := slices.IndexFunc(b.practices, func(x *Practice) bool { return x.ID == id })
		if i < 0 {
			var ids []string
			for _, one := range b.practices {
				ids = append(ids, one.ID)
			}
			return fmt.Errorf("pack.yaml: line %d: off names %s, which is no practice: did you mean %s? (`hearsay rules` lists them)", p.row("pack.yaml", id), id, Nearest(id, ids))
		}
		b.practices[i].Off = fmt.Sprintf("switched off by pack %s: %s", p.Name, reason)
	}
	return nil
}

// allowedBuiltins are the functions a rule may call: comparisons. No network, no environment, no clock, nothing that
// grows.
var allowedBuiltins = append(slices.Clone(comparing), "assign")

func allowed(more ...string) *ast.Capabilities {
	caps := ast.CapabilitiesForThisVersion()
	caps.Builtins = slices.DeleteFunc(slices.Clone(caps.Builtins), func(b *ast.Builtin) bool {
		return !slices.Contains(allowedBuiltins, b.Name) && !slices.Contains(more, b.Name)
	})
	caps.AllowNet = []string{}
	return caps
}

// Rules gives the files of the rulebook: its rules with those of its packs laid over them.
func (b *Book) Rules() fs.FS { return Rules(b.base, b.packs...) }

// Packs lists the packs laid over the rulebook, in their order.
func (b *Book) Packs() []*Pack { return b.packs }

// at gives an error about a practice with the line where it reads or names this.
func (p *Practice) at(problem, what string) error {
	row := 0
	ast.WalkTerms(p.module, func(t *ast.Term) bool {
		name := ""
		switch v := t.Value.(type) {
		case ast.Ref:
			name = strings.Join(refWords(v), ".")
		case ast.String:
			name = string(v)
		}
		if row == 0 && t.Location != nil && name != "" && (strings.TrimPrefix(strings.TrimPrefix(name, "input."), "data.") == what) {
			row = t.Location.Row
		}
		return false
	})
	if row == 0 {
		row = rowOf(p.text, what)
	}
	place := p.File
	if p.Pack != "" {
		place = "pack " + p.Pack + ": rules/" + place
	}
	return fmt.Errorf("%s:%d: %s", place, row, problem)
}

// near offers the fact whose path looks most like one that does not exist.
func (b *Book) near(path string) string {
	if n := b.Facts.Nearest(path); n != "" {
		return " (input." + n + "?)"
	}
	return ""
}
