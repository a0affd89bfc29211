package rulebook

// Values of terms, and how they compare.

type kind int8

const (
	absent  kind = iota // undefined: what hangs on it does not hold
	unknown             // not stated, not computed: what hangs on it is left open
	number
	text
	flag
	other // a list or a table: not for comparing
)

type value struct {
	kind    kind
	number  float64
	text    string
	flag    bool
	bounded bool     // of what is unknown: it lies from low to high
	perhaps bool     // of what is unknown: it may turn out to be nothing at all
	left    []string // of a choice that is unknown: what it can be
	low     float64
	high    float64
}

func valueOf(v any) value {
	if f, ok := asFloat(v); ok {
		return value{kind: number, number: f}
	}
	switch v := v.(type) {
	case string:
		return value{kind: text, text: v}
	case bool:
		return value{kind: flag, flag: v}
	case nil:
		return value{}
	}
	return value{kind: other}
}

func compare(op string, x, y value) truth {
	switch {
	case x.kind == absent || y.kind == absent:
		return fails
	case x.kind == unknown && y.kind == text && (op == "equal" || op == "neq"):
		return x.is(op, y)
	case x.kind == unknown || y.kind == unknown:
		return x.against(op, y)
	case x.kind != y.kind || x.kind == other:
		return unsettled
	case op == "equal":
		return truthOf(x.same(y))
	case op == "neq":
		return truthOf(!x.same(y))
	case x.kind != number:
		return unsettled
	case op == "gt":
		return truthOf(x.number > y.number)
	case op == "gte":
		return truthOf(x.number >= y.number)
	case op == "lt":
		return truthOf(x.number < y.number)
	}
	return truthOf(x.number <= y.number)
}

func (v value) same(other value) bool {
	return v.kind == other.kind && v.number == other.number && v.text == other.text && v.flag == other.flag
}

// is compares a choice that is unknown with one value.
func (v value) is(op string, other value) truth {
	t := v.among([]value{other})
	if op == "equal" || t == unsettled {
		return t
	}
	if t == fails && !v.perhaps {
		return holds
	}
	if t == holds {
		return fails
	}
	return unsettled
}

// among says whether a choice that is unknown is one of some values.
func (v value) among(items []value) truth {
	if v.left == nil {
		return unsettled
	}
	var values []string
	for _, item := range items {
		values = append(values, item.text)
	}
	switch amongChoices(v.left, values) {
	case yes:
		if !v.perhaps {
			return holds
		}
	case no:
		return fails
	}
	return unsettled
}

// against compares what is not known but bounded: where the whole of its range lies on one side it is settled.
func (v value) against(op string, other value) truth {
	low, high, ok := v.bounds()
	least, most, ok2 := other.bounds()
	if !ok || !ok2 {
		return unsettled
	}
	t := [...]truth{open: unsettled, yes: holds, no: fails}[overlap(op, low, high, least, most)]
	if t == holds && (v.perhaps || other.perhaps) {
		return unsettled
	}
	return t
}

func (v value) bounds() (low, high float64, ok bool) {
	if v.kind == number {
		return v.number, v.number, true
	}
	return v.low, v.high, v.bounded
}
