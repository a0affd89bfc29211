package reckon

import (
	"fmt"
	"io/fs"
	"iter"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/belief"
	"hearsay/internal/figure"
	"hearsay/internal/folder"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// Claimed is a number in a claim, held against the figure that it speaks of.
type Claimed struct {
	Text   string  // as it was said
	Value  float64 // in the figure's unit
	Figure *figure.Result
	Given  []string // facts taken from the entry, since the claim does not state them: "water.added: 1 gal"
}

// Off tells by what factor the number lies outside the figure's range: above 1 too high, below 1 too low, 1 within.
func (c Claimed) Off() float64 {
	switch {
	case c.Value > c.Figure.High && c.Figure.High > 0:
		return c.Value / c.Figure.High
	case c.Value < c.Figure.Low && c.Figure.Low > 0:
		return c.Value / c.Figure.Low
	}
	return 1
}

// near is how far from a number, in bytes, one of the words stands that say what it is.
const near = 48

var number = regexp.MustCompile(`(\d[\d,]*(?:\.\d+)?)\s*([a-z%]+[\d/]*[a-z\d]*)`)

// hold finds the numbers of a claim that speak of a figure and holds them against it.
func (r *Reckoner) hold(said string, one belief.Range, stated *job.Job) ([]Claimed, error) {
	f, ok := r.figures.Find(one.Figure)
	if !ok {
		return nil, fmt.Errorf("ranges: there is no figure %s; hearsay figure lists them", one.Figure)
	}
	j := stated.Clone()
	var given []string
	for _, path := range slices.Sorted(mapKeys(one.Given)) {
		if _, known := j.Value(path); known {
			continue
		}
		if err := j.State(r.facts, path, one.Given[path]); err != nil {
			return nil, fmt.Errorf("ranges: %w", err)
		}
		given = append(given, path+": "+one.Given[path])
	}
	result := r.figures.Sheet(j).Result(one.Figure)
	if !result.Known {
		return nil, nil
	}
	text := r.inDigits(said)
	var out []Claimed
	for _, at := range number.FindAllStringSubmatchIndex(text, -1) {
		written := strings.ReplaceAll(text[at[2]:at[3]], ",", "") + " " + text[at[4]:at[5]]
		q, err := quantity.Parse(written)
		if err != nil || !quantity.SameKind(q.Unit, f.Unit) || statedBy(stated, q) || !mentions(text, at[0], at[1], one.Words) {
			continue
		}
		in, err := q.In(f.Unit)
		if err != nil {
			continue
		}
		out = append(out, Claimed{text[at[0]:at[1]], in.Value, result, given})
	}
	return out, nil
}

// statedBy tells whether a number was read as a fact of its own: "3000 psi concrete" is no strength lost.
func statedBy(j *job.Job, q quantity.Quantity) bool {
	for path := range j.Input() {
		if s, ok := j.Find(path); ok {
			if v, ok := s.Value.(float64); ok && v == q.Value {
				return true
			}
		}
	}
	return false
}

func mentions(text string, from, to int, words []string) bool {
	around := text[max(0, from-near):min(len(text), to+near)]
	return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(around, w) })
}

// inDigits writes a text in lower case with its number words as digits: "a couple of hundred psi" as "200 psi".
func (r *Reckoner) inDigits(text string) string {
	var out []string
	var sum, part float64
	open := false
	flush := func() {
		if open {
			out = append(out, strconv.FormatFloat(sum+part, 'f', -1, 64))
		}
		sum, part, open = 0, 0, false
	}
	for _, w := range strings.Fields(strings.ReplaceAll(strings.ToLower(text), "-", " ")) {
		bare := strings.Trim(w, ".,;:!?")
		n, is := r.numbers[bare]
		switch {
		case is && (part == 0 || part >= 20 && n < 10):
			part, open = part+n, true
		case bare == "hundred":
			part, open = max(part, 1)*100, true
		case bare == "thousand":
			sum, part, open = sum+max(part, 1)*1000, 0, true
		case open && (bare == "of" || bare == "and"):
		default:
			flush()
			if is {
				part, open = n, true
			} else {
				out = append(out, w)
			}
		}
		if bare != w {
			flush()
		}
	}
	flush()
	return strings.Join(out, " ")
}

func numberWords(corpus fs.FS) (map[string]float64, error) {
	files, err := folder.Each(corpus, "words.yaml")
	if err != nil {
		return nil, err
	}
	numbers := map[string]float64{}
	for _, f := range files {
		var w struct {
			Numbers map[string]float64 `yaml:"numbers"`
		}
		if err := yaml.Unmarshal(f.Text, &w); err != nil {
			return nil, f.Wrap(fmt.Errorf("%s: %w", f.Name, err))
		}
		maps.Copy(numbers, w.Numbers)
	}
	return numbers, nil
}

func mapKeys(m map[string]string) iter.Seq[string] { return maps.Keys(m) }
