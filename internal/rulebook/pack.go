package rulebook

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/document"
	"hearsay/internal/job"
	"hearsay/internal/limit"
)

// Pack is somebody's own rules, limits, facts and beliefs, laid over the built-in ones: a folder with pack.yaml, and below
// rules/ and corpus/ the same shape as the built-in folders.
type Pack struct {
	Name  string
	By    string // who answers for it
	About string
	Off   map[string]string // practices switched off, with the reason
	Files fs.FS
	rules fs.FS
}

// What a pack may hold at most, so that a hostile one gets an error and never the machine.
const (
	mostPackFiles = 2000
	mostPackBytes = 8 << 20
)

// OpenPack reads the head of a pack and holds it to its size.
func OpenPack(files fs.FS) (*Pack, error) {
	text, err := fs.ReadFile(files, "pack.yaml")
	if err != nil {
		return nil, fmt.Errorf("a pack is a folder with a pack.yaml (`hearsay pack new DIR` writes one): %w", err)
	}
	head, err := document.Read[any]("pack.yaml", text)
	if err != nil {
		return nil, err
	}
	p := &Pack{Files: files, Off: map[string]string{}}
	for _, e := range head {
		if err := p.head(e); err != nil {
			return nil, err
		}
	}
	if p.Name == "" || p.By == "" {
		return nil, fmt.Errorf("pack.yaml: give the pack a name, and by whom it is")
	}
	if p.rules, err = fs.Sub(files, "rules"); err != nil {
		return nil, err
	}
	return p, p.checkSize()
}

func (p *Pack) head(e document.Entry[any]) error {
	text, isText := e.Value.(string)
	switch {
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

func (p *Pack) checkSize() error {
	files, bytes := 0, int64(0)
	return fs.WalkDir(p.Files, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		files, bytes = files+1, bytes+info.Size()
		if files > mostPackFiles || bytes > mostPackBytes {
			return fmt.Errorf("pack %s is too large: a pack holds at most %d files and %d MB", p.Name, mostPackFiles, mostPackBytes>>20)
		}
		return nil
	})
}

// lay lays its facts, works and limits over the built-in ones.
func (p *Pack) lay(facts *job.Dictionary, limits *limit.Book) error {
	if err := facts.Lay(p.rules); err != nil {
		return fmt.Errorf("pack %s: %w", p.Name, err)
	}
	if err := limits.Lay(p.rules, p.Name); err != nil {
		return fmt.Errorf("pack %s: %w", p.Name, err)
	}
	return nil
}

// add adds the practices of a pack, in the place of those of the same id, and switches off what it switches off.
func (b *Book) add(p *Pack) error {
	texts, err := readAll(p.rules)
	if err != nil {
		return err
	}
	for name := range texts {
		if path.Dir(name) == "trade" {
			return fmt.Errorf("%s: the shared conditions of trade/ cannot be changed by a pack: write the condition into the practice", name)
		}
	}
	modules, practices, err := parse(texts)
	if err != nil {
		return err
	}
	for name, m := range modules {
		b.modules[name] = m
	}
	for name, text := range texts {
		b.texts[p.Name+"/"+name] = text
		if path.Ext(name) == ".rego" {
			b.texts[name] = text
		}
	}
	for _, one := range practices {
		one.Pack = p.Name
		b.practices = slices.DeleteFunc(b.practices, func(old *Practice) bool { return old.ID == one.ID })
		b.practices = append(b.practices, one)
	}
	slices.SortFunc(b.practices, func(x, y *Practice) int { return strings.Compare(x.ID, y.ID) })
	return b.switchOff(p)
}

func (b *Book) switchOff(p *Pack) error {
	for id, reason := range p.Off {
		i := slices.IndexFunc(b.practices, func(x *Practice) bool { return x.ID == id })
		if i < 0 {
			return fmt.Errorf("pack.yaml: off names %s, which is no practice (`hearsay rules` lists them)", id)
		}
		b.practices[i].Off = fmt.Sprintf("switched off by pack %s: %s", p.Name, reason)
	}
	return nil
}

// changed says what packs changed in a practice: the rule itself, its being switched off, and the limits it reads.
func (b *Book) changed(p *Practice) []string {
	var list []string
	if p.Pack != "" {
		list = append(list, "rule of pack "+p.Pack)
	}
	if p.Off != "" {
		list = append(list, p.Off)
	}
	for _, path := range p.Limits {
		l, ok := b.Limits.Find(path)
		switch {
		case !ok || l.Pack == "":
		case l.Was == nil:
			list = append(list, fmt.Sprintf("%s: set by pack %s", l.What, l.Pack))
		default:
			list = append(list, fmt.Sprintf("%s: %v by pack %s, built in %v", l.What, l.Value, l.Pack, l.Was.Value))
		}
	}
	return list
}

// allowedBuiltins are the functions a rule may call: comparisons. No network, no environment, no clock, nothing that
// grows.
var allowedBuiltins = []string{"eq", "equal", "neq", "gt", "gte", "lt", "lte", "assign", "internal.member_2"}

func allowed() *ast.Capabilities {
	caps := ast.CapabilitiesForThisVersion()
	caps.Builtins = slices.DeleteFunc(slices.Clone(caps.Builtins), func(b *ast.Builtin) bool { return !slices.Contains(allowedBuiltins, b.Name) })
	caps.AllowNet = []string{}
	return caps
}
