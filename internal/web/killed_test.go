package web

import (
	"context"
	"fmt"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/corpus"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
	"hearsay/internal/words"
	"hearsay/rules"
)

// serveUntilKilled is the server that a test starts in a process of its own, to be killed.
func serveUntilKilled(path, address string) {
	debug.SetGCPercent(200) // as the command does
	debug.SetMemoryLimit(96 << 20)
	err := func() error {
		book, err := rulebook.Load(rules.Files)
		if err != nil {
			return err
		}
		beliefs, err := theCorpus()
		if err != nil {
			return err
		}
		kept, err := store.Open(context.Background(), path)
		if err != nil {
			return err
		}
		reader, err := words.New(book.Facts, corpus.Files)
		if err != nil {
			return err
		}
		reckoner, err := theReckoner()
		if err != nil {
			return err
		}
		s, err := New(Config{Reckon: reckoner, Book: book, Corpus: beliefs, Words: reader, Store: kept})
		if err != nil {
			return err
		}
		handler, err := s.Handler()
		if err != nil {
			return err
		}
		return http.ListenAndServe(address, handler)
	}()
	fmt.Println(err)
	os.Exit(1)
}

// startChild starts the server in a process of its own and waits until it answers.
func startChild(t *testing.T, path, address string) *exec.Cmd {
	t.Helper()
	child := exec.Command(os.Args[0])
	child.Env = append(os.Environ(), "SERVE_FROM="+path, "SERVE_AT="+address)
	require.NoError(t, child.Start())
	t.Cleanup(func() { child.Process.Kill(); child.Wait() })
	require.Eventually(t, func() bool {
		answer, err := http.Get("http://" + address + "/health")
		if err != nil {
			return false
		}
		answer.Body.Close()
		return answer.StatusCode == http.StatusOK
	}, 20*time.Second, 20*time.Millisecond, "the server did not start")
	return child
}

// TestTheServerIsKilled kills it in the middle of a job. What was shown is there when it comes back, and what was typed
// meanwhile is sent then.
func TestTheServerIsKilled(t *testing.T) {
	free, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	address := free.Addr().String()
	free.Close()
	path := filepath.Join(t.TempDir(), "kept.db")
	child := startChild(t, path, address)

	b := open(t, &site{TB: t, address: "http://" + address}, desktop)
	b.visit("/")
	b.say("nine yards, adding 14 gallons")
	b.says("water added at the site 14 gal")
	b.until(`document.querySelector('[name=saw]').value === ` + quote(mark("nine yards, adding 14 gallons")))
	job := b.address()
	require.NoError(t, child.Process.Kill())
	child.Wait()

	b.say(" of water")
	b.says("The server does not answer.")
	startChild(t, path, address)
	b.say(" to it")
	b.until("document.getElementById('offline').hidden")
	b.until(`document.querySelector('[name=saw]').value === ` + quote(mark("nine yards, adding 14 gallons of water to it")))
	b.visit(job)
	assert.Equal(t, "nine yards, adding 14 gallons of water to it", script[string](b, "document.getElementById('said').value"))
	b.says("water added at the site 14 gal")

	b.lock.Lock()
	defer b.lock.Unlock()
	for _, bad := range b.bad {
		assert.True(t, strings.Contains(bad, "ERR_CONNECTION_REFUSED") || strings.Contains(bad, "ERR_CONNECTION_RESET") || strings.Contains(bad, "ERR_EMPTY_RESPONSE"), bad)
	}
	b.bad = nil
}
