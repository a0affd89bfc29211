package cli

import (
	"context"
	"log/slog"
	"net/http"
	"slices"
	"sync/atomic"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/fleet"
	"hearsay/internal/reckon"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
	"hearsay/internal/web"
	"hearsay/internal/words"
	"hearsay/rules"
)

// newest answers with the handler that was put last. Requests under way are answered by the one they came to.
type newest struct{ handler atomic.Pointer[http.Handler] }

func (n *newest) put(h http.Handler) { n.handler.Store(&h) }

func (n *newest) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	(*n.handler.Load()).ServeHTTP(w, r)
}

// handler makes what answers requests, and has it follow the rulebook of --rulebook.
func (a *app) handler(ctx context.Context, o serveOptions, kept *store.Store, token string) (http.Handler, error) {
	packs, err := a.packs()
	if err != nil {
		return nil, err
	}
	log := slog.New(slog.NewTextHandler(a.err, nil))
	config := web.Config{Store: kept, Token: token, Public: o.public, Rate: o.rate, Log: log}
	answers := &newest{}
	if o.rulebook != "" {
		key, err := a.key()
		if err != nil {
			return nil, err
		}
		follower, err := fleet.New(o.rulebook, o.every, key, log, func(b *rulebook.Bundle) error {
			book, err := b.Load(packs...)
			if err != nil {
				return err
			}
			if err := book.Warm(ctx); err != nil {
				return err
			}
			config := config
			config.Elsewhere = true
			return answers.serve(config, book)
		})
		if err != nil {
			return nil, badInput{err}
		}
		defer func() { go follower.Follow(ctx) }()
		if follower.Poll(ctx) {
			return answers, nil
		}
		log.Warn("the built-in rulebook is used until one arrives", "from", follower.Name())
	}
	book, err := rulebook.Load(rules.Files, packs...)
	if err != nil {
		return nil, a.blame(err)
	}
	go book.Warm(ctx) // an error shows at the first judgement too
	return answers, a.blame(answers.serve(config, book))
}

// serve puts a handler that works with a rulebook, its packs included.
func (n *newest) serve(config web.Config, book *rulebook.Book) error {
	packs := slices.Clone(book.Packs())
	corpusFiles := rulebook.Corpus(corpus.Files, packs...)
	var err error
	config.Book = book
	if config.Corpus, err = belief.Load(corpusFiles); err != nil {
		return err
	}
	if config.Words, err = words.New(book.Facts, corpusFiles); err != nil {
		return err
	}
	if config.Reckon, err = reckon.New(book.Rules(), corpusFiles); err != nil {
		return err
	}
	server, err := web.New(config)
	if err != nil {
		return err
	}
	handler, err := server.Handler()
	if err != nil {
		return err
	}
	n.put(handler)
	return nil
}
