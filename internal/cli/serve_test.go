package cli

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// printed is what a command that goes on prints, readable meanwhile.
type printed struct {
	lock sync.Mutex
	text bytes.Buffer
}

func (p *printed) Write(b []byte) (int, error) {
	p.lock.Lock()
	defer p.lock.Unlock()
	return p.text.Write(b)
}

func (p *printed) String() string {
	p.lock.Lock()
	defer p.lock.Unlock()
	return p.text.String()
}

// served starts the server and gives what it printed until it was open, and how to stop it.
func served(t *testing.T, o serveOptions) (out *printed, stop func() error) {
	t.Helper()
	out = &printed{}
	a := &app{out: out, err: io.Discard}
	ctx, cancel := context.WithCancel(t.Context())
	done := make(chan error, 1)
	o.data = filepath.Join(t.TempDir(), "kept.db")
	go func() { done <- a.serve(ctx, o) }()
	require.Eventually(t, func() bool { return strings.Contains(out.String(), "Ctrl-C") }, 20*time.Second, 10*time.Millisecond)
	return out, func() error { cancel(); return <-done }
}

var portPrinted = regexp.MustCompile(`open at http://\S+:(\d+)/`)

func asked(t *testing.T, port, token string) int {
	t.Helper()
	r, err := http.NewRequestWithContext(t.Context(), http.MethodGet, fmt.Sprintf("http://127.0.0.1:%s/api/practices", port), nil)
	require.NoError(t, err)
	if token != "" {
		r.Header.Set("Authorization", "Bearer "+token)
	}
	answer, err := http.DefaultClient.Do(r)
	require.NoError(t, err)
	answer.Body.Close()
	return answer.StatusCode
}

func TestServeOnThisMachineAsksNobodyWhoTheyAre(t *testing.T) {
	out, stop := served(t, serveOptions{address: "127.0.0.1:0", rate: 250})
	port := portPrinted.FindStringSubmatch(out.String())
	require.NotNil(t, port, out.String())
	assert.Equal(t, http.StatusOK, asked(t, port[1], ""))
	assert.NotContains(t, out.String(), "token")
	assert.NotContains(t, out.String(), "TLS")
	require.NoError(t, stop())
	assert.Contains(t, out.String(), "Requests under way are answered first")
}

func TestServeWhereOthersCanReachItMakesATokenAndNamesTLS(t *testing.T) {
	t.Setenv("HEARSAY_TOKEN", "")
	out, stop := served(t, serveOptions{address: "0.0.0.0:0", rate: 250})
	port := portPrinted.FindStringSubmatch(out.String())
	require.NotNil(t, port, out.String())
	assert.NotContains(t, out.String(), "[::]", "an address that nobody can type")
	assert.Contains(t, out.String(), "Put it behind TLS")
	token := regexp.MustCompile(`made for this run: (\S+)`).FindStringSubmatch(out.String())
	require.NotNil(t, token)
	assert.Equal(t, http.StatusUnauthorized, asked(t, port[1], ""))
	assert.Equal(t, http.StatusOK, asked(t, port[1], token[1]))
	require.NoError(t, stop())
}

func TestServeTakesTheTokenItIsGiven(t *testing.T) {
	file := filepath.Join(t.TempDir(), "token")
	require.NoError(t, os.WriteFile(file, []byte("a-token-long-enough\n"), 0o600))
	out, stop := served(t, serveOptions{address: "127.0.0.1:0", public: "https://desk.example", tokenFile: file, rate: 250})
	assert.Contains(t, out.String(), "open at https://desk.example/")
	assert.NotContains(t, out.String(), "a-token", "what is given is not printed")
	require.NoError(t, stop())
}

func TestServeRefusesWhatCannotBeUsed(t *testing.T) {
	t.Setenv("HEARSAY_TOKEN", "short")
	a := &app{out: io.Discard, err: io.Discard}
	assert.ErrorContains(t, a.serve(t.Context(), serveOptions{address: "127.0.0.1:0"}), "too short to be safe")
	t.Setenv("HEARSAY_TOKEN", "")
	assert.ErrorContains(t, a.serve(t.Context(), serveOptions{address: "300.0.0.1:0"}), "--address")
	notADatabase := filepath.Join(t.TempDir(), "notes.txt")
	require.NoError(t, os.WriteFile(notADatabase, bytes.Repeat([]byte("not a database "), 100), 0o600))
	assert.ErrorContains(t, a.serve(t.Context(), serveOptions{address: "127.0.0.1:0", data: notADatabase}), "cannot be used")
	assert.ErrorContains(t, a.serve(t.Context(), serveOptions{address: "127.0.0.1:0", tokenFile: "no/such/file"}), "--token-file")
}
