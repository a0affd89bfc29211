package crew

import (
	_ "embed" // what beliefs cost
	"fmt"
	"maps"
	"slices"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/job"
)

//go:embed costs.yaml
var costText []byte

// Cost is what acting on a belief would cost on one job, by one figure.
type Cost struct {
	Belief  string   `json:"belief"`
	What    string   `json:"what"`
	Text    string   `json:"text"`
	Low     float64  `json:"low"` // $
	High    float64  `json:"high"`
	Working []string `json:"working"`
}

// Costs gives what each belief would cost on a job, as far as the job states the prices and the rest: by belief. The facts
// that would price more of them are missing.
func (t *Trainer) Costs(j *job.Job) (costs []Cost, missing []string, err error) {
	var priced map[string][]string
	if err := yaml.Unmarshal(costText, &priced); err != nil {
		return nil, nil, fmt.Errorf("costs.yaml: %w", err)
	}
	sheet := t.book.Figures.Sheet(j)
	lacking := map[string]bool{}
	for _, id := range slices.Sorted(maps.Keys(priced)) {
		if _, err := t.corpus.Entry(id); err != nil {
			return nil, nil, err
		}
		for _, name := range priced[id] {
			r := sheet.Result(name)
			if r.Figure == nil {
				return nil, nil, fmt.Errorf("costs.yaml: there is no figure %s", name)
			}
			if !r.Known {
				for _, fact := range sheet.Lacks(name) {
					lacking[fact] = true
				}
				continue
			}
			costs = append(costs, Cost{id, r.Figure.Title, t.printer.quantity(r.Best, r.Figure.Unit), r.Low, r.High, r.Working})
		}
	}
	return costs, slices.Sorted(maps.Keys(lacking)), nil
}
