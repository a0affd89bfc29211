package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A text message tells whole sentences, the most important first; a sentence that does not go in makes room for the next.
func TestAMessageTellsWholeSentences(t *testing.T) {
	long := strings.Repeat("very ", 40) + "long"
	assert.Equal(t, "Cover it. Thaw it.", whole([]string{"Cover it. Then wait.", long, "Thaw it.", "Wet it."}))
	assert.Equal(t, "", whole(nil))
	alone := whole([]string{long + "."})
	assert.LessOrEqual(t, len(alone), messageWidth+len("…"))
	assert.True(t, strings.HasSuffix(alone, " …"))
}
