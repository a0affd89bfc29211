package figure

import (
	"fmt"
	"math"
	"strconv"
)

// lookup reads several limits and keeps the first that fails, so that a sum of many limits can be written as one.
type lookup struct {
	c   *Calc
	err error
}

// number is Calc.Limit.
func (l *lookup) number(path string, keys ...string) float64 {
	v, err := l.c.Limit(path, keys...)
	if err != nil && l.err == nil {
		l.err = err
	}
	return v
}

// spread is a limit that is a table of least, usual and most.
func (l *lookup) spread(path string, keys ...string) Value {
	t, err := l.c.Table(path, keys...)
	if err != nil && l.err == nil {
		l.err = err
	}
	return Between(t["least"], t["usual"], t["most"])
}

// from finds the row of a table whose keys are numbers: the one with the largest key that is at most v.
func (l *lookup) from(path string, v float64) map[string]float64 {
	return l.row(path, v, math.Inf(-1), func(key, best float64) bool { return key <= v && key > best })
}

// below finds the row with the smallest key that v is below.
func (l *lookup) below(path string, v float64) map[string]float64 {
	return l.row(path, v, math.Inf(1), func(key, best float64) bool { return v < key && key < best })
}

func (l *lookup) row(path string, v, best float64, better func(key, best float64) bool) map[string]float64 {
	found := ""
	for _, k := range l.c.keys(path) {
		if n, err := strconv.ParseFloat(k, 64); err == nil && better(n, best) {
			found, best = k, n
		}
	}
	if found == "" {
		if l.err == nil {
			l.err = fmt.Errorf("the table %s has no row for %.4g", path, v)
		}
		return nil
	}
	t, err := l.c.Table(path, found)
	if err != nil && l.err == nil {
		l.err = err
	}
	return t
}
