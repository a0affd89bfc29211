package job

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"hearsay/internal/quantity"
)

// Job is what somebody states about one placement.
type Job struct {
	Title    string
	About    string
	Stated   []Stated // in the order they were written, what follows from them last
	Warnings []string
	Unread   []string // what was said, looks like a fact, and was not read
	NotKnown []string // facts that were asked for and that nobody could tell
	index    map[string]int
}

// Stated is one fact with the value it was given. Value is in the unit of the fact.
type Stated struct {
	Fact   *Fact
	Value  any
	Text   string // the words it was read from
	From   string // "" when stated; otherwise the fact it follows from
	Taken  bool   // nobody said it: it goes without saying
	Line   int    // 0 when it was not read from a file
	Column int
}

// New gives an empty job.
func New() *Job { return sized(0) }

// sized gives an empty job with room for so many facts.
func sized(facts int) *Job {
	return &Job{index: make(map[string]int, facts), Stated: make([]Stated, 0, facts)}
}

// Value gives the value of a fact and whether the job states it.
func (j *Job) Value(path string) (any, bool) {
	s, ok := j.Find(path)
	return s.Value, ok
}

// Find gives what was stated for a fact.
func (j *Job) Find(path string) (Stated, bool) {
	i, ok := j.index[path]
	if !ok {
		return Stated{}, false
	}
	return j.Stated[i], true
}

// State adds a fact. It fails when the value cannot be used or when the fact is stated already with another value.
func (j *Job) State(d *Dictionary, path string, written any) error {
	return j.state(d, Stated{Text: textOf(written)}, path, written)
}

// textOf writes a value as somebody would say it.
func textOf(written any) string {
	switch v := written.(type) {
	case string:
		return v
	case map[string]any:
		if text, err := quantityText(v); err == nil {
			return text
		}
	}
	return fmt.Sprint(written)
}

// StateFrom is State for a value read from words or from a place in a file, which s names.
func (j *Job) StateFrom(d *Dictionary, s Stated, path string, written any) error {
	return j.state(d, s, path, written)
}

func (j *Job) state(d *Dictionary, s Stated, path string, written any) error {
	f, ok := d.Fact(path)
	if !ok {
		return unknownFact(d, path)
	}
	if f.Kind == KindSize {
		return j.stateSize(d, f, s, written)
	}
	if old, ok := j.Find(path); ok && old.From == "" {
		return fmt.Errorf("%s is stated twice: %s and %s; keep one", path, old.Text, s.Text)
	}
	value, err := f.read(written)
	if err != nil {
		return err
	}
	s.Fact, s.Value = f, value
	j.put(s)
	if v, ok := value.(float64); ok && f.Usual != nil && !f.Usual.Contains(v) {
		j.Warnings = append(j.Warnings, fmt.Sprintf("%s %s is unusual (%s to %s is usual); it is taken as written",
			f.Name, s.Text, f.print(f.Usual.Low), f.print(f.Usual.High)))
	}
	return nil
}

func (j *Job) stateSize(d *Dictionary, f *Fact, s Stated, written any) error {
	sizes, err := quantity.Size(fmt.Sprint(written))
	if err != nil {
		return err
	}
	if len(sizes) > len(f.Gives) {
		return fmt.Errorf("%v has more than %d lengths", written, len(f.Gives))
	}
	for i, q := range sizes {
		if err := j.state(d, s, f.Gives[i], map[string]any{"value": q.Value, "unit": q.Unit}); err != nil {
			return err
		}
	}
	return nil
}

func (j *Job) put(s Stated) {
	if i, ok := j.index[s.Fact.Path]; ok {
		j.Stated[i] = s
		return
	}
	j.index[s.Fact.Path] = len(j.Stated)
	j.Stated = append(j.Stated, s)
}

// Drop takes a fact out, with everything that was only implied; call Follow again afterwards.
func (j *Job) Drop(path string) {
	j.keep(func(s Stated) bool { return s.Fact.Path != path })
}

// DropTaken takes out what only goes without saying, with everything that was only implied; call Follow again afterwards.
func (j *Job) DropTaken() {
	j.keep(func(s Stated) bool { return !s.Taken })
}

func (j *Job) keep(stays func(Stated) bool) {
	kept := j.Stated[:0:0]
	for _, s := range j.Stated {
		if s.From == "" && stays(s) {
			kept = append(kept, s)
		}
	}
	j.Stated, j.index = kept, map[string]int{}
	for i, s := range kept {
		j.index[s.Fact.Path] = i
	}
}

// Replace states a fact anew, whatever was stated before. Call Follow afterwards.
func (j *Job) Replace(d *Dictionary, path string, written any) error {
	j.Drop(path)
	return j.State(d, path, written)
}

// Clone gives a job that can be changed without changing this one.
func (j *Job) Clone() *Job {
	c := *j
	c.Stated = slices.Clone(j.Stated)
	c.Warnings = slices.Clone(j.Warnings)
	c.NotKnown = slices.Clone(j.NotKnown)
	c.index = make(map[string]int, len(j.index))
	for k, v := range j.index {
		c.index[k] = v
	}
	return &c
}

