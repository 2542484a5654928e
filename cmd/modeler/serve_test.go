package main

import (
	"bytes"
	"context"
	"log/slog"
	"strings"
	"testing"

	"github.com/spf13/pflag"
)

// served runs serve until a context that has ended.
func served(t *testing.T, environment map[string]string, args ...string) (status int, out, errors string) {
	t.Helper()
	for name, value := range environment {
		t.Setenv(name, value)
	}
	fs := pflag.NewFlagSet("serve", pflag.ContinueOnError)
	serveCommand.flags(fs)
	if err := fs.Parse(append([]string{"--listen", "127.0.0.1:0"}, args...)); err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	var o, e bytes.Buffer
	status = serveUntil(ctx, call{"", fs, &o, &e})
	return status, o.String(), e.String()
}

func TestServeSettings(t *testing.T) {
	for _, c := range []struct {
		name        string
		environment map[string]string
		args        []string
		says        string // "" when it serves
	}{
		{"flags", nil, []string{"--store", "1", "--rate", "10", "--log", "json", "--log-requests", "--metrics", "127.0.0.1:0"}, ""},
		{"environment", map[string]string{"MODELER_STORE": "0", "MODELER_LOG_REQUESTS": "true"}, nil, ""},
		{"too large", nil, []string{"--store", "9999"}, "from 0 to 4096"},
		{"too large in the environment", map[string]string{"MODELER_RATE": "-1"}, nil, "from 0 to 1000000"},
		{"no number in the environment", map[string]string{"MODELER_DRAIN": "soon"}, nil, "MODELER_DRAIN=0"},
		{"the command line goes first", map[string]string{"MODELER_STORE": "9999"}, []string{"--store", "8"}, ""},
		{"log", nil, []string{"--log", "xml"}, "--log json"},
		{"public", nil, []string{"--public", "example.org"}, "--public https://example.org"},
	} {
		t.Run(c.name, func(t *testing.T) {
			status, out, errors := served(t, c.environment, c.args...)
			if c.says == "" && (status != done || !strings.Contains(out, "modeler is at http://127.0.0.1:")) {
				t.Errorf("status %d, %s%s", status, out, errors)
			}
			if c.says != "" && (status != unreadable || !strings.Contains(errors, c.says)) {
				t.Errorf("status %d, %s; want %q", status, errors, c.says)
			}
		})
	}
}

// Every flag can be set in the environment, to the same effect; modeler help serve
// says each.
func TestEveryFlagHasItsPlaceInTheEnvironment(t *testing.T) {
	values := map[string]string{
		"listen": "127.0.0.1:9", "public": "https://example.org", "metrics": "127.0.0.1:10", "store": "7", "rate": "8", "drain": "9", "log": "json", "log-requests": "true",
	}
	flags := func() *pflag.FlagSet {
		fs := pflag.NewFlagSet("serve", pflag.ContinueOnError)
		serveCommand.flags(fs)
		return fs
	}
	help := serveCommand.help()
	flags().VisitAll(func(f *pflag.Flag) {
		value, has := values[f.Name]
		if !has || value == f.DefValue {
			t.Errorf("--%s is not tried with a value that is not the usual one", f.Name)
			return
		}
		byFlag, byEnvironment := flags(), flags()
		if err := byFlag.Parse([]string{"--" + f.Name + "=" + value}); err != nil {
			t.Fatal(err)
		}
		name := "MODELER_" + strings.ToUpper(strings.ReplaceAll(f.Name, "-", "_"))
		lookup := func(asked string) (string, bool) { return value, asked == name }
		if err := fromEnvironment(byEnvironment, lookup); err != nil {
			t.Fatal(err)
		}
		byFlag.VisitAll(func(a *pflag.Flag) {
			if b := byEnvironment.Lookup(a.Name); a.Value.String() != b.Value.String() {
				t.Errorf("with %s, --%s is %q by the flag and %q by the environment", f.Name, a.Name, a.Value, b.Value)
			}
		})
		if !strings.Contains(help, "--"+f.Name) || f.Usage == "" {
			t.Errorf("the help lacks --%s", f.Name)
		}
	})
}

// The log is written as it is asked for: as text, or a JSON object on each line.
func TestTheLogIsWrittenAsAskedFor(t *testing.T) {
	old := slog.Default()
	defer slog.SetDefault(old)
	for how, want := range map[string]string{"text": `level=INFO msg=hello`, "json": `"level":"INFO","msg":"hello"}`} {
		fs := pflag.NewFlagSet("serve", pflag.ContinueOnError)
		serveCommand.flags(fs)
		if err := fs.Parse([]string{"--listen", "127.0.0.1:0", "--log", how}); err != nil {
			t.Fatal(err)
		}
		ctx, cancel := context.WithCancel(context.Background())
		cancel()
		var out, errors bytes.Buffer
		if status := serveUntil(ctx, call{"", fs, &out, &errors}); status != done {
			t.Fatalf("status %d: %s", status, &errors)
		}
		slog.Info("hello")
		if !strings.Contains(errors.String(), want) {
			t.Errorf("--log %s writes %s", how, &errors)
		}
	}
}
