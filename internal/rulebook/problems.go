package rulebook

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/agnivade/levenshtein"
	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/job"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
)

// Problems says what stands in a pack and would not do what its author takes it to do: what nothing reads, names nothing, or
// cannot be read as the quantity that it is meant to be. None of it keeps the rulebook from judging.
func (b *Book) Problems(p *Pack) []error {
	var all []error
	add := func(file string, row int, format string, args ...any) {
		all = append(all, fmt.Errorf("pack %s: rules/%s:%d: %s", p.Name, file, row, fmt.Sprintf(format, args...)))
	}
	read := map[string]bool{}
	for _, one := range b.practices {
		for _, path := range one.Limits {
			read[path] = true
		}
	}
	for _, f := range b.Facts.Facts() {
		if f.Pack == p.Name {
			factProblems(f, func(format string, args ...any) {
				add("facts.yaml", p.row("rules/facts.yaml", f.Key), "fact %s: %s", f.Path, fmt.Sprintf(format, args...))
			})
		}
	}
	for _, l := range b.Limits.Limits() {
		if l.Pack != p.Name {
			continue
		}
		file := "limits/" + l.Topic + ".yaml"
		row := p.row("rules/"+file, l.Name)
		if l.Was == nil && !read[l.Path()] {
			add(file, row, "limit %s: nothing reads it: a rule reads it as data.%s, and one that changes a built-in number has its name%s", l.Name, l.Path(), b.nearLimit(l))
		}
		if l.Was != nil {
			for _, key := range b.strayKeys(l.Was.Value, l.Value) {
				add(file, row, "limit %s: nothing looks %q up in it: the built-in table has %s", l.Name, key, strings.Join(keysOf(l.Was.Value), ", "))
			}
		}
	}
	for id, c := range b.cautions {
		if c.Pack == p.Name && c.Text == "" {
			add("cautions.yaml", p.row("rules/cautions.yaml", id), "caution %s: says nothing: give its text", id)
		}
	}
	for _, one := range b.practices {
		if one.Pack == p.Name {
			b.practiceProblems(one, func(row int, format string, args ...any) { add(one.File, row, format, args...) })
		}
	}
	return all
}

func factProblems(f *job.Fact, add func(format string, args ...any)) {
	if f.Kind != job.KindQuantity && f.Kind != job.KindList {
		return
	}
	switch {
	case f.Possible == nil:
		add("say what is possible, so that a slip of the pen is refused: possible: [low, high]")
	case f.Possible.Low > f.Possible.High || f.Usual != nil && (f.Usual.Low < f.Possible.Low || f.Usual.High > f.Possible.High || f.Usual.Low > f.Usual.High):
		add("what is usual must lie within what is possible, both from low to high")
	}
}

// nearLimit offers the limit of the same topic that a name is most like.
func (b *Book) nearLimit(l *limit.Limit) string {
	var names []string
	for _, other := range b.Limits.Limits() {
		if other.Topic == l.Topic && other.Pack != l.Pack {
			names = append(names, other.Name)
		}
	}
	if near := Nearest(l.Name, names); near != "" {
		return " (" + near + "?)"
	}
	return ""
}

// strayKeys lists the keys of a table that are no numbers and stand neither in the built-in one nor among the choices of any fact.
func (b *Book) strayKeys(was, now any) []string {
	before, _ := was.(map[string]any)
	after, _ := now.(map[string]any)
	var stray []string
	for _, key := range keysOf(now) {
		_, known := before[key]
		_, err := strconv.ParseFloat(key, 64)
		if !known && err != nil && !slices.ContainsFunc(b.Facts.Facts(), func(f *job.Fact) bool {
			return slices.ContainsFunc(f.Choices, func(c job.Choice) bool { return c.Value == key })
		}) {
			stray = append(stray, key)
			continue
		}
		stray = append(stray, b.strayKeys(before[key], after[key])...)
	}
	return stray
}

func keysOf(table any) []string {
	names := map[string]bool{}
	entries, _ := table.(map[string]any)
	for key := range entries {
		names[key] = true
	}
	return keys(names)
}

// Nearest gives the name most like the one asked for.
func Nearest(name string, names []string) string {
	best, near := len(name)+100, ""
	for _, n := range names {
		d := levenshtein.ComputeDistance(name, n)
		if strings.Contains(n, name) {
			d = 0
		}
		if d < best {
			best, near = d, n
		}
	}
	return near
}

var inBraces = regexp.MustCompile(`\{([^}]*)\}`)

func (b *Book) practiceProblems(p *Practice, add func(row int, format string, args ...any)) {
	names, wrong := map[string]bool{}, false
	for _, r := range p.module.Rules {
		ref := r.Head.Ref()
		document, _ := ref[0].Value.(ast.Var)
		name := ""
		if len(ref) > 1 {
			text, _ := ref[1].Value.(ast.String)
			name = string(text)
		}
		switch document {
		case "wrong":
			wrong = true
		case "number":
			names[name] = true
			if !slices.Contains(p.Numbers, name) {
				add(r.Location.Row, "the number %q is not shown: list it under numbers in the metadata", name)
			}
		case "mend":
			if _, ok := b.Facts.Fact(name); !ok {
				add(r.Location.Row, "mends %q, which is no fact: did you mean %s? (`hearsay facts` lists them)", name, b.Facts.Nearest(name))
			}
		}
	}
	if !wrong {
		add(1, "it says nowhere what is wrong: write `wrong contains \"why\" if { … }`")
	}
	row := func(what string) int { return rowOf(p.text, what) }
	for _, name := range p.Numbers {
		if !names[name] {
			add(row("numbers:"), "the metadata lists the number %q, and no rule gives it: write `number[%q] := {…}`", name, name)
		}
	}
	for _, text := range []string{p.Title, p.Why, p.Do} {
		for _, m := range inBraces.FindAllStringSubmatch(text, -1) {
			if _, err := quantity.Parse(m[1]); err != nil {
				add(row(m[0]), "%s is no quantity: %v", m[0], err)
			}
		}
	}
}

// row is the line of a file of the pack on which a key stands, 1 where none does.
func (p *Pack) row(file, key string) int { return rowOf(p.Files[file], key+":") }

// rowOf is the line of a text that begins with this, a comment sign and hyphens aside, or else that holds it; 1 where none does.
func rowOf(text []byte, what string) int {
	row, holds := 0, 0
	for line := range strings.Lines(string(text)) {
		row++
		if strings.HasPrefix(strings.TrimLeft(line, "#- \t"), what) {
			return row
		}
		if holds == 0 && strings.Contains(line, what) {
			holds = row
		}
	}
	return max(holds, 1)
}
