package api

import (
	"bufio"
	"encoding/json"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"modeler/arithmetic/reading"
)

// Every bound on a request holds at the bound, and one beyond is refused with the
// status that is documented.
func TestBoundsOfARequest(t *testing.T) {
	h := New(Options{})
	const ask = "/v1/picture.svg?errors=status&problem="
	pad := func(s string, n int) string { return s + strings.Repeat(" ", n-len(s)) }
	address := func(n int) string {
		q := "errors=status&problem=7x8&more="
		return "/v1/picture.svg?" + q + strings.Repeat("a", n-len(q))
	}
	for _, c := range []struct {
		what, target, kind, body string
		status                   int
	}{
		{"query", address(longestQuery), "", "", 200},
		{"query", address(longestQuery + 1), "", "", 414},
		{"problem", ask + "7" + strings.Repeat("+", reading.MaxText-3) + "x8", "", "", 200},
		{"problem", ask + "7" + strings.Repeat("+", reading.MaxText-2) + "x8", "", "", 414},
		{"width, low", ask + "7x8&width=" + strconv.Itoa(MinWidth), "", "", 200},
		{"width, low", ask + "7x8&width=" + strconv.Itoa(MinWidth-1), "", "", 400},
		{"width, high", ask + "7x8&width=" + strconv.Itoa(MaxWidth), "", "", 200},
		{"width, high", ask + "7x8&width=" + strconv.Itoa(MaxWidth+1), "", "", 400},
		{"scale", ask + "7x8&scale=" + strconv.Itoa(MaxScale), "", "", 200},
		{"scale", ask + "7x8&scale=" + strconv.Itoa(MaxScale+1), "", "", 400},
		{"step, low", ask + "402-178&step=1", "", "", 200},
		{"step, low", ask + "402-178&step=0", "", "", 400},
		{"step, read", ask + "402-178&step=1000", "", "", 422},
		{"step, read", ask + "402-178&step=1001", "", "", 400},
		{"whole number", ask + strconv.Itoa(reading.MaxWhole) + "-1", "", "", 200},
		{"whole number", ask + strconv.Itoa(reading.MaxWhole+1) + "-1", "", "", 400},
		{"body", "/v1/picture.svg", "application/json", pad(`{"problem":"7 x 8"}`, longestBody), 200},
		{"body", "/v1/picture.svg", "application/json", pad(`{"problem":"7 x 8"}`, longestBody+1), 413},
	} {
		r := httptest.NewRequest(http.MethodGet, c.target, nil)
		if c.body != "" {
			r = httptest.NewRequest(http.MethodPost, c.target, strings.NewReader(c.body))
			r.Header.Set("Content-Type", c.kind)
		}
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != c.status {
			t.Errorf("%s, %.80s: got status %d, want %d: %.200s", c.what, c.target, w.Code, c.status, w.Body)
		}
	}
}

// The last step of a lesson is there, and the one after it is not.
func TestBoundOfTheSteps(t *testing.T) {
	h := New(Options{})
	get := func(target string) *httptest.ResponseRecorder {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, target, nil))
		return w
	}
	var d Document
	if err := json.Unmarshal(get("/v1/lesson.json?problem=402-178").Body.Bytes(), &d); err != nil {
		t.Fatal(err)
	}
	for step, status := range map[int]int{len(d.Steps): 200, len(d.Steps) + 1: 422} {
		if got := get("/v1/picture.svg?errors=status&problem=402-178&step=" + strconv.Itoa(step)).Code; got != status {
			t.Errorf("step %d of %d: got status %d, want %d", step, len(d.Steps), got, status)
		}
	}
}

// served runs the service as it is run for others, until the test ends.
func served(t *testing.T) (address string) {
	t.Helper()
	on, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ended := make(chan error, 1)
	go func() { ended <- New(Options{}).Serve(t.Context(), on, 0) }()
	t.Cleanup(func() {
		if err := <-ended; err != nil {
			t.Error(err)
		}
	})
	return on.Addr().String()
}

// wire sends bytes as they are and reads what comes back.
func wire(t *testing.T, address, request string) (status int, text string) {
	t.Helper()
	c, err := net.Dial("tcp", address)
	if err != nil {
		t.Fatal(err)
	}
	defer c.Close()
	_ = c.SetDeadline(time.Now().Add(20 * time.Second))
	_, _ = io.WriteString(c, request) // it may be cut off while it writes
	resp, err := http.ReadResponse(bufio.NewReader(c), nil)
	if err != nil {
		return 0, ""
	}
	defer resp.Body.Close()
	b, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Errorf("%.60q: %v", request, err)
	}
	return resp.StatusCode, string(b)
}

