package words

import (
	"fmt"
	"maps"
	"math"
	"strings"

	"hearsay/internal/quantity"
)

// lay adds what the words of a pack say about language: numbers, units and small words. How facts are stated is learned for
// each file by itself.
func (y *vocabularyYAML) lay(over *vocabularyYAML) error {
	if err := over.sensible(); err != nil {
		return err
	}
	for _, u := range over.Units {
		for _, unit := range u.Is {
			if _, ok := quantity.KindOf(unit); !ok {
				return fmt.Errorf("units: %v is said to be %q, which is no unit that is known here", u.Say, unit)
			}
		}
	}
	y.Units = append(y.Units[:len(y.Units):len(y.Units)], over.Units...)
	for _, pair := range []struct{ into, from *map[string]float64 }{{&y.Numbers, &over.Numbers}, {&y.Fractions, &over.Fractions}, {&y.Ordinals, &over.Ordinals}} {
		merge(pair.into, *pair.from)
	}
	merge(&y.Months, over.Months)
	merge(&y.Prefixes, over.Prefixes)
	merge(&y.Joined, over.Joined)
	merge(&y.Forms, over.Forms)
	merge(&y.Topics, over.Topics)
	y.Classes = maps.Clone(y.Classes)
	for name, list := range over.Classes {
		y.Classes[name] = append(y.Classes[name][:len(y.Classes[name]):len(y.Classes[name])], list...)
	}
	for _, pair := range []struct{ into, from *[]string }{{&y.Apart, &over.Apart}, {&y.Fillers, &over.Fillers}, {&y.Turns, &over.Turns}, {&y.Whole, &over.Whole},
		{&y.Countable, &over.Countable}, {&y.Labels, &over.Labels}, {&y.Counted, &over.Counted}, {&y.TestWords, &over.TestWords}, {&y.Lumber, &over.Lumber},
		{&y.Abbreviations, &over.Abbreviations}, {&y.Negators, &over.Negators}, {&y.NotNegators, &over.NotNegators}, {&y.Unsure, &over.Unsure}} {
		*pair.into = append((*pair.into)[:len(*pair.into):len(*pair.into)], *pair.from...)
	}
	return nil
}

// sensible refuses words that are none and numbers that are none.
func (y *vocabularyYAML) sensible() error {
	for name, list := range map[string][]string{"apart": y.Apart, "fillers": y.Fillers, "negators": y.Negators, "not_negators": y.NotNegators, "unsure": y.Unsure} {
		for _, w := range list {
			if strings.TrimSpace(w) == "" {
				return fmt.Errorf("%s: an empty word stands there: take it out", name)
			}
		}
	}
	for name, numbers := range map[string]map[string]float64{"numbers": y.Numbers, "fractions": y.Fractions, "ordinal_fractions": y.Ordinals} {
		for w, n := range numbers {
			if math.IsNaN(n) || math.Abs(n) > mostSpoken {
				return fmt.Errorf("%s: %s is said to be %v, which nobody says in one word", name, w, n)
			}
		}
	}
	for w, n := range y.Months {
		if n < 1 || n > 12 {
			return fmt.Errorf("months: %s is said to be %d: months go from 1 to 12", w, n)
		}
	}
	for sign, unit := range y.Prefixes {
		if _, ok := quantity.KindOf(unit); !ok {
			return fmt.Errorf("prefixes: %s is said to be %q, which is no unit that is known here", sign, unit)
		}
	}
	return nil
}

// mostSpoken is the greatest number that one word says.
const mostSpoken = 1e9

func merge[V any](into *map[string]V, from map[string]V) {
	if len(from) == 0 {
		return
	}
	all := maps.Clone(*into)
	if all == nil {
		all = map[string]V{}
	}
	maps.Copy(all, from)
	*into = all
}
