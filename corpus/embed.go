// Package corpus carries what people say about concrete, and the answers, as text: an entry for each belief, the trade's
// words for the same thing, and sentences that no entry covers.
package corpus

import "embed"

// Files holds the corpus as it stands in this folder: topic/belief.md, words.yaml, unrelated.yaml, and in es the entries in
// Spanish.
//
//go:embed *.yaml */*.md es/*/*.md
var Files embed.FS
