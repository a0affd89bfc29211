package rulebook

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"maps"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"

	"hearsay/internal/job"
)

// bundleRoots are the documents the bundle owns, so that other bundles may be loaded beside it.
var bundleRoots = []string{"limit", "practice", "trade"}

// WriteBundle writes the rules and limits as a standard bundle of Open Policy Agent, which any stock server loads: rules below
// practice and trade, limits below limit, and a manifest with its roots and the revision.
func (b *Book) WriteBundle(w io.Writer) error {
	roots := slices.Clone(bundleRoots)
	out := bundle.Bundle{
		Manifest: bundle.Manifest{Revision: b.Revision(), Roots: &roots},
		Data:     map[string]any{"limit": b.Limits.Data()},
	}
	out.Manifest.SetRegoVersion(ast.RegoV1)
	for _, name := range slices.Sorted(maps.Keys(b.modules)) {
		m := b.modules[name]
		out.Modules = append(out.Modules, bundle.ModuleFile{URL: "/" + name, Path: "/" + name, RelativePath: "/" + name, Raw: b.texts[name], Parsed: m})
	}
	return bundle.NewWriter(w).DisableFormat(true).Write(out)
}

// Revision names this state of the rulebook: a hash over its rules, limits and facts.
func (b *Book) Revision() string { return b.revision }

// revisionOf hashes files by name and content.
func revisionOf(files map[string][]byte) string {
	h := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintf(h, "%s %d\n", name, len(files[name]))
		h.Write(files[name])
	}
	return hex.EncodeToString(h.Sum(nil))[:12]
}

// Query is what a stock Open Policy Agent needs to judge a job with the bundle: the input for data.practice, and, for its
// compile API, the paths that are unknown.
type Query struct {
	Input    map[string]any `json:"input"`
	Unknowns []string       `json:"unknowns"`
	Query    string         `json:"query"`
}

// Query gives the input of a job as the rules read it, figures computed.
func (b *Book) Query(j *job.Job) *Query {
	c := &court{book: b, job: j, sheet: b.Figures.Sheet(j)}
	q := &Query{Input: c.gather(b.figuresRead), Query: "data.practice[topic][name].wrong[reason]"}
	unknown := map[string]bool{}
	for _, p := range b.practices {
		for _, u := range c.unknowns(p) {
			unknown[u.String()] = true
		}
	}
	q.Unknowns = keys(unknown)
	return q
}
