package job

import (
	"fmt"
	"math"
	"reflect"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/quantity"
)

// read turns what was written for a fact into the value the rules read: float64 (in the fact's unit), string, bool,
// []float64 or []map[string]float64. Text, plain numbers, booleans, lists and {value, unit} pairs are accepted.
func (f *Fact) read(written any) (any, error) {
	switch f.Kind {
	case KindQuantity:
		return f.readQuantity(written)
	case KindChoice:
		return f.readChoice(written)
	case KindFlag:
		return readFlag(written)
	case KindList:
		return f.readList(written)
	case KindSeries:
		return f.readSeries(written)
	case KindDate:
		return readDate(written)
	case KindTime:
		return readTime(written)
	}
	return nil, fmt.Errorf("cannot be written here")
}

// Read turns what was written for the fact into the value the rules read, and fails where it cannot be used.
func (f *Fact) Read(written any) (any, error) { return f.read(written) }

// Same says whether what was written is the value that the fact has already, within a hundredth.
func (f *Fact) Same(value, written any) bool {
	other, err := f.read(written)
	if err != nil {
		return false
	}
	a, ok1 := value.(float64)
	b, ok2 := other.(float64)
	if ok1 && ok2 {
		return math.Abs(a-b) <= 0.01*max(math.Abs(a), math.Abs(b))
	}
	return reflect.DeepEqual(value, other)
}

func (f *Fact) readQuantity(written any) (float64, error) {
	q, err := f.quantity(written)
	if err != nil {
		return 0, err
	}
	if f.Possible != nil && !f.Possible.Contains(q.Value) {
		return 0, fmt.Errorf("%s is not possible for the %s: it lies between %s and %s", q.Print(quantity.US), f.Name,
			f.print(f.Possible.Low), f.print(f.Possible.High))
	}
	return q.Value, nil
}

func (f *Fact) quantity(written any) (quantity.Quantity, error) {
	if pair, ok := written.(map[string]any); ok {
		value, isNumber := pair["value"].(float64)
		if unit, isText := pair["unit"].(string); isNumber && isText {
			return quantity.Of(value, unit, f.Unit)
		}
	}
	text, err := quantityText(written)
	if err != nil {
		return quantity.Quantity{}, err
	}
	return f.sum(text)
}

// sum reads a quantity, or several that are to be added, such as the covers laid one on another: "R-2 + R-3".
func (f *Fact) sum(text string) (quantity.Quantity, error) {
	parts := strings.Split(text, " + ")
	if len(parts) > 1 && f.Unit == "F" {
		return quantity.Quantity{}, fmt.Errorf("%s: temperatures do not add up; write one", text)
	}
	total := quantity.Quantity{Unit: f.Unit}
	for _, part := range parts {
		q, err := quantity.ParseAs(part, f.Unit)
		if err != nil {
			return q, err
		}
		total.Value += q.Value
		total.Unit = q.Unit
	}
	return total, nil
}

func (f *Fact) print(v float64) string {
	return quantity.Quantity{Value: v, Unit: f.Unit}.Print(quantity.US)
}

func quantityText(written any) (string, error) {
	switch v := written.(type) {
	case string:
		return v, nil
	case float64:
		return strconv.FormatFloat(v, 'g', -1, 64), nil
	case int, int64, uint64:
		return fmt.Sprint(v), nil
	case map[string]any:
		value, unit := v["value"], v["unit"]
		if value == nil {
			return "", fmt.Errorf("a quantity is written as text (\"4 in\") or as {value: 4, unit: in}")
		}
		number, err := quantityText(value)
		switch unit := unit.(type) {
		case nil:
			return number, err
		case string:
			return number + " " + unit, err
		}
		return number + " " + fmt.Sprint(unit), err
	}
	return "", fmt.Errorf("a quantity is written as text, for example \"4 in\"")
}

func (f *Fact) readChoice(written any) (string, error) {
	text := fmt.Sprint(written)
	if written == false { // YAML turns a bare `no` or `none` of some writers into false
		text = "no"
	}
	if c, ok := f.Choice(text); ok {
		return c.Value, nil
	}
	var values []string
	for _, c := range f.Choices {
		values = append(values, c.Value)
	}
	return "", fmt.Errorf("%q is not a choice for the %s: write one of %s", text, f.Name, strings.Join(values, ", "))
}

func readFlag(written any) (bool, error) {
	switch v := written.(type) {
	case bool:
		return v, nil
	case string:
		switch strings.ToLower(strings.TrimSpace(v)) {
		case "yes", "true", "y":
			return true, nil
		case "no", "false", "n":
			return false, nil
		}
	}
	return false, fmt.Errorf("%v is neither yes nor no", written)
}

func (f *Fact) readList(written any) ([]float64, error) {
	items, ok := written.([]any)
	if !ok {
		items = []any{written}
	}
	var list []float64
	for i, item := range items {
		v, err := f.readQuantity(item)
		if err != nil {
			return nil, fmt.Errorf("item %d: %w", i+1, err)
		}
		list = append(list, v)
	}
	if len(list) == 0 {
		return nil, fmt.Errorf("the list is empty: leave the fact out when it is not known")
	}
	return list, nil
}

// readSeries reads a list of rows, each with the hour after the start and a quantity per column.
func (f *Fact) readSeries(written any) ([]map[string]float64, error) {
	rows, ok := written.([]any)
	if !ok || len(rows) == 0 {
		return nil, fmt.Errorf("an hourly series is a list of rows, each {hour: 0, air: 40 F, wind: 5 mph}")
	}
	var series []map[string]float64
	for i, r := range rows {
		row, ok := r.(map[string]any)
		if !ok {
			return nil, fmt.Errorf("row %d is not {hour: …, air: …}", i+1)
		}
		out := map[string]float64{}
		for column, cell := range row {
			v, err := f.readCell(column, cell)
			if err != nil {
				return nil, fmt.Errorf("row %d, %s: %w", i+1, column, err)
			}
			out[column] = v
		}
		if _, ok := out["hour"]; !ok {
			out["hour"] = float64(i)
		}
		series = append(series, out)
	}
	return series, nil
}

func (f *Fact) readCell(column string, cell any) (float64, error) {
	text, err := quantityText(cell)
	if err != nil {
		return 0, err
	}
	if column == "hour" {
		return strconv.ParseFloat(strings.TrimSpace(text), 64)
	}
	unit, ok := f.Columns[column]
	if !ok {
		return 0, fmt.Errorf("is not a column of the %s", f.Name)
	}
	q, err := quantity.ParseAs(text, unit)
	return q.Value, err
}

func readDate(written any) (string, error) {
	text := strings.TrimSpace(fmt.Sprint(written))
	if t, ok := written.(time.Time); ok {
		text = t.Format(time.DateOnly)
	}
	t, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return "", fmt.Errorf("%q is not a day: write it as 2026-11-26", text)
	}
	return t.Format(time.DateOnly), nil
}

// readTime reads a time of day as hours after midnight.
func readTime(written any) (float64, error) {
	text := strings.ToLower(strings.TrimSpace(fmt.Sprint(written)))
	for _, layout := range []string{"15:04", "3:04 pm", "3:04pm", "3 pm", "3pm"} {
		if t, err := time.Parse(layout, text); err == nil {
			return float64(t.Hour()) + float64(t.Minute())/60, nil
		}
	}
	return 0, fmt.Errorf("%q is not a time of day: write it as 7:00 or 3:30 pm", text)
}

func plain(text string) string { return strings.ToLower(strings.Join(strings.Fields(text), " ")) }
