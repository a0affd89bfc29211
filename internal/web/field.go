package web

import (
	"strings"

	"hearsay/internal/desk"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// field is where a fact is filled in.
type field struct {
	ID      string // of its place in the page
	Fact    *job.Fact
	Label   string
	Choices []job.Choice // to press, or to choose from where there are many
	Many    bool
	Units   []unit
	Value   string // as it was typed, or as it stands
	Unit    string // the unit chosen
	Input   string // the type of the input
	Series  bool   // it is filled in with a file, or the text of one
	Error   string // why what was typed was not taken
}

// unit is one unit to choose, with what is shown for it.
type unit struct{ Symbol, Shown string }

// mostButtons is how many choices are shown as buttons; more are shown as a list.
const mostButtons = 9

// newField makes an empty field for a fact.
func newField(f *job.Fact, system quantity.System) *field {
	x := &field{ID: elementID("set", f.Path), Fact: f, Label: f.Name, Input: "text"}
	switch f.Kind {
	case job.KindFlag:
		x.Choices = []job.Choice{{Value: "yes", Name: "Yes"}, {Value: "no", Name: "No"}}
	case job.KindChoice:
		x.Choices, x.Many = f.Choices, len(f.Choices) > mostButtons
	case job.KindDate:
		x.Input = "date"
	case job.KindTime:
		x.Input = "time"
	case job.KindSeries:
		x.Series = true
	case job.KindQuantity, job.KindList:
		x.Units = units(f.Unit, system)
	}
	return x
}

// units are the units a fact is commonly written in, that of the reader's system first.
func units(own string, system quantity.System) []unit {
	if own == "" || own == "1" {
		return nil
	}
	other := quantity.US
	if system == quantity.US {
		other = quantity.SI
	}
	var list []unit
	for _, s := range []quantity.System{system, other} {
		symbol := quantity.Quantity{Unit: own}.To(s).Unit
		if len(list) == 0 || list[0].Symbol != symbol {
			list = append(list, unit{symbol, quantity.Symbol(symbol)})
		}
	}
	return list
}

// filled gives the field with the value that is stated.
func filled(s job.Stated, system quantity.System) *field {
	x := newField(s.Fact, system)
	switch v := s.Value.(type) {
	case string:
		x.Value = v
	case bool:
		x.Value = map[bool]string{true: "yes", false: "no"}[v]
	case []map[string]float64: // one brings in another
	default:
		x.Value = desk.Spoken(s, system)
		if x.Input == "time" {
			x.Value = clock(v)
		} else if len(x.Units) > 0 && s.Fact.Kind == job.KindQuantity {
			x.Unit = x.Units[0].Symbol
			x.Value = bare(s, system)
		}
	}
	return x
}

// bare is the number of a quantity in the reader's unit, without the unit.
func bare(s job.Stated, system quantity.System) string {
	q := quantity.Quantity{Value: s.Value.(float64), Unit: s.Fact.Unit}.To(system)
	return strings.ReplaceAll(quantity.Quantity{Value: q.Value}.Print(system), ",", "")
}

// clock writes hours after midnight as an input of type time takes them.
func clock(v any) string {
	hours, _ := v.(float64)
	minutes := int(hours*60 + 0.5)
	return string([]byte{byte('0' + minutes/600), byte('0' + minutes/60%10), ':', byte('0' + minutes%60/10), byte('0' + minutes%10)})
}

// written puts a value and the unit chosen beside it together as a job states it. A unit that was typed with the value
// counts more than the one beside it; items of a list are parted by commas.
func written(f *job.Fact, value, unit string) any {
	value = strings.TrimSpace(value)
	if f.Kind == job.KindList {
		var items []any
		for _, item := range strings.Split(value, ",") {
			items = append(items, withUnit(f, strings.TrimSpace(item), unit))
		}
		return items
	}
	return withUnit(f, value, unit)
}

func withUnit(f *job.Fact, value, unit string) string {
	if unit == "" || f.Kind != job.KindQuantity && f.Kind != job.KindList {
		return value
	}
	if _, err := quantity.ParseAs(value, f.Unit); err == nil {
		return value
	}
	if q := value + " " + unit; parses(q, f.Unit) {
		return q
	}
	return value
}

func parses(text, unit string) bool {
	_, err := quantity.ParseAs(text, unit)
	return err == nil
}
