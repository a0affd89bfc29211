package belief

import (
	_ "embed" // the model
	"encoding/binary"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"sync"

	"hearsay/internal/belief/linear"
	"hearsay/internal/belief/wording"
	"hearsay/internal/folder"
)

//go:embed model.bin
var embedded []byte

// Head is what a model file says before its weights.
type Head struct {
	Beliefs     []Learned           `json:"beliefs"`
	Concepts    map[string][]string `json:"concepts"`
	Unrelated   string              `json:"unrelated"` // fingerprint of the sentences that no belief covers
	Calibration Calibration         `json:"calibration"`
}

// Learned is a belief as it was when the model learned it.
type Learned struct {
	ID      string  `json:"id"`
	Belief  string  `json:"belief"`
	Verdict Verdict `json:"verdict"`
	Print   string  `json:"print"` // fingerprint of its front matter
}

// EncodeModel writes a model file.
func EncodeModel(h Head, weights []byte) ([]byte, error) {
	head, err := json.Marshal(h)
	if err != nil {
		return nil, err
	}
	out := binary.LittleEndian.AppendUint32(nil, uint32(len(head)))
	return append(append(out, head...), weights...), nil
}

func decodeModel(data []byte) (Head, *linear.Model, error) {
	var h Head
	if len(data) < 4 || int(binary.LittleEndian.Uint32(data)) > len(data)-4 {
		return h, nil, errors.New("the model is cut short; make it again with: go generate ./internal/belief")
	}
	n := int(binary.LittleEndian.Uint32(data))
	if err := json.Unmarshal(data[4:4+n], &h); err != nil {
		return h, nil, fmt.Errorf("the head of the model cannot be read: %w", err)
	}
	m, err := linear.Open(data[4+n:])
	if err == nil && m.Classes() != NewLayout(h.Beliefs).Classes() {
		err = fmt.Errorf("the model has %d classes for %d beliefs; make it again with: go generate ./internal/belief", m.Classes(), len(h.Beliefs))
	}
	return h, m, err
}

// Corpus is a corpus ready to answer claims. It is safe for use by several goroutines at once.
type Corpus struct {
	files    fs.FS
	prints   map[string]string // of every entry, by id
	revision string
	ids      []string
	matcher  *Matcher
	sayings  map[string]string // the beliefs in plain words that need no reading of their entries, by id

	apart   []string // the entries that the model never learned
	index   sync.Once
	told    *Sayings // of those
	noIndex error

	lock    sync.Mutex
	entries map[string]*Entry
}

// Read opens a corpus to be read and not matched: topic/name.md entries, synonyms.yaml and unrelated.yaml.
func Read(files fs.FS) (*Corpus, error) {
	prints, revision, err := list(files)
	if err != nil {
		return nil, err
	}
	if len(prints) == 0 {
		return nil, errors.New("the corpus has no entry: put at least one at topic/name.md")
	}
	return &Corpus{files: files, prints: prints, revision: revision, ids: slices.Sorted(maps.Keys(prints)), entries: map[string]*Entry{}}, nil
}

// Load opens a corpus to answer claims with, that of packs laid over it or none. Entries are read in full only when they are
// needed. Beliefs that the model never learned, such as those of packs, are found by their sentences, less surely. A belief that
// a pack replaces is found by what was learned too.
func Load(files fs.FS) (*Corpus, error) {
	c, err := Read(files)
	if err != nil {
		return nil, err
	}
	head, model, err := decodeModel(embedded)
	if err != nil {
		return nil, err
	}
	c.sayings = map[string]string{}
	for _, b := range head.Beliefs {
		if c.prints[b.ID] == b.Print {
			c.sayings[b.ID] = b.Belief
		}
	}
	for _, id := range c.ids {
		learned := slices.ContainsFunc(head.Beliefs, func(b Learned) bool { return b.ID == id })
		if !learned || folder.Owner(files, id+".md") != "" { // a pack's entry has sentences of its own
			c.apart = append(c.apart, id)
		}
	}
	words, err := laidSynonyms(files, head.Concepts)
	if err != nil {
		return nil, err
	}
	c.matcher = NewMatcher(NewLayout(head.Beliefs), model, wording.NewConcepts(words), head.Calibration)
	return c, nil
}