// What is no HTTP, or too much of it, is refused before it comes to any route; the
// statuses are those of RFC 9110 and RFC 6585, 5.
func TestBoundsOnTheWire(t *testing.T) {
	address := served(t)
	const line, host = "GET /v1/picture.svg?problem=7x8 HTTP/1.1\r\n", "Host: example.org\r\nConnection: close\r\n"
	header := func(n int) string { return "X: " + strings.Repeat("a", n) + "\r\n" }
	for _, c := range []struct {
		what, request string
		status        int
	}{
		{"good", line + host + "\r\n", 200},
		{"headers at the bound", line + host + header(headerBytes-len(line)-len(host)-len(header(0))-2) + "\r\n", 200},
		// The server reads 4 KiB more than the bound before it refuses.
		{"headers beyond", line + host + header(headerBytes+4<<10) + "\r\n", 431},
		{"no host", line + "\r\n", 400},
		{"two hosts", line + host + "Host: evil.example\r\n\r\n", 400},
		{"a host that is none", line + "Host: a\x00b\r\n\r\n", 400},
		{"NUL in a header", line + host + "X: a\x00b\r\n\r\n", 400},
		{"NUL in the path", "GET /\x00 HTTP/1.1\r\n" + host + "\r\n", 400},
		{"a broken escape in the path", "GET /%zz HTTP/1.1\r\n" + host + "\r\n", 400},
		{"two lengths", "POST /v1/lesson.json HTTP/1.1\r\n" + host + "Content-Length: 1\r\nContent-Length: 5\r\n\r\n7 x 8", 400},
		{"a length that is none", "POST /v1/lesson.json HTTP/1.1\r\n" + host + "Content-Length: -1\r\n\r\n", 400},
		{"an unknown coding", "POST /v1/lesson.json HTTP/1.1\r\n" + host + "Transfer-Encoding: gzip\r\n\r\n", 501},
		{"a version that is none", "GET / HTTP/9.9\r\n" + host + "\r\n", 505},
		{"no HTTP", "hello\r\n\r\n", 400},
		{"chunks", "POST /v1/lesson.json HTTP/1.1\r\n" + host + "Transfer-Encoding: chunked\r\n\r\n5\r\n7 x 8\r\n0\r\n\r\n", 200},
	} {
		status, text := wire(t, address, c.request)
		if status != c.status || strings.Contains(text, "goroutine") {
			t.Errorf("%s: got status %d, want %d: %.100s", c.what, status, c.status, text)
		}
	}
}

// Who says nothing more is cut off when the time for the headers or the body is over.
func TestASlowClientIsCutOff(t *testing.T) {
	t.Parallel()
	address := served(t)
	for what, c := range map[string]struct {
		request string
		time    time.Duration
	}{
		"headers": {"GET / HTTP/1.1\r\nHost: exam", headerTime},
		"body":    {"POST /v1/lesson.json HTTP/1.1\r\nHost: example.org\r\nConnection: close\r\nContent-Length: 100\r\n\r\n7 x", readTime},
	} {
		t.Run(what, func(t *testing.T) {
			t.Parallel()
			began := time.Now()
			status, _ := wire(t, address, c.request)
			if took := time.Since(began); took < c.time-time.Second || took > c.time+4*time.Second || status == 200 {
				t.Errorf("status %d after %v, want none or an error after %v", status, took, c.time)
			}
		})
	}
}

// A PNG that finds no place to be drawn in is refused, a picture of an error too.
func TestNoMorePNGThanThereArePlaces(t *testing.T) {
	t.Parallel()
	s := New(Options{})
	for range cap(s.drawing) {
		if _, ok := s.turn(); !ok {
			t.Fatal("there is no place")
		}
	}
	var wait sync.WaitGroup
	for _, target := range []string{"/v1/picture.png?problem=7x8", "/v1/picture.png?problem=ducks&width=4000"} {
		wait.Go(func() {
			w := httptest.NewRecorder()
			s.ServeHTTP(w, httptest.NewRequest(http.MethodGet, target, nil))
			if w.Code != 503 || w.Header().Get("Retry-After") == "" || w.Header().Get("Cache-Control") != "no-store" {
				t.Errorf("%s: got status %d, Retry-After %q, %q", target, w.Code, w.Header().Get("Retry-After"), w.Header().Get("Cache-Control"))
			}
		})
	}
	wait.Wait()
}
