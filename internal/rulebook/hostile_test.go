package rulebook_test

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// soon is how long a hostile pack may take to be refused.
const soon = 3 * time.Second

// refused opens a pack that must be refused with this text, soon.
func refused(t *testing.T, open func() (*rulebook.Pack, error), wants ...string) {
	t.Helper()
	start := time.Now()
	p, err := open()
	if err == nil {
		var b *rulebook.Book
		if b, err = rulebook.Load(rules.Files, p); err == nil {
			err = b.Compile()
		}
	}
	require.Error(t, err)
	for _, want := range wants {
		assert.Contains(t, err.Error(), want)
	}
	assert.Less(t, len(err.Error()), 2000, "the error is as large as what it is about")
	assert.Less(t, time.Since(start), soon)
}

const permitFact = "county:\n  about: x\n  facts:\n    permit: {kind: flag, name: a permit was given, ask: \"?\"}\n"

// doubling writes rules each of which holds in twice as many ways as the one before, which partial evaluation would all write out.
func doubling(steps int) string {
	var b strings.Builder
	b.WriteString("\nw0 if input.county.permit == false\n")
	for i := 1; i <= steps; i++ {
		fmt.Fprintf(&b, "\nw%d if {\n\tw%d\n\tw%d\n}\n\nw%d if w%d\n", i, i-1, i-1, i, i-1)
	}
	fmt.Fprintf(&b, "\nwrong contains \"x\" if w%d\n", steps)
	return b.String()
}

// growing writes objects each of which holds the one before twice.
func growing(steps int) string {
	var b strings.Builder
	b.WriteString("\no0 := {\"a\": \"x\", \"b\": \"y\"}\n")
	for i := 1; i <= steps; i++ {
		fmt.Fprintf(&b, "\no%d := {\"a\": o%d, \"b\": o%d}\n", i, i-1, i-1)
	}
	return b.String()
}

func TestHostileRuleGetsAnErrorWithItsLine(t *testing.T) {
	for name, c := range map[string]struct{ body, want string }{
		"network":         {"wrong contains \"x\" if http.send({\"method\": \"get\", \"url\": \"http://localhost\"})\n", "http.send cannot be called: a rule only compares"},
		"environment":     {"wrong contains \"x\" if opa.runtime().env.HOME\n", "opa.runtime"},
		"clock":           {"wrong contains \"x\" if time.now_ns() > 0\n", "time.now_ns cannot be called"},
		"growth":          {"wrong contains \"x\" if count(numbers.range(0, 1)) > 0\n", "count cannot be called"},
		"recursion":       {"here if wrong[\"no permit was given\"]\n", "recursive"},
		"through limits":  {"wrong contains \"x\" if {\n\tdata.limit[a][b] == data.limit[c][d]\n\tdata.limit[e][f] == data.limit[g][h]\n}\n", "name the limit in full"},
		"through facts":   {"wrong contains \"x\" if input[a][b] == input[c][d]\n", "refer to facts by their full path"},
		"all of it":       {"wrong contains \"x\" if data == input\n", "is no path that a rule reads"},
		"some":            {"wrong contains \"x\" if {\n\tsome x in input.county.permit\n\tx == 1\n}\n", "no some and no every"},
		"every":           {"wrong contains \"x\" if every x in input.county.permit { x == 1 }\n", "no some and no every"},
		"comprehension":   {"wrong contains \"x\" if {x | x := input.county.permit} == {1}\n", "cannot stand here"},
		"with":            {"wrong contains \"x\" if here with input as {}\n", "no with"},
		"else":            {"y if input.county.permit == true\n\nelse := false\n", "no else"},
		"default":         {"default y := false\n", "no default"},
		"function":        {"f(x) := x\n", "no function"},
		"number":          {"wrong contains \"x\" if input.member.thickness < 4\n", "the number 4 has no source: put it into rules/limits/"},
		"many ways":       {doubling(30), "can hold in more than 500 ways"},
		"doubled objects": {growing(40), "which nothing in the file may refer to"},
		"named reason":    {"wrong contains input.member.use if here\n", "a reason is written in quotes"},
		"deep brackets":   {"wrong contains \"x\" if input.county.permit == " + strings.Repeat("[", 20000) + strings.Repeat("]", 20000) + "\n", "brackets are nested too deep"},
		"steering":        {"wrong contains \"\\u001b[2Jall is well\" if here\n", "a reason is written in quotes"},
		"long":            {strings.Repeat("# a line that says nothing\n", 4000), "is too large: a rule file may have 64 KB"},
		"not Rego":        {"wrong contains {{{\n", "this cannot be read as Rego"},
	} {
		t.Run(name, func(t *testing.T) {
			files := map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact, "rules/county/no-permit.rego": rule + "\n" + c.body}
			refused(t, func() (*rulebook.Pack, error) { return rulebook.OpenPack(inMemory(files), nil) }, c.want, "no-permit.rego")
		})
	}
}

