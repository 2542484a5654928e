package api

import (
	"net/http"
	"slices"
	"strconv"
	"strings"
)

// answer is one response, whole.
type answer struct {
	status   int    // 0 is 200
	kind     string // media type
	body     []byte
	packed   []byte // the body as gzip; nil where it is only sent as it is
	tag      string // strong entity tag of the body as it is, with its quotes; "" for none
	held     bool   // for a client that has it: there is no body
	life     string // Cache-Control
	location string // Content-Location: the canonical URL; "" for none
	policy   string // Content-Security-Policy
}

// How long what may be kept. A picture or a lesson is the same for the same URL
// until the program changes, and then its tag changes; an error is soon mended.
const (
	lasting = "public, max-age=86400, stale-while-revalidate=604800, stale-if-error=2592000"
	page    = "public, max-age=300"
	brief   = "public, max-age=60"
	forever = "public, max-age=31536000, immutable"
	never   = "no-store"
)

// Content security policies.
const (
	sealed = "default-src 'none'; sandbox"
	own    = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)

// write sends the answer, or 304 when the client has it already (RFC 9110,
// 13.1.2 and 15.4.5). Each encoding of it has a strong tag of its own (8.8.3).
func (a *answer) write(w http.ResponseWriter, r *http.Request) {
	h := w.Header()
	h.Set("Cache-Control", a.life)
	h.Set("Content-Security-Policy", a.policy)
	if a.location != "" {
		h.Set("Content-Location", a.location)
	}
	body, tag := a.body, a.tag
	if a.kind != "image/png" {
		h.Set("Vary", "Accept-Encoding")
		switch {
		case !takesGzip(r):
		case a.held:
			tag = packedTag(a.tag)
		default:
			if a.pack(); a.packed != nil {
				body, tag = a.packed, packedTag(a.tag)
			}
		}
	}
	if tag != "" {
		h.Set("ETag", tag)
		if matches(r.Header.Values("If-None-Match"), tag) {
			w.WriteHeader(http.StatusNotModified)
			return
		}
	}
	if len(body) == len(a.packed) && a.packed != nil {
		h.Set("Content-Encoding", "gzip")
	}
	h.Set("Content-Type", a.kind)
	h.Set("Content-Length", strconv.Itoa(len(body)))
	w.WriteHeader(max(a.status, http.StatusOK))
	if r.Method != http.MethodHead {
		// A client that hangs up early is no error of ours.
		_, _ = w.Write(body)
	}
}

// heldBy reports whether a client has the answer in the encoding that it would be
// sent, going by the tag alone. A star also matches what was never made, so it is no
// proof; nor is the tag of a body that turns out too small to be packed.
func (a *answer) heldBy(r *http.Request) bool {
	have, tag := r.Header.Values("If-None-Match"), a.tag
	if a.kind != "image/png" && takesGzip(r) {
		tag = packedTag(tag)
	}
	return !slices.Contains(have, "*") && matches(have, tag)
}

// packedTag is the tag of a body as gzip.
func packedTag(tag string) string {
	if tag == "" {
		return ""
	}
	return strings.TrimSuffix(tag, `"`) + `-gzip"`
}

// matches reports whether one of the tags of If-None-Match is the tag, by the
// weak comparison that RFC 9110, 13.1.2 asks for.
func matches(lines []string, tag string) bool {
	for _, line := range lines {
		for one := range strings.SplitSeq(line, ",") {
			one = strings.TrimSpace(one)
			if one == "*" || strings.TrimPrefix(one, "W/") == tag {
				return true
			}
		}
	}
	return false
}

// embedded reports whether pages of other places use an address.
func embedded(path string) bool {
	return strings.HasPrefix(path, "/v1/") || path == "/openapi.json" || path == "/oembed" || path == "/modeler-picture.js"
}

// open lets pages of other places use all that is meant for them, errors and what a
// browser asks beforehand included (Fetch standard, CORS protocol).
func open(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if head := w.Header(); embedded(r.URL.Path) {
			head.Set("Access-Control-Allow-Origin", "*")
			head.Set("Access-Control-Expose-Headers", "Content-Location, ETag, Retry-After, X-Picture-Error")
			head.Set("Cross-Origin-Resource-Policy", "cross-origin")
			if r.Method == http.MethodOptions {
				head.Set("Access-Control-Allow-Methods", "GET, HEAD, POST, OPTIONS")
				head.Set("Access-Control-Allow-Headers", "*")
				head.Set("Access-Control-Max-Age", "86400")
			}
		}
		h.ServeHTTP(w, r)
	})
}