// Head describes the corpus as it stands, for a model to be learned from it.
func (c *Corpus) Head() (Head, error) {
	words, err := readSynonyms(c.files)
	if err != nil {
		return Head{}, err
	}
	h := Head{Concepts: words}
	for _, id := range c.ids {
		e, err := c.Entry(id)
		if err != nil {
			return Head{}, err
		}
		h.Beliefs = append(h.Beliefs, Learned{id, e.Belief, e.Verdict, c.prints[id]})
	}
	foreign, err := fs.ReadFile(c.files, unrelatedFile)
	if err == nil {
		h.Unrelated = fingerprint(foreign)
	} else if !errors.Is(err, fs.ErrNotExist) {
		return Head{}, err
	}
	return h, nil
}

// Files gives the folder that the corpus was opened on.
func (c *Corpus) Files() fs.FS { return c.files }

// Outdated lists built-in entries that have changed, in what matching is learned from, since the model was learned.
func (c *Corpus) Outdated() []string {
	var old []string
	for _, b := range c.matcher.beliefs {
		if print := c.prints[b.ID]; print != "" && print != b.Print && folder.Owner(c.files, b.ID+".md") == "" {
			old = append(old, b.ID)
		}
	}
	return old
}

// Revision names this state of the corpus: a hash over its entries, those of packs included.
func (c *Corpus) Revision() string { return c.revision }

// IDs lists the entries in alphabetical order.
func (c *Corpus) IDs() []string { return slices.Clone(c.ids) }

// Entry reads one entry.
func (c *Corpus) Entry(id string) (*Entry, error) {
	c.lock.Lock()
	defer c.lock.Unlock()
	if e := c.entries[id]; e != nil {
		return e, nil
	}
	if _, ok := c.prints[id]; !ok {
		return nil, fmt.Errorf("there is no belief %s", id)
	}
	file := id + ".md"
	text, err := fs.ReadFile(c.files, file)
	if err != nil {
		return nil, err
	}
	e, err := parse(file, id, text)
	if err != nil {
		return nil, err
	}
	e.Pack = folder.Owner(c.files, file)
	if e.Pack != "" {
		all, err := folder.Each(c.files, file)
		if err != nil {
			return nil, err
		}
		e.Replaces = len(all) > 1
	}
	c.entries[id] = e
	return e, nil
}

// match finds the beliefs nearest to a text, learned or not.
func (c *Corpus) match(text string) (Match, error) {
	k := c.matcher.settings
	m := c.matcher.Match(text).Without(func(id string) bool { return c.prints[id] == "" }, k)
	if len(c.apart) == 0 {
		return m, nil
	}
	c.index.Do(func() { c.told, c.noIndex = c.indexApart() })
	if c.noIndex != nil {
		return m, c.noIndex
	}
	ranked, err := c.told.Rank(text)
	if err != nil || len(ranked) == 0 {
		return m, err
	}
	e, err := c.Entry(ranked[0].Belief)
	if err != nil {
		return m, err
	}
	if other := m.Apart(e.ID, c.told.Likeness(text, e.ID, c.matcher), e.Verdict == Holds, k); other.Right > m.Right {
		return other, nil
	}
	return m, nil
}

// mostApart is how many sentences the beliefs of packs may have together: they are indexed each time a command answers claims.
const mostApart = 5000

func (c *Corpus) indexApart() (*Sayings, error) {
	var sentences []Sentence
	for _, id := range c.apart {
		e, err := c.Entry(id)
		if err != nil {
			return nil, err
		}
		sentences = append(append(sentences, Sentence{Text: e.Belief, Belief: id, Stance: Asserts}), e.sentences()...)
		if len(sentences) > mostApart {
			return nil, fmt.Errorf("the beliefs of packs are said in more than %d ways: leave out what is alike, and what nobody says", mostApart)
		}
	}
	return NewSayings(sentences, c.matcher.concepts)
}

// Embedded gives what the model that this package carries was learned from.
func Embedded() (Head, error) {
	h, _, err := decodeModel(embedded)
	return h, err
}

// saying gives a belief in plain words.
func (c *Corpus) saying(id string) (string, error) {
	if s, ok := c.sayings[id]; ok {
		return s, nil
	}
	e, err := c.Entry(id)
	if err != nil {
		return "", err
	}
	return e.Belief, nil
}
