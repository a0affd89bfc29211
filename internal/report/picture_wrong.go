package report

import (
	"slices"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// throughTime are the pictures of what goes on by the hour, with the figures that a finding may hang on.
var throughTime = map[string][]string{
	"slab":        {"lowest_surface", "lowest_with_cover", "lowest_with_needed_cover", "freeze_hour", "hours_to_500", "r_needed", "cover_hours_needed"},
	"evaporation": {"evaporation_worst", "best_start", "best_start_evaporation", "start_evaporation"},
}

// PicturesOfWrong draws what goes on by the hour where something is wrong with it.
func (r *Review) PicturesOfWrong(b *rulebook.Book, j *job.Job) []Picture {
	p := &pictures{book: b, job: j, sheet: b.Figures.Sheet(j), system: r.System}
	var list []Picture
	for _, draw := range []struct {
		name string
		draw func() Picture
	}{{"slab", p.slab}, {"evaporation", p.evaporation}} {
		if !r.hangsOn(throughTime[draw.name]) {
			continue
		}
		if one := draw.draw(); one.SVG != "" {
			list = append(list, one)
		}
	}
	return list
}

// hangsOn says whether a number of something wrong is one of these figures.
func (r *Review) hangsOn(figures []string) bool {
	return slices.ContainsFunc(r.With(rulebook.Wrong), func(f Finding) bool {
		return slices.ContainsFunc(f.Numbers, func(n Number) bool { return slices.Contains(figures, n.Figure) })
	})
}
