package cli

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/folder"
	"hearsay/internal/sample"
)

// published is a rulebook with one pack, as a bundle, and its revision.
func published(t *testing.T, pack string) ([]byte, string) {
	t.Helper()
	file, revision, err := sample.Bundle(folder.Memory{"pack.yaml": []byte("name: " + pack + "\nby: me\n"),
		"rules/sources.yaml": []byte(pack + "-spec: {title: Specification, by: me}\n"),
		"corpus/county/" + pack + ".md": []byte("---\nbelief: a driveway in " + pack + " needs no permit\nverdict: myth\nseason: any\nsources: [{work: trade, where: code, basis: memory}]\n" +
			"said: {office: [In " + pack + " nobody asks for a permit for a driveway.]}\ndenied: {}\n---\n# Fact\nEvery drive in " + pack + " needs one.\n# Belief\nb\n# Why\nw\n# Do\nd\n# Say\ns\n")}, nil)
	require.NoError(t, err)
	return file, revision
}

// TestServeFollowsARulebook: the server works with the rulebook that is published, takes the next one without a stop, and keeps it
// when what is published is bad. Beliefs of its packs answer claims.
func TestServeFollowsARulebook(t *testing.T) {
	one, first := published(t, "heron")
	two, second := published(t, "ibis")
	var lock sync.Mutex
	file := one
	publish := func(b []byte) { lock.Lock(); file = b; lock.Unlock() }
	source := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		lock.Lock()
		defer lock.Unlock()
		w.Write(file)
	}))
	defer source.Close()
	out, stop := served(t, serveOptions{address: "127.0.0.1:0", rulebook: source.URL, every: time.Second})
	port := portPrinted.FindStringSubmatch(out.String())[1]
	health := func() map[string]string {
		answer, err := http.Get(fmt.Sprintf("http://127.0.0.1:%s/health", port))
		require.NoError(t, err)
		defer answer.Body.Close()
		text, err := io.ReadAll(answer.Body)
		require.NoError(t, err)
		var h map[string]string
		require.NoError(t, json.Unmarshal(text, &h))
		return h
	}
	assert.Equal(t, first, health()["rulebook"])
	assert.Equal(t, "elsewhere", health()["from"])

	publish([]byte("no bundle"))
	time.Sleep(1500 * time.Millisecond)
	assert.Equal(t, first, health()["rulebook"])

	publish(two)
	assert.Eventually(t, func() bool { return health()["rulebook"] == second }, 60*time.Second, 50*time.Millisecond)
	answer, err := http.Post(fmt.Sprintf("http://127.0.0.1:%s/api/claim", port), "application/json", bytes.NewReader([]byte(`{"say": "in ibis nobody asks for a permit for a driveway"}`)))
	require.NoError(t, err)
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	require.NoError(t, err)
	assert.Contains(t, string(text), `"belief of pack ibis"`)
	require.NoError(t, stop())
}