// bomb is a YAML file that unfolds to two thousand million words.
func bomb() string {
	var b strings.Builder
	b.WriteString("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n")
	for i := 1; i < 10; i++ {
		fmt.Fprintf(&b, "a%d: &a%d [%s]\n", i, i, strings.TrimSuffix(strings.Repeat(fmt.Sprintf("*a%d, ", i-1), 10), ", "))
	}
	return b.String()
}

func TestHostileFilesGetAnError(t *testing.T) {
	many := map[string]string{"pack.yaml": head}
	for i := range 2100 {
		many[fmt.Sprintf("rules/county/r%d.rego", i)] = ""
	}
	much := map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact}
	for i := range 40 {
		much[fmt.Sprintf("rules/county/r%d.rego", i)] = strings.Repeat("x if input.county.permit == false\n", 1000)
	}
	titled := strings.Replace(rule, "# title: The driveway has no permit", "# title: \"\\e[2Jplain\"", 1)
	metadata := strings.Replace(rule, "# custom:\n", "# custom:\n#   numbers: &a [x, x]\n#   costs: *a\n", 1)
	for name, c := range map[string]struct {
		files map[string]string
		want  string
	}{
		"huge":             {map[string]string{"pack.yaml": head, "rules/facts.yaml": strings.Repeat("#", 600<<10)}, "rules/facts.yaml is too large: a file may have 512 KB"},
		"many":             {many, "holds more than 2000 files"},
		"steering name":    {map[string]string{"pack.yaml": "name: \"\\e[2Jplain\"\nby: me\n"}, "line 1: a character stands there that steers a terminal"},
		"turned about":     {map[string]string{"pack.yaml": head, "corpus/county/x.md": "---\nbelief: \u202eno\n---\n"}, "steers a terminal or turns the line about"},
		"aliases in entry": {map[string]string{"pack.yaml": head, "corpus/county/x.md": "---\nbelief: &a b\nverdict: *a\n---\n# Fact\n"}, "corpus/county/x.md: line 2: anchors and aliases"},
		"much Rego":        {much, "all rule files together may have 1024 KB"},
		"deep":             {map[string]string{"pack.yaml": head, "rules/a/b/c/d/e/f.rego": ""}, "lies too deep"},
		"aliases":          {map[string]string{"pack.yaml": head, "rules/facts.yaml": bomb()}, "rules/facts.yaml: line 1: anchors and aliases"},
		"aliases in head":  {map[string]string{"pack.yaml": "name: &x x\nby: *x\n"}, "pack.yaml: line 1: anchors and aliases"},
		"nested":           {map[string]string{"pack.yaml": head, "rules/facts.yaml": "a: " + strings.Repeat("[", 9000) + strings.Repeat("]", 9000)}, "nested too deep"},
		"nested further":   {map[string]string{"pack.yaml": head, "rules/facts.yaml": "a: " + strings.Repeat("[", 200000)}, "rules/facts.yaml: "},
		"unread":           {map[string]string{"pack.yaml": head, "rules/limit/water.yaml": ""}, "rules/limit/water.yaml: nothing reads this file"},
		"shared condition": {map[string]string{"pack.yaml": head, "rules/trade/mine.rego": "package trade\n"}, "trade/ cannot be changed by a pack"},
		"no number":        {map[string]string{"pack.yaml": head, "rules/limits/water.yaml": "gallon: {value: .nan, unit: lb/gal, what: x, source: trade, basis: memory}\n"}, "line 1: limit gallon: value NaN is no number"},
		"endless number":   {map[string]string{"pack.yaml": head, "rules/limits/water.yaml": "gallon: {value: .inf, unit: lb/gal, what: x, source: trade, basis: memory}\n"}, "is no number to compare with"},
		"table for number": {map[string]string{"pack.yaml": head, "rules/limits/water.yaml": "gallon: {value: {a: 1}, unit: lb/gal, what: x, source: trade, basis: memory}\n"}, "it must stay one number"},
		"other kind":       {map[string]string{"pack.yaml": head, "rules/facts.yaml": "order:\n  facts:\n    slump: {kind: flag, name: slump, ask: \"?\"}\n"}, "line 3: fact order.slump: it must stay a quantity"},
		"built-in caution": {map[string]string{"pack.yaml": head, "rules/cautions.yaml": "skin: {text: harmless, source: trade, basis: memory}\n"}, "takes none away"},
		"steering title":   {map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact, "rules/county/no-permit.rego": titled}, "in its description that does not print"},
		"metadata":         {map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact, "rules/county/no-permit.rego": metadata}, "no-permit.rego"},
	} {
		t.Run(name, func(t *testing.T) {
			refused(t, func() (*rulebook.Pack, error) { return rulebook.OpenPack(inMemory(c.files), nil) }, c.want)
		})
	}
}

