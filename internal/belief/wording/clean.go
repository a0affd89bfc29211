// Package wording turns a sentence, as it is said or typed, into the features that are matched: stems, pairs of stems, what
// is denied, what stands after a "but", concepts of the trade, and pieces of words.
package wording

import (
	"regexp"
	"strings"
)

var (
	negated = regexp.MustCompile(`\b(do|does|did|wo|ca|is|ai|was|should|would|could|are|were|has|have|had|need|must)n'?t\b`)
	dropped = regexp.MustCompile(`([a-z]{3,})in'`)
	digits  = regexp.MustCompile(`\d[\d,]*(\.\d+)?`)
	spaces  = regexp.MustCompile(`\s+`)
	quotes  = strings.NewReplacer("’", "'", "‘", "'", "“", `"`, "”", `"`, "cannot", "can not", "°", " degrees ", "³", "3", "²", "2")
)

// longest bounds what is read of a sentence, in bytes. Nobody's claim is longer; a pasted page must not take a second.
const longest = 2000

// Clean writes a sentence in one way: lower case, "don't" as "do not", "pourin'" as "pouring", and numbers by their length,
// since "3,500" and "4,200" say the same about the subject.
func Clean(text string) string {
	if len(text) > longest {
		text = strings.ToValidUTF8(text[:longest], "")
	}
	text = quotes.Replace(strings.ToLower(text))
	text = negated.ReplaceAllStringFunc(text, func(w string) string {
		switch stem := strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(w, "t"), "'"), "n"); stem {
		case "wo":
			return "will not"
		case "ca":
			return "can not"
		case "ai":
			return "is not"
		default:
			return stem + " not"
		}
	})
	text = dropped.ReplaceAllString(text, "${1}ing")
	text = digits.ReplaceAllStringFunc(text, func(n string) string {
		whole, _, _ := strings.Cut(n, ".")
		return strings.Repeat("#", min(6, len(strings.ReplaceAll(whole, ",", ""))))
	})
	return strings.TrimSpace(spaces.ReplaceAllString(text, " "))
}

// Words splits a cleaned sentence: words, numbers, and the marks that carry meaning. A comma, a full stop or a semicolon
// ends a clause and is given as ",".
func Words(clean string) []string {
	var out []string
	start := -1
	flush := func(end int) {
		if start >= 0 {
			out = append(out, strings.Trim(clean[start:end], "'"))
			start = -1
		}
	}
	for i := 0; i < len(clean); i++ {
		switch c := clean[i]; {
		case c >= 'a' && c <= 'z' || c == '#' || c == '\'' || c >= 0x80:
			if start < 0 {
				start = i
			}
		case c == '?' || c == '%':
			flush(i)
			out = append(out, string(c))
		case c == ',' || c == '.' || c == ';' || c == ':' || c == '!':
			flush(i)
			out = append(out, ",")
		default:
			flush(i)
		}
	}
	flush(len(clean))
	kept := out[:0]
	for _, w := range out {
		if w != "" {
			kept = append(kept, w)
		}
	}
	return kept
}
