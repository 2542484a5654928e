package main

import (
	"context"
	"fmt"
	"net"
	"net/url"
	"os"
	"os/signal"
	"syscall"

	"github.com/spf13/pflag"

	"modeler/api"
	"modeler/arithmetic/reading"
)

var serveCommand = command{
	name: "serve",
	use:  "[--listen ADDRESS] [--public URL]",
	doc:  "serve the page and the pictures over HTTP until interrupted",
	flags: func(fs *pflag.FlagSet) {
		fs.String("listen", "127.0.0.1:8080", "serve on this `address`")
		fs.String("public", "", "the `URL` that others know the service by, for addresses to copy")
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

func serveUntil(ctx context.Context, c call) int {
	public := c.value("public")
	if u, err := url.Parse(public); public != "" && (err != nil || u.Host == "" || u.Scheme != "http" && u.Scheme != "https") {
		text := api.Clip(public)
		return complain(c.errors, &reading.Error{
			Text: text, End: len([]rune(text)), Message: "this is not the address of a site",
			Hint: "begin with http:// or https://", Try: "--public https://example.org",
		})
	}
	on, err := net.Listen("tcp", c.value("listen"))
	if err != nil {
		fmt.Fprintln(c.errors, err)
		return failed
	}
	fmt.Fprintf(c.out, "modeler is at http://%s\n", on.Addr())
	if err := api.Serve(ctx, on, api.NewHandler(public)); err != nil {
		fmt.Fprintln(c.errors, err)
		return failed
	}
	return done
}
