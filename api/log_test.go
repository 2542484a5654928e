package api

import (
	"bytes"
	"encoding/json"
	"log/slog"
	"maps"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"
)

// logged is what the log has after a request.
func logged(t *testing.T, o Options, r *http.Request) string {
	t.Helper()
	var log bytes.Buffer
	old := slog.Default()
	slog.SetDefault(slog.New(slog.NewJSONHandler(&log, nil)))
	defer slog.SetDefault(old)
	New(o).ServeHTTP(httptest.NewRecorder(), r)
	return log.String()
}

// A line has the beginning of the problem and nothing about who asked; without being
// told to, no line is written.
func TestLogKnowsNoOne(t *testing.T) {
	problem := strings.Repeat("1%2B", 40) + "2"
	private := map[string]string{
		"X-Forwarded-For": "198.51.100.7", "Forwarded": "for=198.51.100.8", "X-Real-IP": "198.51.100.9", "User-Agent": "agent-of-mine",
		"Referer": "https://school.example/class", "Cookie": "session=secret", "Authorization": "Bearer secret", "Origin": "https://school.example",
	}
	request := func(method, target, body string) *http.Request {
		r := httptest.NewRequest(method, target, strings.NewReader(body))
		r.RemoteAddr = "203.0.113.9:4711"
		for name, value := range private {
			r.Header.Set(name, value)
		}
		return r
	}
	target := "/v1/picture.svg?problem=" + problem + "&secret=mine"
	if got := logged(t, Options{}, request("GET", target, "")); got != "" {
		t.Errorf("nobody asked for a log: %s", got)
	}
	for _, r := range []*http.Request{
		request("GET", target, ""), request("GET", "/nowhere/203.0.113.9?problem="+problem, ""), request("POST", "/v1/lesson.json", "a child's own words"),
		request(strings.Repeat("M", 5000), target, ""),
	} {
		line := logged(t, Options{Log: true}, r)
		var has map[string]any
		if err := json.Unmarshal([]byte(line), &has); err != nil {
			t.Fatalf("not one line of JSON: %v in %s", err, line)
		}
		names := slices.Sorted(maps.Keys(has))
		if want := []string{"bytes", "level", "method", "microseconds", "msg", "problem", "route", "status", "time"}; !slices.Equal(names, want) {
			t.Errorf("the line has %v, want %v", names, want)
		}
		for _, secret := range []string{"203.0.113", "4711", "198.51.100", "agent-of-mine", "school.example", "secret", "mine", "words", "nowhere", strings.Repeat("1+", 25), strings.Repeat("M", 50)} {
			if strings.Contains(line, secret) {
				t.Errorf("the log has %q: %s", secret, line)
			}
		}
	}
}
