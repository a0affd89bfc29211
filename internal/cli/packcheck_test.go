package cli

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// problemsOf says all that is wrong with the pack in a folder.
func problemsOf(dir string) error {
	p, err := openPack(dir, nil)
	if err != nil {
		return err
	}
	book, err := rulebook.Load(rules.Files, p)
	if err != nil {
		return err
	}
	_, err = checkCorpus(book, p)
	return errors.Join(append(book.Problems(p), err)...)
}

// TestWhatIsWrongInAPackIsSaidWithItsPlace: each file of a pack broken in turn, the error names the file, the line, what is wrong
// there and what to write instead.
func TestWhatIsWrongInAPackIsSaidWithItsPlace(t *testing.T) {
	const permit = "rules/own/no-permit.rego"
	for _, c := range []struct{ file, old, new, want string }{
		{"pack.yaml", "", "", ""},
		{"pack.yaml", "by: who", "\tby: who", "pack.yaml: line 2: this cannot be read as YAML (found a tab"},
		{"pack.yaml", "by: who answers for it", "off:\n  order/short-volum: x\nby: x", "pack.yaml: line 4: off names order/short-volum, which is no practice: did you mean order/short-volume?"},
		{"pack.yaml", "by: who answers for it\n", "", "a line `name: …` and a line `by: …`"},
		{"rules/facts.yaml", "kind: flag, name: a permit", "kind: flag, nme: a permit", `rules/facts.yaml: line 5: own: "nme" does not belong here`},
		{"rules/facts.yaml", "kind: flag, name: a permit", "kind: quantity, unit: inchs, possible: [0, 1], name: a permit", `rules/facts.yaml: line 5: fact own.permit: unit "inchs" is not known`},
		{"rules/facts.yaml", "kind: flag, name: a permit", "kind: quantity, unit: in, name: a permit", "rules/facts.yaml:5: fact own.permit: say what is possible"},
		{"rules/facts.yaml", "kind: flag, name: a permit", "kind: quantity, unit: in, usual: [0, 5], possible: [0, 1], name: a permit", "what is usual must lie within what is possible"},
		{"rules/facts.yaml", `ask: "Was`, `implies: [{is: yes, then: {}}], ask: "Was`, `rules/facts.yaml: line 5: own: permit: "yes" stands where a list, such as [yes], is wanted`},
		{"rules/limits/own.yaml", "value: 6", "value: 6 in", `rules/limits/own.yaml: line 3: limit apron_thickness: value "6 in" is no number`},
		{"rules/limits/own.yaml", "unit: in", "unit: inchs", `limit apron_thickness: unit "inchs" is not known`},
		{"rules/limits/own.yaml", "apron_thickness:", "apron_thicknes: {value: 1, what: x, source: own-spec, basis: published}\napron_thickness:", "rules/limits/own.yaml:3: limit apron_thicknes: nothing reads it"},
		{"rules/limits/water.yaml", "", "late_watr: {value: 2, unit: gal, what: x, source: own-spec, basis: published}\n", "rules/limits/water.yaml:1: limit late_watr: nothing reads it: a rule reads it as data.limit.water.late_watr, and one that changes a built-in number has its name (late_water?)"},
		{"rules/limits/delivery.yaml", "", "default_time_limit: {value: {2013 to 202: 60}, unit: min, what: x, source: own-spec, basis: published}\n", `rules/limits/delivery.yaml:1: limit default_time_limit: nothing looks "2013 to 202" up in it: the built-in table has `},
		{"rules/sources.yaml", ", by: who wrote it", "", "rules/sources.yaml: line 2: own-spec: a work needs its title and by whom it is"},
		{"rules/cautions.yaml", `text: "Close`, `text: "", where: "Close`, "rules/cautions.yaml"},
		{permit, "here if input", "here fi input", permit + ":11: var cannot be used for rule name: this cannot be read as Rego"},
		{permit, "stage: order", "stge: order", permit + ":5: its custom metadata has stge: order, which is not known there: the keys are stage,"},
		{permit, "severity: stop", "severity: bad", permit + `:6: severity "bad" is none of stop, fix, mind`},
		{permit, `practice.own["no-permit"]`, `practice.own["nopermit"]`, permit + `:9: its package must be practice.own["no-permit"]`},
		{permit, `mend["own.permit"]`, `mend["own.permt"]`, permit + `:18: mends "own.permt", which is no fact: did you mean own.permit?`},
		{permit, "input.own.permit ==", "input.own.permt ==", "pack own: " + permit + ":15: reads input.own.permt, which is not in facts.yaml"},
		{permit, "wrong contains", "wrang contains", "it says nowhere what is wrong: write `wrong contains"},
		{permit, "severity: stop", "severity: stop\n#   numbers: [fee]", permit + `:7: the metadata lists the number "fee", and no rule gives it`},
		{permit, "Work without", "Work {4 incs} without", permit + `:7: {4 incs} is no quantity`},
		{"corpus/synonyms.yaml", "[permit, county paper, the county slip]", "permit", `corpus/synonyms.yaml: line 2: permit: "permit" stands where a list, such as [permit], is wanted`},
		{"corpus/words.yaml", "facts:", "fact:", `corpus/words.yaml: line 3: "fact" does not belong here`},
		{"corpus/own/permit-is-paper.md", "verdict: myth", "verdict: false", `corpus/own/permit-is-paper.md: line 3: verdict "false" is not known; write myth, holds or depends`},
		{"corpus/own/permit-is-paper.md", "sources:", "surces:", `corpus/own/permit-is-paper.md: line 7: "surces" does not belong here`},
		{"corpus/own/permit-is-paper.md", "---\nbelief", "belief", "pack own: corpus/own/permit-is-paper.md: an entry begins with its front matter"},
		{"corpus/own/permit-is-paper.md", "  homeowner:", "  homeownr:", `line 10: voice "homeownr" is not known; the voices are homeowner, crew and office`},
		{"corpus/own/permit-is-paper.md", "{6 in}", "{6 inx}", `corpus/own/permit-is-paper.md:44: {6 inx} is no quantity`},
		{"corpus/own/permit-is-paper.md", "season: any", "season: winter", `corpus/own/permit-is-paper.md:6: season "winter" is none of any, cold and hot`},
	} {
		t.Run(c.file+" "+c.new, func(t *testing.T) {
			t.Parallel()
			dir := filepath.Join(t.TempDir(), "own")
			require.NoError(t, writeNewPack(dir, "own"))
			file := filepath.Join(dir, c.file)
			text, err := os.ReadFile(file)
			if c.old != "" || err == nil {
				require.NoError(t, err)
				require.Contains(t, string(text), c.old)
			}
			require.NoError(t, os.WriteFile(file, []byte(strings.Replace(string(text), c.old, c.new, 1)), 0o644))
			if c.want == "" {
				assert.NoError(t, problemsOf(dir))
			} else {
				assert.ErrorContains(t, problemsOf(dir), c.want)
			}
		})
	}
}
