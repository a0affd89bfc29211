package cli

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"

	"hearsay/internal/crew"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// made says by what answers are made: this version, the rulebook, and the packs over it.
func (a *app) made() (release.Made, error) {
	packs, err := a.packs()
	if err != nil {
		return release.Made{}, err
	}
	return rulebook.MadeOf(rules.Files, packs...)
}

// madeWith says it of what beliefs had a part in.
func (a *app) madeWith(t *crew.Trainer) (release.Made, error) {
	made, err := a.made()
	made.Corpus = t.Revision()
	return made, err
}

// sayMade ends an answer in words.
func (a *app) sayMade() error {
	made, err := a.made()
	if err == nil {
		_, err = fmt.Fprintln(a.out, made.Line())
	}
	return err
}

// printJSON prints an object. By what it was made is its last member, unless the object tells that itself; so a list is printed
// under a name.
func (a *app) printJSON(v any) error {
	var text bytes.Buffer
	encode := json.NewEncoder(&text)
	encode.SetIndent("", "  ")
	encode.SetEscapeHTML(false)
	if err := encode.Encode(v); err != nil {
		return err
	}
	if bytes.Contains(text.Bytes(), []byte("\n  \"made\": {")) {
		_, err := text.WriteTo(a.out)
		return err
	}
	whole, isObject := bytes.CutSuffix(text.Bytes(), []byte("\n}\n"))
	if !isObject {
		return fmt.Errorf("%T is printed as %.20q, which cannot say by what it was made", v, text.Bytes())
	}
	made, err := a.made()
	if err != nil {
		return err
	}
	by, err := json.MarshalIndent(made, "  ", "  ")
	if err != nil {
		return err
	}
	_, err = io.WriteString(a.out, string(whole)+",\n  \"made\": "+string(by)+"\n}\n")
	return err
}

// printList prints a list under its name, and by what it was made.
func (a *app) printList(name string, list any, made release.Made) error {
	return a.printJSON(map[string]any{name: list, "made": made})
}
