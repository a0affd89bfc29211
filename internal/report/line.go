package report

import (
	"bytes"
	"encoding/json"

	"hearsay/internal/limit"
	"hearsay/internal/rulebook"
)

// AppendLine appends a review as one line of JSON: what Review makes, with the keys in another order. What the rulebook says of a
// practice or a work is the same in every line, and is encoded once: of a line it is the greater part.
func (p *Reporter) AppendLine(to []byte, r *rulebook.Review) ([]byte, error) {
	around, err := json.Marshal(p.around(r))
	if err != nil {
		return to, err
	}
	open := []byte(`"findings":[`) // which no text holds: its quotes would be escaped
	before, after, _ := bytes.Cut(around, open)
	to = append(append(to, before...), open...)
	for i, j := range worstFirst(r.Judgements) {
		if i > 0 {
			to = append(to, ',')
		}
		if to, err = p.appendFinding(to, j); err != nil {
			return to, err
		}
	}
	return append(append(to, after...), '\n'), nil
}

// ofJob is what is said of one practice in one job alone.
type ofJob struct {
	Status   string         `json:"status"`
	Concerns bool           `json:"concerns"`
	Reasons  []string       `json:"reasons"`
	Numbers  []Number       `json:"numbers"`
	Open     []Open         `json:"open"`
	Asks     []string       `json:"asks"`
	Changed  []string       `json:"changed,omitempty"`
	Mend     map[string]any `json:"mend,omitempty"`
}

// ofPractice is what is said of a practice in every job.
type ofPractice struct {
	Practice string   `json:"practice"`
	Severity string   `json:"severity"`
	Stage    string   `json:"stage"`
	What     string   `json:"what"`
	Why      string   `json:"why"`
	Do       string   `json:"do"`
	Cautions []string `json:"cautions"`
	Act      bool     `json:"act,omitempty"`
}

// elsewhere names a practice that does not concern a job: all that is said of it is the same in every such job.
type elsewhere struct{ *rulebook.Practice }

func (p *Reporter) appendFinding(to []byte, j *rulebook.Judgement) ([]byte, error) {
	if j.Status == rulebook.NotHere && !j.Concerns {
		whole, err := p.encoded(elsewhere{j.Practice}, func() any { return p.finding(j) })
		return append(to, whole...), err
	}
	fixed, err := p.encoded(j.Practice, func() any {
		f := p.finding(&rulebook.Judgement{Practice: j.Practice})
		return ofPractice{f.Practice, f.Severity, f.Stage, f.What, f.Why, f.Do, f.Cautions, f.Act}
	})
	if err != nil {
		return to, err
	}
	sources, err := p.encoded(citedBy(j.Cites), func() any { return Sources(p.book.Limits, j.Cites) })
	if err != nil {
		return to, err
	}
	to = append(append(to, fixed[:len(fixed)-1]...), `,"sources":`...)
	to = append(to, sources...)
	f := p.job(j)
	dynamic, err := json.Marshal(ofJob{f.Status, f.Concerns, f.Reasons, f.Numbers, f.Open, f.Asks, f.Changed, f.Mend})
	if err != nil {
		return to, err
	}
	return append(append(to, ','), dynamic[1:]...), nil
}

// cited names a list of citations, which the rulebook keeps.
type cited struct{ first *limit.Cite }

func citedBy(cites []limit.Cite) cited {
	if len(cites) == 0 {
		return cited{}
	}
	return cited{&cites[0]}
}

// encoded encodes what is the same in every line, once.
func (p *Reporter) encoded(what any, make func() any) ([]byte, error) {
	if known, ok := p.shared.Load(what); ok {
		return known.([]byte), nil
	}
	text, err := json.Marshal(make())
	if err == nil {
		p.shared.Store(what, text)
	}
	return text, err
}