// Follow adds what follows from the stated facts (the dictionary's `implies`) until nothing new follows: what a stated value
// implies, and the one value of a fact that is left when every other would imply what is not so. It fails when two
// statements contradict each other.
func (j *Job) Follow(d *Dictionary) error {
	done := 0
	for {
		for ; done < len(j.Stated); done++ {
			s := j.Stated[done]
			for _, imp := range s.Fact.Implies {
				if !imp.holds(s.Value) {
					continue
				}
				if err := j.imply(s, imp); err != nil {
					return err
				}
			}
		}
		for _, f := range d.closed {
			if _, ok := j.Find(f.Path); !ok {
				if err := j.onlyOne(f); err != nil {
					return err
				}
			}
		}
		if done == len(j.Stated) {
			return j.apart()
		}
	}
}

// apart fails where two quantities lie so far apart that one of them cannot be so.
func (j *Job) apart() error {
	for _, s := range j.Stated {
		for _, a := range s.Fact.Apart {
			other, ok := j.Find(a.From)
			if !ok {
				continue
			}
			if d := s.Value.(float64) - other.Value.(float64); d < a.Low || d > a.High {
				return &Contradiction{One: other, Other: s}
			}
		}
	}
	return nil
}

// onlyOne states a fact when all but one of its values would imply what is not so. It fails when all of them would, unless
// the fact is one that need not have a value: where no joints are made, there is no way of making them.
func (j *Job) onlyOne(f *Fact) error {
	if slices.ContainsFunc(f.Implies, func(i Implication) bool { return i.Stated }) {
		return nil
	}
	var left []any
	var against []Stated
	for _, v := range f.values() {
		if other, ok := j.against(f, v); ok {
			against = append(against, other)
		} else {
			left = append(left, v)
		}
	}
	switch len(left) {
	case 0:
		return &Impossible{Fact: f, Against: distinct(against)}
	case 1:
		j.put(Stated{Fact: f, Value: left[0], Text: fmt.Sprint(left[0]), From: "the rest of what is stated"})
	}
	return nil
}

// distinct keeps each statement once.
func distinct(stated []Stated) []Stated {
	var kept []Stated
	for _, s := range stated {
		if !slices.ContainsFunc(kept, func(k Stated) bool { return k.Fact == s.Fact }) {
			kept = append(kept, s)
		}
	}
	return kept
}

// values lists what a flag or a choice can be.
func (f *Fact) values() []any {
	if f.Kind == KindFlag {
		return []any{true, false}
	}
	values := make([]any, len(f.Choices))
	for i, c := range f.Choices {
		values[i] = c.Value
	}
	return values
}

// against finds what is known to be otherwise than a value of a fact would imply.
func (j *Job) against(f *Fact, value any) (Stated, bool) {
	for _, imp := range f.Implies {
		if imp.holds(value) {
			if known, ok := j.Denies(imp); ok {
				return known, true
			}
		}
	}
	return Stated{}, false
}

// Denies finds what is known to be otherwise than an implication would say.
func (j *Job) Denies(i Implication) (Stated, bool) {
	for _, then := range i.Then {
		if known, ok := j.Find(then.Fact.Path); ok && known.Value != then.Value {
			return known, true
		}
	}
	return Stated{}, false
}

func (j *Job) imply(s Stated, i Implication) error {
	if other, denied := j.Denies(i); denied {
		return &Contradiction{One: s, Other: other}
	}
	for _, then := range i.Then {
		if _, ok := j.Find(then.Fact.Path); !ok {
			j.put(Stated{Fact: then.Fact, Value: then.Value, Text: then.Text, From: s.Fact.Path})
		}
	}
	return nil
}

func sortedKeys[T any](m map[string]T) []string { return slices.Sorted(maps.Keys(m)) }

// Contradiction says that two statements cannot both be so.
type Contradiction struct{ One, Other Stated }

func (c *Contradiction) Error() string {
	return fmt.Sprintf("%s and %s contradict each other: correct one of them", c.One.say(), c.Other.say())
}

// Impossible says that whatever a fact was, it would contradict one of these statements.
type Impossible struct {
	Fact    *Fact
	Against []Stated
}

func (i *Impossible) Error() string {
	texts := make([]string, len(i.Against))
	for k, s := range i.Against {
		texts[k] = s.say()
	}
	return fmt.Sprintf("nothing that the %s (%s) could be agrees with all of these, which contradict each other: %s; correct one of them",
		i.Fact.Name, i.Fact.Path, strings.Join(texts, ", "))
}

func (s Stated) say() string {
	text := fmt.Sprintf("%s (%s: %s)", s.Fact.Name, s.Fact.Path, s.Text)
	if s.From != "" {
		text += " which follows from " + s.From
	}
	return text
}

func (i Implication) holds(value any) bool {
	if i.Stated {
		return true
	}
	if n, ok := value.(float64); ok {
		if i.Above != nil {
			return n > *i.Above
		}
		if i.Below != nil {
			return n < *i.Below
		}
		return slices.Contains(i.Is, value)
	}
	return slices.ContainsFunc(i.Is, func(v any) bool { return strings.EqualFold(fmt.Sprint(v), fmt.Sprint(value)) })
}

func unknownFact(d *Dictionary, path string) error {
	if near := d.Nearest(path); near != "" {
		return fmt.Errorf("no fact is called %q: did you mean %s? (`hearsay facts` lists them)", path, near)
	}
	return fmt.Errorf("no fact is called %q (`hearsay facts` lists them)", path)
}

// Input gives the known facts as the rules read them: {group: {key: value}}.
func (j *Job) Input() map[string]any {
	input := map[string]any{}
	for _, s := range j.Stated {
		group, ok := input[s.Fact.Group].(map[string]any)
		if !ok {
			group = map[string]any{}
			input[s.Fact.Group] = group
		}
		group[s.Fact.Key] = s.Value
	}
	return input
}
