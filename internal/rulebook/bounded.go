package rulebook

import (
	"context"
	"errors"
	"fmt"
	"runtime/metrics"
	"time"
)

// What the judging of a pack's rules and the running of its tests may take. Rules of the form that packs are held to need a
// thousandth of it.
const (
	mostJudgingTime = 2 * time.Second // one practice
	mostTestTime    = 60 * time.Second
	mostMemory      = 512 << 20 // bytes beyond what was in use before
	lookEvery       = 20 * time.Millisecond
)

// errTooMuch says that something took more time or memory than it may.
var errTooMuch = errors.New("it takes too much")

// bounded runs something that may turn out to have no end, and gives up on it when it takes too long or too much memory. What
// was given up on is told so through its context; what does not listen is left behind, which is for commands that end soon.
func bounded(ctx context.Context, most time.Duration, run func(context.Context) error) error {
	ctx, cancel := context.WithTimeout(ctx, most)
	defer cancel()
	done := make(chan error, 1)
	go func() { done <- run(ctx) }()
	before := memoryUsed()
	look := time.NewTicker(lookEvery)
	defer look.Stop()
	for {
		select {
		case err := <-done:
			return err
		case <-ctx.Done():
			return fmt.Errorf("%w time: it was stopped after %v", errTooMuch, most)
		case <-look.C:
			if used := memoryUsed(); used > before+mostMemory {
				return fmt.Errorf("%w memory: it was stopped at %d MB", errTooMuch, mostMemory>>20)
			}
		}
	}
}

func memoryUsed() uint64 {
	sample := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64()
}
