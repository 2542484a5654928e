package api

import (
	"errors"
	"net/http"
	"net/http/httptest"
	"strconv"
	"sync"
	"sync/atomic"
	"testing"
)

func TestStoreKeepsNoMoreThanItMay(t *testing.T) {
	const most = 64 << 10
	s := newStore(most)
	for i := range 1000 {
		key := strconv.Itoa(i)
		if _, err := s.get(key, func() (*answer, error) { return &answer{body: make([]byte, 900)}, nil }); err != nil {
			t.Fatal(err)
		}
		s.alias("another "+key, key)
		if _, bytes := s.size(); bytes > most {
			t.Fatalf("%d bytes are kept", bytes)
		}
	}
	if s.find("999") == nil || s.find("another 999") != s.find("999") {
		t.Error("the last answer is not kept, or not under its other key")
	}
	if s.find("0") != nil || s.find("another 0") != nil {
		t.Error("the first answer is still kept")
	}
	if entries, bytes := s.size(); entries < 20 || bytes < most/2 {
		t.Errorf("only %d entries of %d bytes are kept", entries, bytes)
	}
}

func TestStoreMakesOnceForMany(t *testing.T) {
	s := newStore(1 << 20)
	var made atomic.Int32
	start, wait := make(chan struct{}), sync.WaitGroup{}
	for range 50 {
		wait.Go(func() {
			<-start
			a, err := s.get("key", func() (*answer, error) { made.Add(1); return &answer{body: []byte("once")}, nil })
			if err != nil || string(a.body) != "once" {
				t.Errorf("got %v, %v", a, err)
			}
		})
	}
	close(start)
	wait.Wait()
	if made.Load() != 1 {
		t.Errorf("made %d times", made.Load())
	}
}

func TestStoreKeepsNoErrorAndNothingHuge(t *testing.T) {
	s := newStore(8 << 10)
	if _, err := s.get("bad", func() (*answer, error) { return nil, errors.New("no") }); err == nil || s.find("bad") != nil {
		t.Error("an error is kept")
	}
	a, err := s.get("huge", func() (*answer, error) { return &answer{body: make([]byte, 9<<10)}, nil })
	if err != nil || len(a.body) != 9<<10 || s.find("huge") != nil {
		t.Error("a huge answer is not given, or is kept")
	}
}

// A client that has a picture is told so though nothing was drawn: by reading the
// problem the first time, and without that the next. One that has it not gets it.
func TestWhatAClientHoldsIsNotDrawn(t *testing.T) {
	for _, format := range []string{"svg", "png", "txt"} {
		target := "/v1/picture." + format + "?problem=402-178"
		ask := func(s *Service, accept, have string) *httptest.ResponseRecorder {
			r := httptest.NewRequest(http.MethodGet, target, nil)
			r.Header.Set("Accept-Encoding", accept)
			if have != "" {
				r.Header.Set("If-None-Match", have)
			}
			w := httptest.NewRecorder()
			s.ServeHTTP(w, r)
			return w
		}
		first := New(Options{})
		tags := map[string]string{}
		for _, accept := range []string{"gzip", "identity"} {
			tags[accept] = ask(first, accept, "").Header().Get("ETag")
		}
		s := New(Options{})
		for range 2 {
			for _, accept := range []string{"gzip", "identity"} {
				w := ask(s, accept, tags[accept])
				if w.Code != 304 || w.Header().Get("ETag") != tags[accept] || w.Body.Len() > 0 {
					t.Errorf("%s, %s: status %d, tag %s, want 304, %s", target, accept, w.Code, w.Header().Get("ETag"), tags[accept])
				}
			}
		}
		if a := s.store.find(target); a != nil && format != "txt" { // these words are too few to be packed
			t.Errorf("%s was made for one who has it", target)
		}
		for _, have := range []string{`"other"`, "", `"other-gzip"`} {
			if w := ask(s, "gzip", have); w.Code != 200 || w.Body.Len() == 0 {
				t.Errorf("%s for one who has %s: status %d, %d bytes", target, have, w.Code, w.Body.Len())
			}
		}
	}
}
