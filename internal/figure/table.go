package figure

import (
	"fmt"
	"math"
	"sort"
	"strconv"
)

// row is one line of a table of numbers: the key it is looked up by, and its value.
type row struct{ key, value float64 }

// rowsOf sorts a table by its keys, which must be numbers.
func rowsOf(table map[string]float64) ([]row, error) {
	rows := make([]row, 0, len(table))
	for k, v := range table {
		key, err := strconv.ParseFloat(k, 64)
		if err != nil {
			return nil, fmt.Errorf("the table has a row %q that is no number", k)
		}
		rows = append(rows, row{key, v})
	}
	if len(rows) == 0 {
		return nil, fmt.Errorf("the table is empty")
	}
	sort.Slice(rows, func(i, j int) bool { return rows[i].key < rows[j].key })
	return rows, nil
}

// along interpolates a table linearly. What the key is, and its unit, are said when the table does not reach so far.
func along(table map[string]float64, at float64, what, unit string) (float64, error) {
	rows, err := rowsOf(table)
	if err != nil {
		return 0, err
	}
	first, last := rows[0], rows[len(rows)-1]
	const slack = 1e-9
	if at < first.key-slack || at > last.key+slack {
		return 0, fmt.Errorf("the table reaches from %s to %s %s, and not to %s", Q(first.key, unit), Q(last.key, unit), what, Q(at, unit))
	}
	for i := 1; i < len(rows); i++ {
		if a, b := rows[i-1], rows[i]; at <= b.key {
			return a.value + (b.value-a.value)*(at-a.key)/(b.key-a.key), nil
		}
	}
	return last.value, nil
}

// turned swaps keys and values of a table.
func turned(table map[string]float64) (map[string]float64, error) {
	rows, err := rowsOf(table)
	if err != nil {
		return nil, err
	}
	back := map[string]float64{}
	for _, r := range rows {
		back[strconv.FormatFloat(r.value, 'g', -1, 64)] = r.key
	}
	return back, nil
}

// up rounds up to a multiple of step, a whole part of 1, and down rounds down to one; a hair's breadth off does not count.
func up(v, step float64) float64   { return math.Ceil(v/step-1e-9) / math.Round(1/step) }
func down(v, step float64) float64 { return math.Floor(v/step+1e-9) / math.Round(1/step) }
