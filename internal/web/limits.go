package web

import (
	"sync"
	"time"

	"golang.org/x/time/rate"
)

// limits holds back whoever asks too often.
type limits struct {
	rate  rate.Limit
	burst int
	lock  sync.Mutex
	who   map[string]*asker
	swept time.Time
}

type asker struct {
	limiter *rate.Limiter
	last    time.Time
}

func newLimits(perSecond float64) *limits {
	return &limits{rate: rate.Limit(perSecond), burst: max(20, int(2*perSecond)), who: map[string]*asker{}, swept: time.Now()}
}

// allow says whether an address may ask now.
func (l *limits) allow(address string) bool {
	now := time.Now()
	l.lock.Lock()
	defer l.lock.Unlock()
	if now.Sub(l.swept) > time.Minute {
		for k, a := range l.who {
			if now.Sub(a.last) > time.Minute {
				delete(l.who, k)
			}
		}
		l.swept = now
	}
	a, ok := l.who[address]
	if !ok {
		a = &asker{limiter: rate.NewLimiter(l.rate, l.burst)}
		l.who[address] = a
	}
	a.last = now
	return a.limiter.AllowN(now, 1)
}
