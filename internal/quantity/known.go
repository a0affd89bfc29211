package quantity

import (
	"strings"
	"sync"
)

// tables is what the lists of units are looked up through.
type tables struct {
	units []*unit
	exact map[string]*unit  // canonical symbols and aliases as written
	keys  map[string]*unit  // the same taken apart, see key
	atoms map[string]string // spelling of a word to the word in keys
	kinds map[Kind][]string // canonical symbols of a kind
	shown map[string]string // printed form of a canonical symbol
}

// table builds the tables at the first use.
var table = sync.OnceValue(func() *tables {
	t := &tables{
		exact: map[string]*unit{}, keys: map[string]*unit{}, atoms: map[string]string{},
		kinds: map[Kind][]string{}, shown: map[string]string{},
	}
	for _, a := range atoms {
		for s := range strings.FieldsSeq(a[1]) {
			t.atoms[s] = a[0]
		}
	}
	for _, list := range [][]unit{spaceUnits, massUnits, heatUnits, plainUnits} {
		for i := range list {
			u := &list[i]
			t.units = append(t.units, u)
			t.kinds[u.kind] = append(t.kinds[u.kind], u.symbol)
			t.shown[u.symbol] = shown(u)
			for _, s := range u.spellings() {
				t.exact[s] = u
				if k, ok := t.spell(s); ok {
					t.keys[string(k.bytes(nil))] = u
				}
			}
		}
	}
	return t
})

// spellings are the canonical symbol and the aliases of a unit.
func (u *unit) spellings() []string {
	if u.aliases == "" {
		return []string{u.symbol}
	}
	return append([]string{u.symbol}, strings.Split(u.aliases, "|")...)
}

// resolve finds the unit of any spelling; nil where there is none.
func resolve(s string) *unit {
	t := table()
	if u := t.exact[s]; u != nil {
		return u
	}
	s = strings.TrimSpace(s)
	if u := t.exact[s]; u != nil {
		return u
	}
	if len(s) > 64 {
		return nil
	}
	k, ok := t.spell(s)
	if !ok {
		return nil
	}
	var buf [96]byte
	return t.keys[string(k.bytes(buf[:0]))]
}

// mustKnow is resolve with an error for an unknown unit.
func mustKnow(s string) (*unit, error) {
	if u := resolve(s); u != nil {
		return u, nil
	}
	return nil, unknownUnit(s, s)
}

// Known resolves any spelling of a unit ("inches", "cubic yards", "yd³",
// "gallons per yard", "deg F") to its canonical symbol. The empty spelling is
// the plain ratio "". ok is false for a spelling that is not known.
func Known(symbol string) (canonical string, ok bool) {
	if u := resolve(symbol); u != nil {
		return u.symbol, true
	}
	return "", false
}

// KindOf tells what a unit, in any spelling, measures. ok is false for an
// unknown unit.
func KindOf(unit string) (Kind, bool) {
	if u := resolve(unit); u != nil {
		return u.kind, true
	}
	return "", false
}

// SameKind tells whether both units are known and measure the same kind of
// thing.
func SameKind(a, b string) bool {
	u, v := resolve(a), resolve(b)
	return u != nil && v != nil && u.kind == v.kind
}

// Units lists the canonical symbols of a kind, US customary ones first; nil
// for an unknown kind. The caller owns the list.
func Units(kind Kind) []string {
	return append([]string(nil), table().kinds[kind]...)
}
