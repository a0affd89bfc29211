package web

import (
	"embed"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"hearsay/internal/document"
)

// Every sentence of the page that is not a rule's or a belief's stands in text/<language>.yaml, under a key.
//
//go:embed text/*.yaml
var textFiles embed.FS

// firstLanguage is the language that has every text; the others fall back on it.
const firstLanguage = "en"

// texts are the sentences of one language by key.
type texts map[string]string

// loadTexts reads every language there is.
func loadTexts() (map[string]texts, error) {
	files, err := fs.Glob(textFiles, "text/*.yaml")
	if err != nil {
		return nil, err
	}
	all := map[string]texts{}
	for _, file := range files {
		source, err := textFiles.ReadFile(file)
		if err != nil {
			return nil, err
		}
		entries, err := document.Read[string](file, source)
		if err != nil {
			return nil, err
		}
		language := texts{}
		for _, e := range entries {
			language[e.Name] = e.Value
		}
		all[strings.TrimSuffix(path.Base(file), ".yaml")] = language
	}
	for language, own := range all {
		for key, text := range all[firstLanguage] {
			if _, ok := own[key]; !ok && language != firstLanguage {
				own[key] = text
			}
		}
	}
	return all, nil
}

// say gives the sentence of a key, with the names in braces replaced by what follows: say("count", "n", 3). A key that
// does not exist shows as itself, which a test finds.
func (t texts) say(key string, with ...any) string {
	text, ok := t[key]
	if !ok {
		return "⟨" + key + "⟩"
	}
	for i := 0; i+1 < len(with); i += 2 {
		text = strings.ReplaceAll(text, "{"+fmt.Sprint(with[i])+"}", fmt.Sprint(with[i+1]))
	}
	return text
}

// count gives the sentence of key.one or key.many, with {n} replaced.
func (t texts) count(key string, n int, with ...any) string {
	form := ".many"
	if n == 1 {
		form = ".one"
	}
	return t.say(key+form, append(with, "n", n)...)
}
