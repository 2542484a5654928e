// Package api serves lessons and pictures over HTTP, and the page that shows
// them. Everything under /v1/ is stable: the same URL asks for the same
// problem's picture for good.
package api

import (
	"context"
	"errors"
	"log/slog"
	"net"
	"net/http"
	"runtime/debug"
	"time"

	"modeler/arithmetic/reading"
)

// route is a path and what serves it: GET and HEAD, and POST where what is asked
// may come in the body.
type route struct {
	path  string
	serve http.HandlerFunc
	body  bool
}

// health says that the service is up.
func health(w http.ResponseWriter, r *http.Request) {
	a := answer{kind: "application/json", body: []byte("{\"status\":\"ok\"}\n"), life: never, policy: sealed}
	a.write(w, r)
}

// guarded sets the headers that every response has.
func guarded(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("X-Content-Type-Options", "nosniff")
		w.Header().Set("Referrer-Policy", "no-referrer")
		h.ServeHTTP(w, r)
	})
}

// recovered turns a panic into a plain 500. Responses are written whole and last,
// so nothing has been sent by then. The log has the beginning of the problem, to
// mend the mistake by, and nothing about who asked.
func recovered(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		defer func() {
			cause := recover()
			if cause == nil {
				return
			}
			if cause == http.ErrAbortHandler {
				panic(cause)
			}
			slog.Error("panic", "path", Clip(r.URL.Path), "problem", Clip(readQuery(r.URL.RawQuery)["problem"]),
				"cause", cause, "stack", string(debug.Stack()))
			t := &Trouble{Status: http.StatusInternalServerError, reason: reading.Error{
				Code: "internal", Message: "something went wrong here, not with what you typed"}}
			t.refuse(w, r)
		}()
		h.ServeHTTP(w, r)
	})
}

// Bounds on a connection: a slow or silent client cannot hold one for long.
const (
	headerTime   = 5 * time.Second
	readTime     = 10 * time.Second
	writeTime    = 15 * time.Second
	idleTime     = 120 * time.Second // longer than a proxy in front keeps its own
	headerBytes  = 16 << 10
	shutdownTime = 15 * time.Second
)

// Serve answers on the listener until the context ends. Then /readyz says that the
// service is leaving; after drain, which gives those who send requests here the
// time to see it, no new requests are taken, those in flight are finished, and it
// returns nil.
func (s *Service) Serve(ctx context.Context, on net.Listener, drain time.Duration) error {
	srv := &http.Server{
		Handler:           s,
		ReadHeaderTimeout: headerTime,
		ReadTimeout:       readTime,
		WriteTimeout:      writeTime,
		IdleTimeout:       idleTime,
		MaxHeaderBytes:    headerBytes,
		ErrorLog:          slog.NewLogLogger(slog.Default().Handler(), slog.LevelWarn),
	}
	failed := make(chan error, 1)
	go func() { failed <- srv.Serve(on) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	s.Leave()
	time.Sleep(drain)
	// The context of the requests is not this one, so they are not cut short.
	last, cancel := context.WithTimeout(context.Background(), shutdownTime)
	defer cancel()
	if err := srv.Shutdown(last); err != nil {
		return errors.Join(err, srv.Close())
	}
	return nil
}
