package web

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var (
	usedInTemplates = regexp.MustCompile(`\b(t|count) "([a-z.]+)"`)
	familyUsed      = regexp.MustCompile(`t \(print "([a-z.]+\.)" `)
	familyInCode    = regexp.MustCompile(`say\("([a-z.]+\.)"\+`)
	usedInCode      = regexp.MustCompile(`(?:\.(say|count)\(|badRequest\(|key: |problem\{http\.\w+, )"([a-z.]+)"`)
	unknownOfKind   = regexp.MustCompile(`notFound\("([a-z]+)"`)
	placeholder     = regexp.MustCompile(`\{\w+\}`)
)

// TestEveryTextIsThereAndUsed holds the text files against the templates and the code: no key without a text, no text
// that nothing shows.
func TestEveryTextIsThereAndUsed(t *testing.T) {
	all, err := loadTexts()
	require.NoError(t, err)
	english := all[firstLanguage]
	used, families := map[string]bool{}, []string{}
	use := func(how, key string) {
		if how == "count" {
			used[key+".one"], used[key+".many"] = true, true
			return
		}
		used[key] = true
	}
	templates, err := fs.Glob(templateFiles, "templates/*.html")
	require.NoError(t, err)
	for _, name := range templates {
		text, err := templateFiles.ReadFile(name)
		require.NoError(t, err)
		for _, m := range usedInTemplates.FindAllSubmatch(text, -1) {
			use(string(m[1]), string(m[2]))
		}
		for _, m := range familyUsed.FindAllSubmatch(text, -1) {
			families = append(families, string(m[1]))
		}
	}
	code, err := filepath.Glob("*.go")
	require.NoError(t, err)
	for _, name := range code {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		for _, m := range usedInCode.FindAllSubmatch(text, -1) {
			if !strings.HasSuffix(string(m[2]), ".") {
				use(string(m[1]), string(m[2]))
			}
		}
		for _, m := range familyInCode.FindAllSubmatch(text, -1) {
			families = append(families, string(m[1]))
		}
		for _, m := range unknownOfKind.FindAllSubmatch(text, -1) {
			use("", "fail.unknown."+string(m[1]))
		}
	}
	require.Greater(t, len(used), 100, "the keys are no longer found in the templates")
	var missing, unused []string
	for key := range used {
		if _, ok := english[key]; !ok {
			missing = append(missing, key)
		}
	}
	for key := range english {
		if !used[key] && !inFamily(key, families) {
			unused = append(unused, key)
		}
	}
	sort.Strings(missing)
	sort.Strings(unused)
	assert.Empty(t, missing, "keys without a text")
	assert.Empty(t, unused, "texts that nothing shows")
}

func inFamily(key string, families []string) bool {
	for _, f := range families {
		if strings.HasPrefix(key, f) {
			return true
		}
	}
	return false
}

// TestEveryLanguageSaysTheSame finds what a language lacks, and names in braces that differ.
func TestEveryLanguageSaysTheSame(t *testing.T) {
	files, err := fs.Glob(textFiles, "text/*.yaml")
	require.NoError(t, err)
	all, err := loadTexts()
	require.NoError(t, err)
	for _, file := range files {
		language := strings.TrimSuffix(filepath.Base(file), ".yaml")
		for key, english := range all[firstLanguage] {
			assert.ElementsMatch(t, placeholder.FindAllString(english, -1), placeholder.FindAllString(all[language][key], -1), "%s: %s", language, key)
		}
		for key := range all[language] {
			assert.Contains(t, all[firstLanguage], key, "%s has a text that no page shows", language)
		}
	}
}

func TestATextFillsItsNames(t *testing.T) {
	own := texts{"a": "{n} of {m}", "b.one": "one {x}", "b.many": "{n} {x}"}
	assert.Equal(t, "3 of 4", own.say("a", "n", 3, "m", 4))
	assert.Equal(t, "one left", own.count("b", 1, "x", "left"))
	assert.Equal(t, "0 left", own.count("b", 0, "x", "left"))
	assert.Equal(t, "⟨none⟩", own.say("none"))
}
