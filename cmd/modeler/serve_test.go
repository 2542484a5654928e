package main

import (
	"bytes"
	"context"
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
