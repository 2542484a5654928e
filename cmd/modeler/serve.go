package main

import (
	"context"
	"fmt"
	"log/slog"
	"net"
	"net/http"
	"net/url"
	"os"
	"os/signal"
	"strconv"
	"strings"
	"syscall"
	"time"

	"github.com/spf13/pflag"

	"modeler/api"
	"modeler/arithmetic/reading"
)

var serveCommand = command{
	name: "serve",
	use:  "[flags]",
	doc:  "serve the page and the pictures over HTTP until interrupted; every flag can also be set in the environment, --listen as MODELER_LISTEN",
	flags: func(fs *pflag.FlagSet) {
		fs.String("listen", "127.0.0.1:8080", "serve on this `address`")
		fs.String("public", "", "the `URL` that others know the service by, for addresses to copy")
		fs.String("metrics", "", "serve numbers for Prometheus on this `address`, at /metrics; none if empty")
		fs.Int("store", api.UsualStore>>20, "`megabytes` of answers to keep, 0 to 4096")
		fs.Int("rate", 0, "`requests` a second that one client may make, 0 for any number; not behind a proxy")
		fs.Int("drain", 0, "`seconds` to go on serving after a signal while /readyz says no, 0 to 60")
		fs.String("log", "text", "how to write the log: `text` or json")
		fs.Bool("log-requests", false, "write a line for every request, without who asked")
	},
	run: serve,
}

func serve(c call) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	// The first signal lets requests finish; a second one ends the program.
	context.AfterFunc(ctx, stop)
	return serveUntil(ctx, c)
}

// environment is the name under which a flag is set in the environment.
func environment(flag string) string {
	return "MODELER_" + strings.ToUpper(strings.ReplaceAll(flag, "-", "_"))
}

// fromEnvironment sets the flags that the command line leaves out.
func fromEnvironment(fs *pflag.FlagSet, lookup func(string) (string, bool)) (err error) {
	fs.VisitAll(func(f *pflag.Flag) {
		value, set := lookup(environment(f.Name))
		if err != nil || f.Changed || !set {
			return
		}
		if fs.Set(f.Name, value) != nil {
			text := api.Clip(value)
			err = &reading.Error{Text: text, End: len([]rune(text)), Message: environment(f.Name) + " cannot be this",
				Hint: "it is what --" + f.Name + " is: see modeler help serve", Try: environment(f.Name) + "=" + f.DefValue}
		}
	})
	return err
}

// within is a whole number that a flag has, in its bounds.
func (c call) within(flag string, low, high int) (int, error) {
	value := c.value(flag)
	n, err := strconv.Atoi(value)
	if err == nil && n >= low && n <= high {
		return n, nil
	}
	return 0, &reading.Error{Text: value, End: len([]rune(value)), Message: "--" + flag + " cannot be this",
		Hint: fmt.Sprintf("it is a whole number from %d to %d", low, high), Try: fmt.Sprintf("--%s %d", flag, min(max(n, low), high))}
}

func serveUntil(ctx context.Context, c call) int {
	if err := fromEnvironment(c.flags, os.LookupEnv); err != nil {
		return complain(c.errors, err)
	}
	public := c.value("public")
	if u, err := url.Parse(public); public != "" && (err != nil || u.Host == "" || u.Scheme != "http" && u.Scheme != "https") {
		text := api.Clip(public)
		return complain(c.errors, &reading.Error{
			Text: text, End: len([]rune(text)), Message: "this is not the address of a site",
			Hint: "begin with http:// or https://", Try: "--public https://example.org",
		})
	}
	store, err := c.within("store", 0, 4096)
	if err != nil {
		return complain(c.errors, err)
	}
	rate, err := c.within("rate", 0, 1_000_000)
	if err != nil {
		return complain(c.errors, err)
	}
	drain, err := c.within("drain", 0, 60)
	if err != nil {
		return complain(c.errors, err)
	}
	switch how := c.value("log"); how {
	case "text":
		slog.SetDefault(slog.New(slog.NewTextHandler(c.errors, nil)))
	case "json":
		slog.SetDefault(slog.New(slog.NewJSONHandler(c.errors, nil)))
	default:
		text := api.Clip(how)
		return complain(c.errors, &reading.Error{Text: text, End: len([]rune(text)), Message: "a log is not written so",
			Hint: "it is text or json", Try: "--log json"})
	}
	options := api.Options{Public: public, Store: store << 20, Rate: rate, Log: c.value("log-requests") == "true"}
	if store == 0 {
		options.Store = -1
	}
	service := api.New(options)
	on, err := net.Listen("tcp", c.value("listen"))
	if err != nil {
		fmt.Fprintln(c.errors, err)
		return failed
	}
	if address := c.value("metrics"); address != "" {
		stop, err := serveMetrics(address, service.Metrics())
		if err != nil {
			fmt.Fprintln(c.errors, err)
			return failed
		}
		defer stop()
	}
	fmt.Fprintf(c.out, "modeler is at http://%s\n", on.Addr())
	if err := service.Serve(ctx, on, time.Duration(drain)*time.Second); err != nil {
		fmt.Fprintln(c.errors, err)
		return failed
	}
	return done
}

// serveMetrics serves the numbers beside the service, on an address of their own.
func serveMetrics(address string, h http.Handler) (stop func(), err error) {
	on, err := net.Listen("tcp", address)
	if err != nil {
		return nil, err
	}
	mux := http.NewServeMux()
	mux.Handle("GET /metrics", h)
	srv := &http.Server{Handler: mux, ReadHeaderTimeout: 5 * time.Second, WriteTimeout: 15 * time.Second}
	go func() { _ = srv.Serve(on) }() // it ends by stop
	return func() { _ = srv.Close() }, nil
}
