package main

import (
	"math"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/words"
)

type result struct {
	d   description
	got words.Reading
	job *job.Job
	log func(format string, args ...any)
}

// facts counts the stated facts that were read: a number by its kind of unit and its value within a hundredth, a word by
// the mapping below.
func (r *result) facts(d *job.Dictionary, t *totals) {
	j, problems := r.got.Job(d)
	for _, p := range problems {
		r.log("problem: %s", p)
	}
	r.job = j
	used := map[string]bool{}
	for _, f := range r.d.Facts {
		number, ok := f.Value.(float64)
		if !ok {
			r.text(f, t)
			continue
		}
		t.numbers.of++
		if path := r.match(f.What, number, f.Unit); path != "" {
			t.numbers.found++
			used[path] = true
		} else {
			r.log("missed: %s %v %s", f.What, f.Value, f.Unit)
		}
	}
	for _, s := range j.Stated {
		if s.From != "" || s.Taken || s.Fact.Kind != job.KindQuantity {
			continue
		}
		t.wrong.of++
		if !used[s.Fact.Path] && !r.stated(s) {
			t.wrong.found++
			r.log("not stated: %s %v from %q", s.Fact.Path, s.Value, s.Text)
		}
	}
	for _, u := range r.got.Unread {
		r.log("unread: %s", u.String())
	}
}

// match gives the fact that was read with the number, "" when there is none.
func (r *result) match(what string, value float64, unit string) string {
	for _, s := range r.job.Stated {
		switch v := s.Value.(type) {
		case float64:
			if s.Fact.Kind == job.KindTime && unit == "h" && near(v, value) {
				return s.Fact.Path
			}
			if s.Fact.Kind == job.KindQuantity && (same(v, s.Fact.Unit, value, unit) || r.inLoad(s, v, value, unit)) {
				return s.Fact.Path
			}
		case []float64:
			for _, x := range v {
				if same(x, s.Fact.Unit, value, unit) {
					return s.Fact.Path
				}
			}
		}
	}
	return ""
}

// inLoad says whether what the description tells for each yard is what was read for the whole load, or the other way round.
func (r *result) inLoad(s job.Stated, v, value float64, unit string) bool {
	yards, ok := r.job.Value("load.volume")
	if !ok {
		return false
	}
	if per, isPer := strings.CutSuffix(plain(unit), "/yd3"); isPer {
		return same(v, s.Fact.Unit, value*yards.(float64), per)
	}
	return strings.HasSuffix(s.Fact.Unit, "/yd3") && plain(unit) != "" && same(v*yards.(float64), strings.TrimSuffix(s.Fact.Unit, "/yd3"), value, unit)
}

// stated says whether a number that was read is among those that the description states, whatever it was read as.
func (r *result) stated(s job.Stated) bool {
	for _, f := range r.d.Facts {
		switch v := f.Value.(type) {
		case float64:
			if same(s.Value.(float64), s.Fact.Unit, v, f.Unit) || r.inLoad(s, s.Value.(float64), v, f.Unit) {
				return true
			}
		case string:
			if strings.ContainsAny(v, "0123456789") || v == "none" || v == "noon" {
				return true // a time, a range or a nought in words
			}
		}
	}
	return false
}

func same(a float64, unitA string, b float64, unitB string) bool {
	unitA, unitB = plain(unitA), plain(unitB)
	if unitA == unitB || unitB == "" && (unitA == "R" || unitA == "1") {
		return near(a, b)
	}
	if unitA == "in/ft" && unitB == "%" {
		unitB = "% slope"
	}
	if ua, ok := quantity.KindOf(unitA); ok {
		if ub, ok := quantity.KindOf(unitB); ok && ua == ub {
			q, err := quantity.Quantity{Value: b, Unit: unitB}.In(unitA)
			return err == nil && near(a, q.Value)
		}
		// a mass or a volume that holds for a yard of concrete may be written without it
		for _, per := range []string{"/yd3", "/m3"} {
			if q, err := (quantity.Quantity{Value: b, Unit: unitB + per}).In(unitA); err == nil && near(a, q.Value) {
				return true
			}
		}
	}
	return false
}

// plain turns the ways a unit is written in the file into those that package quantity knows.
func plain(unit string) string {
	if strings.HasPrefix(unit, "% ") && unit != "% slope" {
		return "%" // of something, or of some form of it
	}
	switch unit {
	case "-", "":
		return ""
	case "#":
		return "bar"
	case "1", "rev":
		return "1"
	}
	return unit
}

func near(a, b float64) bool { return math.Abs(a-b) <= 0.01*math.Max(math.Abs(a), math.Abs(b)) }

// inWords maps what a description calls a fact that is stated in words to the facts that hold it.
var inWords = map[string][]string{
	"ground state": {"ground.state", "ground.dampened", "ground.wet"}, "dowels": {"joints.transfer"}, "curing": {"cure.method"}, "floor covering": {"floor.covering"},
	"use": {"member.use"}, "heater": {"protection.heater"}, "water on ticket": {"water.on_ticket"}, "cylinders": {"water.cylinders", "strength.cylinder_place"},
	"place of initial curing": {"strength.cylinder_place"}, "retarder": {"order.retarder"}, "finish": {"finish.final"}, "rain": {"weather.rain"},
	"cover on site": {"finish.rain_cover"}, "fibres": {"steel.kind", "steel.fibres_for"}, "how slump is raised": {"order.slump_raised_with"},
	"sawcuts": {"steel.joints_left_out"}, "air": {"order.entrained_air"}, "deicer": {"exposure.salted", "exposure.first_winter_salt"},
	"first-winter deicer": {"exposure.first_winter_salt"}, "base": {"ground.support", "ground.soil", "ground.base_friction"}, "start": {"job.start"},
}

// text counts a fact stated in words, where the mapping knows it.
func (r *result) text(f fact, t *totals) {
	paths, ok := inWords[f.What]
	if !ok {
		return
	}
	t.texts.of++
	for _, p := range paths {
		if _, ok := r.job.Find(p); ok {
			t.texts.found++
			return
		}
	}
	r.log("missed: %s %v", f.What, f.Value)
}
