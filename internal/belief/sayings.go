package belief

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"

	"github.com/blevesearch/bleve/v2"
	"github.com/blevesearch/bleve/v2/analysis/analyzer/custom"
	"github.com/blevesearch/bleve/v2/analysis/tokenizer/whitespace"
	"github.com/blevesearch/bleve/v2/index/scorch"
	"github.com/blevesearch/bleve/v2/mapping"
	"github.com/blevesearch/bleve/v2/search/query"
	index "github.com/blevesearch/bleve_index_api"

	"hearsay/internal/belief/wording"
)

// Sayings is a search index over sentences. It finds the beliefs that the model never learned, such as those of a pack: it
// is built in a moment where the model takes minutes.
type Sayings struct {
	index     bleve.Index
	sentences []Sentence
	features  [][]wording.Feature
	turned    [][]wording.Feature // their words, those that are denied turned about
	concepts  *wording.Concepts
	own       map[uint32]bool // the features of the sentences
}

// field is one field of the index and how much a match in it counts.
type field struct {
	name  string
	boost float64
	text  func(wording.Fields) string
}

func indexFields() []field {
	return []field{
		{"words", 0.5, func(f wording.Fields) string { return f.Words }},
		{"stems", 1, func(f wording.Fields) string { return f.Stems }},
		{"pieces", 1, func(f wording.Fields) string { return f.Pieces }},
		{"concepts", 0.5, func(f wording.Fields) string { return f.Concepts }},
	}
}

const (
	hits  = 100 // sentences looked at for each claim
	power = 4   // of the scores before they are summed by belief: near sentences count most
)

// NewSayings indexes sentences: in memory, in one batch, nothing stored but what is searched.
func NewSayings(sentences []Sentence, concepts *wording.Concepts) (*Sayings, error) {
	m, err := sayingsMapping()
	if err != nil {
		return nil, err
	}
	ix, err := bleve.NewUsing("", m, scorch.Name, scorch.Name, nil)
	if err != nil {
		return nil, err
	}
	s := &Sayings{index: ix, sentences: sentences, concepts: concepts, features: make([][]wording.Feature, len(sentences)), turned: make([][]wording.Feature, len(sentences)), own: map[uint32]bool{}}
	batch := ix.NewBatch()
	for i, x := range sentences {
		s.features[i], s.turned[i] = wording.Features(x.Text, concepts), wording.Turned(x.Text)
		for _, f := range s.features[i] {
			s.own[f.Hash] = true
		}
		texts, document := wording.FieldsOf(x.Text, concepts), map[string]any{}
		for _, f := range indexFields() {
			document[f.name] = f.text(texts)
		}
		if err := batch.Index(strconv.Itoa(i), document); err != nil {
			return nil, err
		}
	}
	return s, ix.Batch(batch)
}

func sayingsMapping() (mapping.IndexMapping, error) {
	const plain = "plain"
	m := bleve.NewIndexMapping()
	m.ScoringModel = index.BM25Scoring
	if err := m.AddCustomAnalyzer(plain, map[string]any{"type": custom.Name, "tokenizer": whitespace.Name}); err != nil {
		return nil, err
	}
	doc := bleve.NewDocumentStaticMapping()
	for _, f := range indexFields() {
		text := bleve.NewTextFieldMapping()
		text.Analyzer, text.Store, text.IncludeTermVectors, text.IncludeInAll, text.DocValues = plain, false, false, false, false
		doc.AddFieldMappingsAt(f.name, text)
	}
	m.DefaultMapping = doc
	return m, nil
}

// found is a sentence that was found, by its place, with its score.
type found struct {
	at    int
	score float64
}

// search gives the sentences that share most with a text.
func (s *Sayings) search(text string) ([]found, error) {
	texts := wording.FieldsOf(text, s.concepts)
	var parts []query.Query
	for _, f := range indexFields() {
		value := f.text(texts)
		if value == "" {
			continue
		}
		q := bleve.NewMatchQuery(value)
		q.SetField(f.name)
		q.SetBoost(f.boost)
		parts = append(parts, q)
	}
	if len(parts) == 0 {
		return nil, nil
	}
	request := bleve.NewSearchRequestOptions(bleve.NewDisjunctionQuery(parts...), hits, 0, false)
	result, err := s.index.Search(request)
	if err != nil {
		return nil, fmt.Errorf("searching what people say: %w", err)
	}
	out := make([]found, 0, len(result.Hits))
	for _, hit := range result.Hits {
		at, err := strconv.Atoi(hit.ID)
		if err != nil {
			return nil, err
		}
		out = append(out, found{at, hit.Score})
	}
	return out, nil
}