// archive writes a .tar.gz of entries as they are given.
func archive(t *testing.T, entries ...*tar.Header) []byte {
	t.Helper()
	var out bytes.Buffer
	z := gzip.NewWriter(&out)
	w := tar.NewWriter(z)
	for _, h := range append([]*tar.Header{{Typeflag: tar.TypeReg, Name: "pack.yaml", Size: int64(len(head))}}, entries...) {
		require.NoError(t, w.WriteHeader(h))
		content := []byte(head)
		if h.Name != "pack.yaml" {
			content = bytes.Repeat([]byte("#"), int(h.Size))
		}
		_, err := w.Write(content)
		require.NoError(t, err)
	}
	require.NoError(t, w.Close())
	require.NoError(t, z.Close())
	return out.Bytes()
}

func TestHostileArchiveIsRefused(t *testing.T) {
	whole := archive(t)
	var zeros bytes.Buffer // 64 MB of nothing
	z := gzip.NewWriter(&zeros)
	_, err := io.CopyN(z, endless{}, 64<<20)
	require.NoError(t, err)
	require.NoError(t, z.Close())
	file := func(name string, size int64) *tar.Header {
		return &tar.Header{Typeflag: tar.TypeReg, Name: name, Size: size}
	}
	for name, c := range map[string]struct {
		archive []byte
		want    string
	}{
		"up":            {archive(t, file("rules/../../etc/passwd", 0)), "could lead out of it"},
		"up at once":    {archive(t, file("../pack.yaml", 0)), "could lead out of it"},
		"backslash":     {archive(t, file(`rules\..\..\x.yaml`, 0)), "could lead out of it"},
		"drive":         {archive(t, file("c:/rules/facts.yaml", 0)), "could lead out of it"},
		"link":          {archive(t, &tar.Header{Typeflag: tar.TypeSymlink, Name: "rules/facts.yaml", Linkname: "/etc/passwd"}), "is no plain file"},
		"hard link":     {archive(t, &tar.Header{Typeflag: tar.TypeLink, Name: "rules/facts.yaml", Linkname: "/etc/passwd"}), "is no plain file"},
		"device":        {archive(t, &tar.Header{Typeflag: tar.TypeChar, Name: "rules/facts.yaml"}), "is no plain file"},
		"twice":         {archive(t, file("rules/facts.yaml", 3), file("rules/facts.yaml", 4)), "stands twice"},
		"twice, hidden": {archive(t, file("rules/facts.yaml", 3), file("./rules/facts.yaml", 4)), "stands twice"},
		"large":         {archive(t, file("rules/facts.yaml", 1<<20)), "is too large"},
		"large beside":  {archive(t, file("readme.txt", 20<<20)), "unpacks to too much"},
		"bomb":          {zeros.Bytes(), "a pack is a folder with a pack.yaml"},
		"cut short":     {whole[:len(whole)-20], "cannot be read"},
		"no archive":    {[]byte("name: x\n"), "no .tar.gz archive"},
	} {
		t.Run(name, func(t *testing.T) {
			refused(t, func() (*rulebook.Pack, error) { return rulebook.UnpackPack(bytes.NewReader(c.archive), nil) }, c.want)
		})
	}
}

type endless struct{}

func (endless) Read(p []byte) (int, error) { clear(p); return len(p), nil }

// TestManyWaysToBeOpenEndSoon: limits looked up by facts that nobody stated are each open in several ways, together in millions.
func TestManyWaysToBeOpenEndSoon(t *testing.T) {
	var body strings.Builder
	body.WriteString("\nwrong contains \"x\" if {\n")
	for _, table := range []string{"least_slump", "most_slump", "watered_slump"} {
		for _, fact := range []string{"order.slump", "load.slump", "mix.slump"} {
			fmt.Fprintf(&body, "\tinput.%s < data.limit.order.%s[input.member.kind]\n", fact, table)
		}
	}
	body.WriteString("\tinput.county.permit == false\n}\n")
	p, err := rulebook.OpenPack(inMemory(map[string]string{"pack.yaml": head, "rules/facts.yaml": permitFact, "rules/county/no-permit.rego": rule + body.String()}), nil)
	require.NoError(t, err)
	b, err := rulebook.Load(rules.Files, p)
	require.NoError(t, err)
	start := time.Now()
	_, err = b.JudgeOne(t.Context(), job.New(), "county/no-permit")
	assert.Less(t, time.Since(start), 2*soon)
	assert.ErrorContains(t, err, "county/no-permit")
}
