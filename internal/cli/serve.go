package cli

import (
	"context"
	"errors"
	"fmt"
	"math"
	"net"
	"net/http"
	"os"
	"os/signal"
	"runtime/debug"
	"strconv"
	"strings"
	"syscall"
	"time"

	"github.com/spf13/cobra"

	"hearsay/internal/store"
	"hearsay/internal/web"
)

// mostMemory is what the collector of garbage keeps the server below, as far as it can, beside the program's own text.
const mostMemory = 96 << 20

type serveOptions struct {
	address   string
	data      string
	public    string
	tokenFile string
	cert, key string
	rate      float64
	rulebook  string        // address of a bundle to take the rulebook from
	every     time.Duration // between two looks at it
}

func (a *app) serveCommand() *cobra.Command {
	var o serveOptions
	c := &cobra.Command{
		Use:   "serve",
		Short: "Open the page: one box for claims and jobs, the order sheet, the checklist and the library",
		Long: `Serve opens the page in the browser and the HTTP interface under it. It works without
a network. What is typed is kept in a database file as it is typed.

On this machine alone (the default) it asks nobody who they are. On an address that
others reach it asks for a token: that of --token-file, of HEARSAY_TOKEN, or one that
it makes and prints. Others should reach it through TLS only: give it a certificate
(--cert and --key), or put it behind a proxy that has one and name the address people
use (--public https://desk.example).

With --rulebook it takes its rules from a bundle on an HTTP server and asks there for a new
one every minute (--every), the one thing for which it uses the network. A bundle that is
bad, or not signed with the key of --pack-key, changes nothing: the last good one stays, or
the built-in one. /health names the revision in use.`,
		Example: `  hearsay serve
  hearsay serve --address :8080 --cert desk.pem --key desk.key
  hearsay serve --address 127.0.0.1:8080 --public https://desk.example
  hearsay serve --rulebook https://rules.example/rulebook.tar.gz --pack-key public.pem`,
		Args: cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
			defer stop()
			return a.serve(ctx, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.address, "address", "127.0.0.1:8420", "address and port to listen on")
	f.StringVar(&o.data, "data", "", "database file (default: HEARSAY_DATA, or hearsay/hearsay.db in your configuration folder)")
	f.StringVar(&o.public, "public", "", "the address people use, where a proxy stands before this")
	f.StringVar(&o.tokenFile, "token-file", "", "file that holds the token")
	f.StringVar(&o.cert, "cert", "", "certificate file, for TLS")
	f.StringVar(&o.key, "key", "", "key file, for TLS")
	f.StringVar(&o.rulebook, "rulebook", "", "take the rulebook from the bundle at this `address`, and each new one that is put there (hearsay bundle)")
	f.DurationVar(&o.every, "every", time.Minute, "how often to look there for a new one")
	f.Float64Var(&o.rate, "rate", 250, "requests a second that one address may make")
	return c
}

func (a *app) serve(ctx context.Context, o serveOptions) error {
	debug.SetGCPercent(200) // the server goes on, other than the commands
	debug.SetMemoryLimit(math.MaxInt64)
	debug.SetMemoryLimit(mostMemory)
	listener, err := net.Listen("tcp", o.address)
	if err != nil {
		return badInput{fmt.Errorf("%w: choose another address with --address", err)}
	}
	defer listener.Close()
	token, made, err := o.token(listener.Addr())
	if err != nil {
		return err
	}
	kept, err := openStore(ctx, o.data)
	if err != nil {
		return err
	}
	defer kept.Close()
	handler, err := a.handler(ctx, o, kept, token)
	if err != nil {
		return err
	}
	server := &http.Server{Handler: handler, ReadHeaderTimeout: 5 * time.Second, ReadTimeout: 15 * time.Second,
		WriteTimeout: 30 * time.Second, IdleTimeout: 2 * time.Minute, MaxHeaderBytes: 32 << 10}
	if err := a.announce(o, listener.Addr(), token, made); err != nil {
		return err
	}
	done := make(chan error, 1)
	go func() {
		if o.cert != "" {
			done <- server.ServeTLS(listener, o.cert, o.key)
		} else {
			done <- server.Serve(listener)
		}
	}()
	select {
	case err := <-done:
		return err
	case <-ctx.Done():
	}
	fmt.Fprintln(a.out, "Closing. Requests under way are answered first.")
	last, cancel := context.WithTimeout(context.Background(), 10*time.Second)
	defer cancel()
	if err := server.Shutdown(last); err != nil {
		return err
	}
	if err := <-done; !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// shortestToken is the length below which a token could be guessed.
const shortestToken = 16

// token gives the token to ask for: none on this machine alone, otherwise the one given, or one made now.
func (o serveOptions) token(at net.Addr) (token string, made bool, err error) {
	token = os.Getenv("HEARSAY_TOKEN")
	if o.tokenFile != "" {
		text, err := os.ReadFile(o.tokenFile)
		if err != nil {
			return "", false, badInput{fmt.Errorf("%w: --token-file names a file that holds the token", err)}
		}
		token = string(text)
	}
	token = strings.TrimSpace(token)
	switch {
	case token != "" && len(token) < shortestToken:
		return "", false, badInput{fmt.Errorf("the token is too short to be safe: give at least %d characters, or none to have one made", shortestToken)}
	case token == "" && (o.public != "" || !loopback(at)):
		return web.NewToken(), true, nil
	}
	return token, false, nil
}

// named is an address as others type it: where all addresses are listened on, the name of this machine.
func named(at net.Addr) string {
	tcp, ok := at.(*net.TCPAddr)
	if !ok || !tcp.IP.IsUnspecified() {
		return at.String()
	}
	name, err := os.Hostname()
	if err != nil {
		return at.String()
	}
	return net.JoinHostPort(name, strconv.Itoa(tcp.Port))
}

func loopback(at net.Addr) bool {
	tcp, ok := at.(*net.TCPAddr)
	return ok && tcp.IP.IsLoopback()
}

func openStore(ctx context.Context, path string) (*store.Store, error) {
	path, err := storePath(path)
	if err != nil {
		return nil, err
	}
	kept, err := store.Open(ctx, path)
	if err != nil {
		return nil, badInput{err}
	}
	return kept, nil
}

// announce says where the page is, and how to keep it safe where others can reach it.
func (a *app) announce(o serveOptions, at net.Addr, token string, made bool) error {
	scheme := "http"
	if o.cert != "" {
		scheme = "https"
	}
	address := scheme + "://" + named(at) + "/"
	if o.public != "" {
		address = strings.TrimSuffix(o.public, "/") + "/"
	}
	fmt.Fprintln(a.out, "The page is open at", address)
	if made {
		fmt.Fprintf(a.out, "It asks for this token, made for this run: %s\nTo keep one token, put it into a file and name it with --token-file.\n", token)
	}
	if !loopback(at) && o.cert == "" && !strings.HasPrefix(o.public, "https://") {
		fmt.Fprint(a.out, `Others can reach it, and nothing hides what they send. Put it behind TLS:
  with a certificate of your own: hearsay serve --address :443 --cert desk.pem --key desk.key
  or behind a proxy that has one: hearsay serve --address 127.0.0.1:8420 --public https://desk.example
  (the proxy passes requests on to 127.0.0.1:8420 and sets X-Forwarded-For)
`)
	}
	fmt.Fprintln(a.out, "Stop it with Ctrl-C.")
	return a.sayMade()
}
