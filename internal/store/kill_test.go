package store

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestMain lets the test binary play the server that is killed: with KEEP_IN set it writes until it dies, and says each
// job that was acknowledged.
func TestMain(m *testing.M) {
	if path := os.Getenv("ANSWER_IN"); path != "" {
		answerUntilKilled(path, os.Getenv("ANSWER_CODE"))
	}
	path := os.Getenv("KEEP_IN")
	if path == "" {
		os.Exit(m.Run())
	}
	s, err := Open(context.Background(), path)
	if err != nil {
		fmt.Println("failed:", err)
		os.Exit(1)
	}
	for i := 0; ; i++ {
		j, err := s.CreateJob(context.Background(), Content{Said: fmt.Sprintf("job %d", i)})
		if err == nil {
			_, err = s.ChangeJob(context.Background(), j.ID, func(j *Job) error { j.Said += " changed"; return nil })
		}
		if err != nil {
			fmt.Println("failed:", err)
			os.Exit(1)
		}
		fmt.Println(j.ID)
	}
}

func TestNothingAcknowledgedIsLostWhenKilled(t *testing.T) {
	path := filepath.Join(t.TempDir(), "jobs.db")
	kept := map[string]bool{}
	for range 5 {
		child := exec.Command(os.Args[0])
		child.Env = append(os.Environ(), "KEEP_IN="+path)
		out, err := child.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, child.Start())
		time.AfterFunc(400*time.Millisecond, func() { child.Process.Kill() })
		for lines := bufio.NewScanner(out); lines.Scan(); {
			require.False(t, strings.HasPrefix(lines.Text(), "failed"), lines.Text())
			if len(lines.Text()) == 12 { // a line cut short by the kill was not acknowledged
				kept[lines.Text()] = true
			}
		}
		child.Wait()
	}
	require.Greater(t, len(kept), 5, "too little was written to show anything")
	s, err := Open(t.Context(), path)
	require.NoError(t, err)
	defer s.Close()
	for id := range kept {
		j, err := s.Job(t.Context(), id)
		if assert.NoError(t, err) {
			assert.True(t, strings.HasSuffix(j.Said, " changed"), j.Said)
		}
	}
}
