package rulebook

import (
	"context"
	"fmt"
	"io/fs"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"golang.org/x/sync/errgroup"

	"hearsay/internal/document"
	"hearsay/internal/figure"
	"hearsay/internal/folder"
	"hearsay/internal/job"
	"hearsay/internal/limit"
)

// Book is a rulebook ready to judge jobs. It is safe for use by several goroutines at once.
type Book struct {
	Facts     *job.Dictionary
	Limits    *limit.Book
	Figures   *figure.Set
	base      fs.FS // the rules that the packs are laid over
	packs     []*Pack
	practices []*Practice
	byID      map[string]*Practice
	cautions  map[string]*Caution
	modules   map[string]*ast.Module
	texts     map[string][]byte // of every file read, by name
	revision  string

	figuresRead []string // by any practice
	cited       citations
	order       []OrderLine
	plain       map[string]*plain // by practice id: those that can be decided without the evaluator
	memo        memo

	hang     sync.Once
	compile  sync.Once
	failed   error
	compiler *ast.Compiler
	store    storage.Store

	detailsLock sync.Mutex
	details     map[string]rego.PreparedEvalQuery // by practice id: its numbers and mends
	singles     map[string]singleQueries
}

// singleQueries judge one practice alone.
type singleQueries struct{ wrong, here rego.PreparedPartialQuery }

// Load reads a rules folder: facts.yaml, sources.yaml, cautions.yaml, order.yaml, limits/, and the practices below the topic folders,
// and lays the packs over it in their order. It parses the rules and does not compile them: that happens at the first
// judgement, since most commands need none.
func Load(fsys fs.FS, packs ...*Pack) (*Book, error) { return load(fsys, packs, false) }

// load loads a rulebook. The rules of one from elsewhere are held to the form that those of packs are held to.
func load(fsys fs.FS, packs []*Pack, elsewhere bool) (*Book, error) {
	b := &Book{base: fsys, packs: packs, byID: map[string]*Practice{}, details: map[string]rego.PreparedEvalQuery{}, singles: map[string]singleQueries{}}
	var group errgroup.Group
	group.Go(func() (err error) { // the rules take as long as all the rest
		if b.texts, err = readAll(fsys); err == nil {
			b.modules, b.practices, err = parse(b.texts)
		}
		return err
	})
	err := b.loadKnowledge(Rules(fsys, packs...))
	if parsed := group.Wait(); err == nil {
		err = parsed
	}
	if err != nil {
		return nil, err
	}
	if elsewhere {
		if err := checkForms(b.modules); err != nil {
			return nil, err
		}
	}
	for _, p := range packs {
		if err := b.add(p); err != nil {
			return nil, fmt.Errorf("pack %s: %w", p.Name, err)
		}
	}
	b.revision = revisionOf(b.texts)
	return b, b.link()
}

// loadKnowledge reads the facts, limits and cautions, and makes the figures.
func (b *Book) loadKnowledge(fsys fs.FS) (err error) {
	if b.Facts, err = job.LoadDictionary(fsys); err != nil {
		return err
	}
	if b.Limits, err = limit.Load(fsys); err != nil {
		return err
	}
	if b.Figures, err = figure.New(b.Limits); err != nil {
		return err
	}
	if b.cautions, err = loadCautions(fsys, b.Limits); err != nil {
		return err
	}
	return b.loadOrder(fsys)
}

func loadCautions(fsys fs.FS, limits *limit.Book) (map[string]*Caution, error) {
	files, err := folder.Each(fsys, "cautions.yaml")
	if err != nil {
		return nil, err
	}
	cautions := map[string]*Caution{}
	for _, f := range files {
		entries, err := document.Read[Caution](f.Name, f.Text)
		if err != nil {
			return nil, f.Wrap(err)
		}
		for _, e := range entries {
			id, c := e.Name, e.Value
			c.ID, c.Pack = id, f.Owner
			if cautions[id] != nil && f.Owner != "" {
				return nil, f.Wrap(fmt.Errorf("%s: line %d: the caution %s is built in: a pack adds cautions and takes none away", f.Name, e.Line, id))
			}
			cautions[id] = &c
			if err := limits.CheckCite(limit.Cite{Source: c.Source, Basis: c.Basis}); err != nil {
				return nil, f.Wrap(fmt.Errorf("%s: line %d: %s: %w", f.Name, e.Line, id, err))
			}
		}
	}
	return cautions, nil
}

// link finds what each practice reads and fails on a fact, figure, limit or caution that does not exist.
func (b *Book) link() error {
	helpers := map[string][]*ast.Rule{}
	for _, m := range b.modules {
		if words := refWords(m.Package.Path); len(words) == 2 && words[1] == "trade" {
			for _, r := range m.Rules {
				name := string(r.Head.Name)
				helpers[name] = append(helpers[name], r)
			}
		}
	}
	for _, p := range b.practices {
		b.byID[p.ID] = p
		p.findReads(helpers)
		for _, r := range p.Reads {
			if name, ok := cutFigure(r); ok {
				if _, ok := b.Figures.Find(name); !ok {
					return p.at(fmt.Sprintf("figure %s does not exist: `hearsay figure` lists them", name), r)
				}
			} else if _, ok := b.Facts.Fact(r); !ok {
				return p.at(fmt.Sprintf("reads input.%s, which is not in facts.yaml: add the fact, or mend its name%s", r, b.near(r)), r)
			}
		}
		for _, l := range p.Limits {
			if _, ok := b.Limits.Find(l); !ok {
				return p.at(fmt.Sprintf("reads data.%s, which is in no file of limits/: add the limit, or mend its name", l), l)
			}
		}
		for _, c := range p.Costs {
			if _, ok := b.Figures.Find(c); !ok {
				return p.at(fmt.Sprintf("names cost %q, which is not a figure", c), c)
			}
		}
		for _, c := range p.Cautions {
			if b.cautions[c] == nil {
				return p.at(fmt.Sprintf("names caution %q, which is not in cautions.yaml", c), c)
			}
		}
	}
	b.figuresRead, b.plain = figuresOf(b.practices...), b.plains()
	return nil
}