// Rank gives the beliefs nearest to a text, best first: the scores of their sentences summed.
func (s *Sayings) Rank(text string) ([]Scored, error) {
	all, err := s.search(text)
	if err != nil {
		return nil, err
	}
	slices.SortFunc(all, func(a, b found) int { return cmp.Compare(a.at, b.at) }) // sums do not hang on the order of ties
	sums := map[string]float64{}
	for _, f := range all {
		if id := s.sentences[f.at].Belief; id != "" {
			sums[id] += math.Pow(f.score, power)
		}
	}
	out := make([]Scored, 0, len(sums))
	for _, id := range slices.Sorted(maps.Keys(sums)) {
		out = append(out, Scored{Belief: id, Score: math.Pow(sums[id], 1.0/power)})
	}
	slices.SortStableFunc(out, func(a, b Scored) int { return cmp.Compare(b.Score, a.Score) })
	return out, nil
}

// Likeness tells how a text bears on one belief, by the belief's own sentences.
type Likeness struct {
	Said, Denied float64 // how like it is to those that say the belief and to those that deny it, from 0 to 1: the mean of the three most like
	Turned       float64 // how much more its words agree with those of the first than of the second, where a word that only one of two denies counts against
	Wrongness    float64 // how much more it sounds as those that say it do than as those that deny it, by what wrong sentences sound like
	Usual        float64 // how wrong all of them sound, those that say it and those that deny it counted alike
	Negation     float64 // how much likelier those that say it are to hold a negation, or none, as the text does; as a logarithm
}

// Best is the greater of the two.
func (l Likeness) Best() float64 { return max(l.Said, l.Denied) }

// Likeness compares a text with the sentences of a belief. The weighing of features is the model's; those that it never met and
// the sentences have count as rare.
func (s *Sayings) Likeness(text, id string, m *Matcher) Likeness {
	features := wording.Features(text, s.concepts)
	v, turned := m.model.Wider(features, s.own), m.model.Wider(wording.Turned(text), s.own)
	said, denied := &side{}, &side{}
	for i, x := range s.sentences {
		if x.Belief != id {
			continue
		}
		to := denied
		if x.Stance == Asserts {
			to = said
		}
		to.likes = append(to.likes, v.Dot(m.model.Wider(s.features[i], s.own))/wording.Blocks)
		to.turned = append(to.turned, turned.Dot(m.model.Wider(s.turned[i], s.own)))
		to.wrong += m.wrong(s.features[i])
		if wording.Negates(x.Text) {
			to.negates++
		}
	}
	l := Likeness{Said: topMean(said.likes), Denied: topMean(denied.likes), Turned: topMean(said.turned) - topMean(denied.turned)}
	if len(said.likes) == 0 || len(denied.likes) == 0 {
		return l
	}
	a, b := said.wrong/said.count(), denied.wrong/denied.count()
	l.Usual = (a + b) / 2
	l.Wrongness = (m.wrong(features) - l.Usual) * (a - b)
	p, q := (said.negates+0.5)/(said.count()+1), (denied.negates+0.5)/(denied.count()+1)
	l.Negation = math.Log((1 - p) / (1 - q))
	if wording.Negates(text) {
		l.Negation = math.Log(p / q)
	}
	return l
}

// side sums up the sentences that say a belief, or those that deny it.
type side struct {
	likes   []float64
	turned  []float64
	wrong   float64 // sum of their scores of being wrong
	negates float64 // how many hold a negation
}

func (s *side) count() float64 { return float64(len(s.likes)) }

// topMean gives the mean of the three farthest from nothing, on either side of it.
func topMean(xs []float64) float64 {
	slices.SortFunc(xs, func(a, b float64) int { return cmp.Compare(math.Abs(b), math.Abs(a)) })
	xs = xs[:min(3, len(xs))]
	var sum float64
	for _, x := range xs {
		sum += x
	}
	return sum / float64(max(len(xs), 1))
}
