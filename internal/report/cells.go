package report

import (
	"fmt"
	"sort"
	"strings"

	"hearsay/internal/quantity"
)

// Cell is one number of a limit with the condition it holds under; Key is empty for a limit that is a single number.
type Cell struct {
	Key   string
	Value string // with its unit
}

// Cells gives the numbers of a limit, those of a table each with its keys.
func (l Limit) Cells(system quantity.System) []Cell { return cellsOf(nil, l.Value, l.Unit, system) }

func cellsOf(keys []string, value any, unit string, system quantity.System) []Cell {
	switch v := value.(type) {
	case float64:
		return []Cell{{strings.Join(keys, ", "), quantity.Quantity{Value: v, Unit: unit}.Print(system)}}
	case map[string]any:
		names := make([]string, 0, len(v))
		for k := range v {
			names = append(names, k)
		}
		sort.Slice(names, func(i, j int) bool { return before(names[i], names[j]) })
		var list []Cell
		for _, k := range names {
			list = append(list, cellsOf(append(keys[:len(keys):len(keys)], k), v[k], unit, system)...)
		}
		return list
	}
	return []Cell{{strings.Join(keys, ", "), fmt.Sprint(value)}}
}

// before orders keys that are numbers by their size, and others as text.
func before(a, b string) bool {
	var x, y float64
	_, errA := fmt.Sscan(a, &x)
	_, errB := fmt.Sscan(b, &y)
	if errA == nil && errB == nil {
		return x < y
	}
	return a < b
}
