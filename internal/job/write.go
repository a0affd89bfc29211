package job

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"hearsay/internal/quantity"
)

// Write writes a job as the YAML that Read takes: what was stated, in the order of the dictionary, as it was written. A note
// stands beside the fact it is given for. What only follows from the stated facts is left out.
func Write(w io.Writer, d *Dictionary, j *Job, notes map[string]string) error {
	var out strings.Builder
	for _, head := range []struct{ key, text string }{{"title", j.Title}, {"about", j.About}} {
		if head.text != "" {
			fmt.Fprintf(&out, "%s: %s\n", head.key, strconv.Quote(head.text))
		}
	}
	for _, g := range d.Groups {
		wrote := false
		for _, f := range g.Facts {
			s, ok := j.Find(f.Path)
			if !ok || s.From != "" {
				continue
			}
			if !wrote {
				fmt.Fprintf(&out, "%s:\n", g.Name)
				wrote = true
			}
			fmt.Fprintf(&out, "  %s: %s", f.Key, Written(s))
			if note := notes[f.Path]; note != "" {
				fmt.Fprintf(&out, " # %s", strings.Join(strings.Fields(note), " "))
			}
			out.WriteByte('\n')
		}
	}
	if len(j.NotKnown) > 0 {
		fmt.Fprintf(&out, "not_known: [%s]\n", strings.Join(j.NotKnown, ", "))
	}
	_, err := io.WriteString(w, out.String())
	return err
}

// Written gives the value of a stated fact as a job file has it, in the unit of the fact.
func Written(s Stated) string {
	switch v := s.Value.(type) {
	case float64:
		if s.Fact.Kind == KindTime {
			minutes := int(v*60 + 0.5)
			return fmt.Sprintf("\"%d:%02d\"", minutes/60, minutes%60)
		}
		return writeNumber(v, s.Fact.Unit)
	case bool:
		if v {
			return "true"
		}
		return "false"
	case []float64:
		items := make([]string, len(v))
		for i, n := range v {
			items[i] = writeNumber(n, s.Fact.Unit)
		}
		return "[" + strings.Join(items, ", ") + "]"
	case []map[string]float64:
		return s.Fact.writeSeries(v)
	}
	return strconv.Quote(fmt.Sprint(s.Value))
}

// writeNumber keeps nine digits, so that what is read back is what was meant.
func writeNumber(v float64, unit string) string {
	number := strconv.FormatFloat(v, 'g', 9, 64)
	if unit == "" {
		return number
	}
	if quantity.SameKind(unit, "1") { // counts are written bare
		return number
	}
	return strconv.Quote(number + " " + unit)
}

func (f *Fact) writeSeries(rows []map[string]float64) string {
	var out strings.Builder
	for _, row := range rows {
		fmt.Fprintf(&out, "\n    - {hour: %g", row["hour"])
		for _, column := range sortedKeys(f.Columns) {
			if v, ok := row[column]; ok {
				fmt.Fprintf(&out, ", %s: %s", column, writeNumber(v, f.Columns[column]))
			}
		}
		out.WriteString("}")
	}
	return out.String()
}
