package rulebook

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/bundle"

	"hearsay/internal/document"
	"hearsay/internal/folder"
	"hearsay/internal/release"
)

// bundleRoots are the documents the bundle owns, so that other bundles may be loaded beside it.
var bundleRoots = []string{"limit", "practice", "trade"}

// A bundle holds, for any stock Open Policy Agent, the limits as data.json, the rules that are in force, and a manifest. For
// hearsay itself it holds the whole rulebook: rules/ as it is built in, and packs/ as they are laid over it, in their order. A
// rule that is not in force (replaced, switched off, or a test) carries a further ending that Open Policy Agent does not read.
const (
	notInForce   = ".off"
	manifestFile = ".manifest"
	dataFile     = "data.json"
)

// WriteBundle writes the rulebook as a standard bundle of Open Policy Agent, which any stock server loads: rules below practice
// and trade, limits below limit, and a manifest with its roots and the revision. With a key, which may be nil, it is signed.
func (b *Book) WriteBundle(w io.Writer, key *Key) error {
	files, err := b.bundled()
	if err != nil {
		return err
	}
	if key != nil {
		if files[signaturesFile], err = key.Sign(files); err != nil {
			return err
		}
	}
	return files.Tar(w)
}

func (b *Book) bundled() (folder.Memory, error) {
	files := folder.Memory{}
	base, err := readAll(b.base)
	if err != nil {
		return nil, err
	}
	inForce := map[string]string{} // file of a rule to where it lies in the bundle
	put := func(place, name string, text []byte) {
		files[place+name] = text
		if path.Ext(name) == ".rego" && !isTest(name) {
			inForce[strings.TrimPrefix(name, "rules/")] = place + name
		}
	}
	for name, text := range base {
		put("rules/", name, text)
	}
	for i, p := range b.packs {
		for name, text := range p.Files {
			if name != signaturesFile {
				put(fmt.Sprintf("packs/%02d/", i+1), name, text)
			}
		}
	}
	for _, p := range b.practices {
		if p.Off != "" {
			delete(inForce, p.File)
		}
	}
	stays := map[string]bool{}
	for _, place := range inForce {
		stays[place] = true
	}
	for _, name := range files.Names() {
		if path.Ext(name) == ".rego" && !stays[name] {
			files[name+notInForce] = files[name]
			delete(files, name)
		}
	}
	if files[dataFile], err = json.Marshal(map[string]any{"limit": b.Limits.Data()}); err != nil {
		return nil, err
	}
	files[manifestFile], err = json.Marshal(map[string]any{"revision": b.revision, "roots": bundleRoots, "rego_version": 1,
		"metadata": map[string]string{"version": release.Version()}})
	return files, err
}

// mostBundle is what a bundle from elsewhere may hold at most.
var mostBundle = folder.Bounds{Files: 5000, File: 1 << 20, Bytes: 32 << 20, Depth: 7}

// Bundle is a rulebook that was read from a bundle and not yet loaded.
type Bundle struct {
	Rules    folder.Memory
	Packs    []*Pack
	Revision string
}

// ReadBundle reads a bundle that WriteBundle wrote, within bounds. With a key it must carry a good signature.
func ReadBundle(r io.Reader, key *Key) (*Bundle, error) {
	files, err := folder.Untar(r, func(string) bool { return true }, mostBundle)
	if err != nil {
		return nil, err
	}
	if key != nil {
		if err := key.Verify(files); err != nil {
			return nil, err
		}
	}
	var manifest bundle.Manifest
	if err := json.Unmarshal(files[manifestFile], &manifest); err != nil || manifest.Revision == "" {
		return nil, fmt.Errorf("it has no manifest with a revision: write it with `hearsay bundle`")
	}
	b := &Bundle{Rules: folder.Memory{}, Revision: manifest.Revision}
	packs := map[string]folder.Memory{}
	for _, name := range files.Names() {
		text := files[name]
		plain := strings.TrimSuffix(name, notInForce)
		switch first, rest, _ := strings.Cut(plain, "/"); first {
		case "rules":
			b.Rules[rest] = text
			if err := checkFile(plain, text); err != nil {
				return nil, err
			}
		case "packs":
			number, file, _ := strings.Cut(rest, "/")
			if packs[number] == nil {
				packs[number] = folder.Memory{}
			}
			packs[number][file] = text
		}
	}
	for _, number := range slices.Sorted(maps.Keys(packs)) {
		p, err := newPack(packs[number], nil)
		if err != nil {
			return nil, fmt.Errorf("packs/%s: %w", number, err)
		}
		b.Packs = append(b.Packs, p)
	}
	return b, nil
}

// checkFile refuses text that is not what it seems.
func checkFile(name string, text []byte) error {
	if !document.Printable(string(text)) {
		return fmt.Errorf("%s: a character stands in it that steers a terminal or turns the line about: take it out", name)
	}
	switch path.Ext(name) {
	case ".yaml":
		return document.Plain(name, text)
	case ".rego":
		return checkText(name, text)
	case ".md":
		front, _, _ := bytes.Cut(bytes.TrimPrefix(text, []byte("---\n")), []byte("\n---\n"))
		return document.Plain(name, append([]byte("\n"), front...)) // so that its lines are those of the file
	}
	return nil
}

// Load loads the rulebook of a bundle, with further packs laid over it. Its rules come from elsewhere, so all of them are held to
// the form that those of packs are held to, and compiled.
func (b *Bundle) Load(more ...*Pack) (*Book, error) {
	book, err := load(b.Rules, append(slices.Clone(b.Packs), more...), true)
	if err != nil {
		return nil, err
	}
	if len(more) == 0 && book.revision != b.Revision {
		return nil, fmt.Errorf("its manifest says revision %s and its content is %s: write it again with `hearsay bundle`", b.Revision, book.revision)
	}
	return book, book.Compile()
}

// Revision names this state of the rulebook: a hash over its rules, limits and facts.
func (b *Book) Revision() string { return b.revision }

// Made says that something was made with this rulebook.
func (b *Book) Made() release.Made { return made(b.revision, b.packs) }

func made(revision string, packs []*Pack) release.Made {
	m := release.Made{Version: release.Version(), Rulebook: revision}
	for _, p := range packs {
		m.Packs = append(m.Packs, p.Name)
	}
	return m
}

// MadeOf says that something was made with a rulebook that was not loaded.
func MadeOf(fsys fs.FS, packs ...*Pack) (release.Made, error) {
	revision, err := RevisionOf(fsys, packs...)
	return made(revision, packs), err
}

// RevisionOf gives the revision of a rulebook without loading it.
func RevisionOf(fsys fs.FS, packs ...*Pack) (string, error) {
	texts, err := readAll(fsys)
	if err != nil {
		return "", err
	}
	for _, p := range packs {
		own, err := readAll(p.rules)
		if err != nil {
			return "", err
		}
		layTexts(texts, p.Name, own)
	}
	return revisionOf(texts), nil
}

// layTexts lays the files of a pack over those read before.
func layTexts(texts map[string][]byte, pack string, own map[string][]byte) {
	for name, text := range own {
		texts[pack+"/"+name] = text
		if path.Ext(name) == ".rego" {
			texts[name] = text
		}
	}
}

// revisionOf hashes files by name and content.
func revisionOf(files map[string][]byte) string {
	h := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintf(h, "%s %d\n", name, len(files[name]))
		h.Write(files[name])
	}
	return hex.EncodeToString(h.Sum(nil))[:12]
}
