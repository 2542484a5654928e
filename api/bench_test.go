package api

import (
	"net/http"
	"net/http/httptest"
	"strconv"
	"testing"
)

// BenchmarkNeverSeen is a picture that nobody asked for before, over HTTP with gzip.
//
//	go test ./api -run '^$' -bench NeverSeen -benchmem
func BenchmarkNeverSeen(b *testing.B) {
	h := New(Options{})
	n := 0
	for b.Loop() {
		n++
		q := "/v1/picture.svg?problem=" + strconv.Itoa(1000+n%8000) + "-" + strconv.Itoa(1+n*7%999) + "&width=" + strconv.Itoa(700+n%3000)
		r := httptest.NewRequest(http.MethodGet, q, nil)
		r.Header.Set("Accept-Encoding", "gzip")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != http.StatusOK {
			b.Fatal(q, w.Code, w.Body)
		}
	}
}
