package figure

import (
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"hearsay/internal/limit"
	"hearsay/internal/quantity"
)

// Calc is what a computation sees: the facts and figures its way names, the limits, and a place for its working. It
// panics on a fact or figure that the way did not name, since that would be a need nobody is asked for.
type Calc struct {
	sheet    *Sheet
	figure   *Figure
	way      *Way
	override map[string]any // values standing in for unknown facts
	working  []string
	assumed  []string
	cites    []limit.Cite
	courses  []Course
	failed   error // the first limit that Of did not find
}

// Num gives a fact of kind quantity, in the fact's unit.
func (c *Calc) Num(path string) float64 { return c.fact(path).(float64) }

// Text gives a fact of kind choice.
func (c *Calc) Text(path string) string { return c.fact(path).(string) }

// Flag gives a fact of kind flag.
func (c *Calc) Flag(path string) bool { return c.fact(path).(bool) }

// List gives a fact of kind list.
func (c *Calc) List(path string) []float64 { return c.fact(path).([]float64) }

// Series gives a fact of kind series.
func (c *Calc) Series(path string) []map[string]float64 { return c.fact(path).([]map[string]float64) }

func (c *Calc) fact(path string) any {
	if !c.names(path) {
		panic("figure reads " + path + " without naming it as a need")
	}
	if v, ok := c.override[path]; ok {
		return v
	}
	v, ok := c.sheet.facts.Value(path)
	if !ok {
		panic("figure reads " + path + ", which is not known")
	}
	return v
}

func (c *Calc) names(path string) bool {
	for _, n := range c.way.Needs {
		if n == path {
			return true
		}
	}
	for _, b := range c.way.Sharpens {
		if b.Fact == path {
			return true
		}
	}
	return slices.Contains(c.way.Assumes, path)
}

// NumOr gives a quantity or time that the way only assumes where it is not stated.
func (c *Calc) NumOr(path string, otherwise float64) float64 {
	if !c.Stated(path) {
		return otherwise
	}
	return c.Num(path)
}

// Stated says whether a fact that only sharpens the figure, or is assumed otherwise, is known. A way knows nothing of facts
// that it does not name.
func (c *Calc) Stated(path string) bool {
	if !c.names(path) {
		return false
	}
	_, ok := c.sheet.facts.Value(path)
	return ok
}

// Figure gives the value of another figure that the way needs; its working comes before what follows.
func (c *Calc) Figure(name string) Value {
	if !c.names("figure." + name) {
		panic("figure reads figure." + name + " without naming it as a need")
	}
	r := c.sheet.result(name, c.override)
	c.working = mergeText(c.working, r.Working)
	c.Cite(r.Cites...)
	c.assumed = append(c.assumed, r.Assumed...)
	if r.Problem != "" && c.failed == nil {
		c.failed = errors.New(r.Problem)
	}
	return r.Value
}

// Limit gives a limit's number; keys lead into its table. The limit is cited. It fails when there is no such entry.
func (c *Calc) Limit(path string, keys ...string) (float64, error) {
	l, ok := c.sheet.set.limits.Find("limit." + path)
	if !ok {
		return 0, fmt.Errorf("there is no limit %s", path)
	}
	v := l.Value
	for _, k := range keys {
		table, ok := v.(map[string]any)
		if !ok || table[k] == nil {
			return 0, fmt.Errorf("the %s is not given for %s", l.What, strings.Join(keys, ", "))
		}
		v = table[k]
	}
	n, ok := v.(float64)
	if !ok {
		return 0, fmt.Errorf("the %s needs a further condition", l.What)
	}
	c.Cite(l.Cite)
	return n, nil
}

// Of gives a limit's number as Limit does, for use inside a sum: where there is none it gives NaN, and the figure fails
// with the error that Limit would have given.
func (c *Calc) Of(path string, keys ...string) float64 {
	n, err := c.Limit(path, keys...)
	if err != nil {
		if c.failed == nil {
			c.failed = err
		}
		return math.NaN()
	}
	return n
}

// Table gives a limit that is a table of numbers, key to number. The limit is cited.
func (c *Calc) Table(path string, keys ...string) (map[string]float64, error) {
	l, ok := c.sheet.set.limits.Find("limit." + path)
	if !ok {
		return nil, fmt.Errorf("there is no limit %s", path)
	}
	v := l.Value
	for _, k := range keys {
		table, _ := v.(map[string]any)
		if v, ok = table[k]; !ok {
			return nil, fmt.Errorf("the %s is not given for %s", l.What, strings.Join(keys, ", "))
		}
	}
	cells, ok := v.(map[string]any)
	if !ok {
		return nil, fmt.Errorf("the %s is not a table", l.What)
	}
	c.Cite(l.Cite)
	numbers := map[string]float64{}
	for k, cell := range cells {
		if n, ok := cell.(float64); ok {
			numbers[k] = n
		}
	}
	return numbers, nil
}

// keys lists the first keys of a limit that is a table, sorted.
func (c *Calc) keys(path string) []string {
	l, ok := c.sheet.set.limits.Find("limit." + path)
	if !ok {
		return nil
	}
	table, _ := l.Value.(map[string]any)
	return slices.Sorted(maps.Keys(table))
}

// remember gives what was computed under this key before on the same sheet, and otherwise computes it: several figures, and
// one figure at several ends of what is unknown, can hang on one slow computation. The key must name all it depends on.
func (c *Calc) remember(key string, compute func() (any, error)) (any, error) {
	if r, ok := c.sheet.memory[key]; ok {
		return r.value, r.err
	}
	v, err := compute()
	c.sheet.memory[key] = memory{v, err}
	return v, err
}

// Step adds a line of working. Quantities are written in braces, {4 in}, so that they can be printed in either system;
// Q writes one.
func (c *Calc) Step(format string, args ...any) {
	if !c.sheet.terse {
		c.working = append(c.working, fmt.Sprintf(format, args...))
	}
}

// Assume says what was taken for granted.
func (c *Calc) Assume(format string, args ...any) {
	c.assumed = append(c.assumed, fmt.Sprintf(format, args...))
}

// Cite adds sources beside those of the figure and of the limits it reads.
func (c *Calc) Cite(cites ...limit.Cite) {
	for _, one := range cites {
		if !slices.Contains(c.figure.Cites, one) && !slices.Contains(c.cites, one) {
			c.cites = append(c.cites, one)
		}
	}
}

// Quoted is a quantity in a line of working. It is written out when the line is.
type Quoted struct {
	value float64
	unit  string
}

// Q quotes a quantity for a line of working.
func Q(v float64, unit string) Quoted { return Quoted{v, unit} }

func (q Quoted) String() string {
	if q.unit == "" {
		return quantity.Quantity{Value: q.value}.Print(quantity.US)
	}
	return fmt.Sprintf("{%.6g %s}", q.value, q.unit)
}
