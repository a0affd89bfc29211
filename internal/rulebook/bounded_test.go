package rulebook

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

func TestWhatHasNoEndIsStopped(t *testing.T) {
	start := time.Now()
	err := bounded(context.Background(), 50*time.Millisecond, func(ctx context.Context) error {
		<-ctx.Done()
		time.Sleep(time.Second) // it does not listen
		return nil
	})
	assert.ErrorIs(t, err, errTooMuch)
	assert.Less(t, time.Since(start), 500*time.Millisecond)
}

func TestWhatTakesTooMuchMemoryIsStopped(t *testing.T) {
	stopped := make(chan struct{})
	err := bounded(context.Background(), 20*time.Second, func(ctx context.Context) error {
		defer close(stopped)
		var held [][]byte
		for ctx.Err() == nil && len(held) < 2000 {
			held = append(held, make([]byte, 1<<20))
			time.Sleep(100 * time.Microsecond)
		}
		return nil
	})
	assert.ErrorIs(t, err, errTooMuch)
	<-stopped
}

func TestWhatEndsInTimeIsLeftAlone(t *testing.T) {
	assert.NoError(t, bounded(context.Background(), time.Minute, func(context.Context) error { return nil }))
}
