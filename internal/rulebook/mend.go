package rulebook

import (
	"fmt"
	"sort"

	"hearsay/internal/job"
)

// Mended gives the job with the corrections of a finding put into it, values in the units of the facts. What followed
// from the facts that are replaced is followed anew.
func Mended(facts *job.Dictionary, j *job.Job, mend map[string]any) (*job.Job, error) {
	mended := j.Clone()
	paths := make([]string, 0, len(mend))
	for p := range mend {
		paths = append(paths, p)
	}
	sort.Strings(paths)
	for _, p := range paths {
		f, ok := facts.Fact(p)
		if !ok {
			return nil, fmt.Errorf("a correction names %s, which is not a fact", p)
		}
		written := inUnit(f, mend[p])
		if err := mended.Replace(facts, p, written); err != nil {
			return nil, fmt.Errorf("the correction %s: %w", p, err)
		}
	}
	return mended, mended.Follow(facts)
}

// inUnit writes the numbers of a correction with the unit of the fact.
func inUnit(f *job.Fact, value any) any {
	if n, ok := asFloat(value); ok && (f.Kind == job.KindQuantity || f.Kind == job.KindList) {
		return map[string]any{"value": n, "unit": f.Unit}
	}
	if list, ok := value.([]any); ok {
		items := make([]any, len(list))
		for i, item := range list {
			items[i] = inUnit(f, item)
		}
		return items
	}
	return value
}