func cutFigure(path string) (string, bool) {
	if len(path) > 7 && path[:7] == "figure." {
		return path[7:], true
	}
	return "", false
}

// cutRange reads "figure.wcm", or one end of its range: "range.wcm.low".
func cutRange(path string) (name, end string, ok bool) {
	rest, isRange := strings.CutPrefix(path, "range.")
	if !isRange {
		name, ok = cutFigure(path)
		return name, "", ok
	}
	name, end, ok = strings.Cut(rest, ".")
	return name, end, ok && (end == "low" || end == "high")
}

// Practices lists all practices by id.
func (b *Book) Practices() []*Practice { return b.practices }

// Practice finds one by its id ("water/over-limit").
func (b *Book) Practice(id string) (*Practice, bool) {
	p, ok := b.byID[id]
	return p, ok
}

// Caution finds a caution by its id.
func (b *Book) Caution(id string) (*Caution, bool) {
	c, ok := b.cautions[id]
	return c, ok
}

// Compile compiles the rules now; judging does it when it is first needed. The error names file, line and what is wrong.
func (b *Book) Compile() error { return b.ready() }

// ready compiles the rules once. What is built in waits until something must be evaluated; the rules of a pack are held to what is
// allowed before anything is judged by them.
func (b *Book) ready() error {
	b.compile.Do(func() { b.failed = b.prepare() })
	return b.failed
}

func (b *Book) prepare() error {
	b.compiler = ast.NewCompiler().WithStrict(true).WithCapabilities(allowed())
	b.compiler.Compile(b.modules)
	if b.compiler.Failed() {
		err := unread(b.compiler.Errors)
		for _, p := range b.practices {
			if p.Pack != "" && strings.HasPrefix(err.Error(), p.File+":") {
				return fmt.Errorf("pack %s: rules/%w", p.Pack, err)
			}
		}
		return fmt.Errorf("the rulebook does not compile: %w", err)
	}
	b.store = inmem.NewFromObjectWithOpts(map[string]any{"limit": b.Limits.Data()}, inmem.OptRoundTripOnWrite(false))
	return nil
}

// hangings finds, once, what every practice hangs and rests on.
func (b *Book) hangings() {
	b.hang.Do(func() {
		for _, p := range b.practices {
			p.hangs, p.figures = b.hangsOn(p), figuresOf(p)
			p.below = b.Figures.Below(p.figures...)
			for _, path := range p.hangs {
				f, _ := b.Facts.Fact(path)
				p.hangsAt = append(p.hangsAt, f.Place)
			}
			b.restings(p)
		}
	})
}

func (b *Book) query(q string) *rego.Rego {
	return rego.New(rego.Query(q), rego.Compiler(b.compiler), rego.Store(b.store))
}

// single gives the prepared queries that judge one practice alone.
func (b *Book) single(ctx context.Context, p *Practice) (singleQueries, error) {
	b.detailsLock.Lock()
	defer b.detailsLock.Unlock()
	if q, ok := b.singles[p.ID]; ok {
		return q, nil
	}
	if err := b.ready(); err != nil {
		return singleQueries{}, err
	}
	var q singleQueries
	var err error
	rule := fmt.Sprintf("data.practice[%q][%q]", p.Topic, p.ID[len(p.Topic)+1:])
	if q.wrong, err = b.query(rule + ".wrong[reason]").PrepareForPartial(ctx); err != nil {
		return q, err
	}
	if q.here, err = b.query(rule + ".here = true").PrepareForPartial(ctx); err != nil {
		return q, err
	}
	b.singles[p.ID] = q
	return q, nil
}

// detail gives the prepared query for the numbers and mends of one practice.
func (b *Book) detail(ctx context.Context, p *Practice) (rego.PreparedEvalQuery, error) {
	b.detailsLock.Lock()
	defer b.detailsLock.Unlock()
	if q, ok := b.details[p.ID]; ok {
		return q, nil
	}
	if err := b.ready(); err != nil {
		return rego.PreparedEvalQuery{}, err
	}
	q, err := b.query(fmt.Sprintf("rule := data.practice[%q][%q]", p.Topic, p.ID[len(p.Topic)+1:])).PrepareForEval(ctx)
	if err == nil {
		b.details[p.ID] = q
	}
	return q, err
}

// Warm compiles the rules and prepares every query, which the first judgements would otherwise wait for.
func (b *Book) Warm(ctx context.Context) error {
	if err := b.ready(); err != nil {
		return err
	}
	for _, p := range b.practices {
		if _, err := b.single(ctx, p); err != nil {
			return err
		}
		if _, err := b.detail(ctx, p); err != nil {
			return err
		}
	}
	_, err := b.Judge(ctx, job.New())
	return err
}

// ReadersOf lists the practices that read a fact, themselves or through a figure.
func (b *Book) ReadersOf(fact string) []string {
	readers := []string{}
	for _, p := range b.practices {
		for _, r := range p.Reads {
			name, isFigure := cutFigure(r)
			if r == fact || isFigure && contains(b.Figures.Needs(name), fact) {
				readers = append(readers, p.ID)
				break
			}
		}
	}
	return readers
}
