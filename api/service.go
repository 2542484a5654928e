package api

import (
	"net/http"
	"runtime"
	"sync/atomic"
	"time"
)

// Options are what a service can be told. The zero value serves.
type Options struct {
	Public string // the address that the service is known by, such as https://example.org; "" goes by the request
	Store  int    // bytes of answers to keep; 0 is [UsualStore], less than 0 keeps none
	Rate   int    // requests a second that one client may make; 0 is any number
	Log    bool   // write a line for every request
}

// UsualStore is how many bytes of answers are kept unless told: the whole program then
// stays under 80 MB of memory, PNG aside.
const UsualStore = 16 << 20

// Service is the handler of all routes, and what it shares.
type Service struct {
	http.Handler
	store   *store
	drawing chan struct{} // a place for each PNG that is being drawn
	leaving atomic.Bool
	meter   *meter
}

// New makes a service.
func New(o Options) *Service {
	switch {
	case o.Store == 0:
		o.Store = UsualStore
	case o.Store < 0:
		o.Store = 0
	}
	s := &Service{store: newStore(o.Store), drawing: make(chan struct{}, min(runtime.GOMAXPROCS(0), mostDrawn))}
	s.meter = newMeter(s.store)
	pages := newSite(o.Public)
	h := open(limited(o.Rate, router(s.routes(pages), pages.missing)))
	s.Handler = s.metered(o.Log, guarded(recovered(h)))
	return s
}

func (s *Service) routes(pages *site) []route {
	return []route{
		{"/v1/picture.svg", s.picture("svg"), true},
		{"/v1/picture.png", s.picture("png"), true},
		{"/v1/picture.txt", s.picture("txt"), true},
		{"/v1/lesson.json", s.lesson, true},
		{"/v1/models.json", modelList, false},
		{"/openapi.json", describe, false},
		{"/oembed", pages.oembed, false},
		{"/modeler-picture.js", component, false},
		{"/healthz", health, false},
		{"/readyz", s.ready, false},
		{"/", pages.ask, false},
		{"/lesson", pages.lesson, false},
		{"/claim", pages.claim, false},
		{"/claim.js", pages.script, false},
		{"/lesson.js", pages.script, false},
		{"/ask.js", pages.script, false},
		{"/copy.js", pages.script, false},
		{"/pictures", pages.gallery, false},
		{"/tools", pages.tools, false},
		{"/style.css", pages.style, false},
		{"/icon.svg", pages.icon, false},
	}
}

// Leave says that the service takes no more work soon: /readyz answers 503.
func (s *Service) Leave() { s.leaving.Store(true) }

// ready says whether to send requests here.
func (s *Service) ready(w http.ResponseWriter, r *http.Request) {
	a := answer{kind: "application/json", body: []byte("{\"status\":\"ready\"}\n"), life: never, policy: sealed}
	if s.leaving.Load() {
		a.status, a.body = http.StatusServiceUnavailable, []byte("{\"status\":\"leaving\"}\n")
	}
	a.write(w, r)
}

// mostDrawn is how many PNG are drawn at once: the largest takes about 100 MB of memory
// while it is.
const mostDrawn = 2

// patience is how long a PNG waits for its turn to be drawn.
const patience = 3 * time.Second

// turn waits for a place to draw in; done gives it back.
func (s *Service) turn() (done func(), ok bool) {
	select {
	case s.drawing <- struct{}{}:
	case <-time.After(patience):
		return nil, false
	}
	return func() { <-s.drawing }, true
}

// sendKept sends the answer that is kept for this very request, if there is one.
// What comes with POST is not in the address, so nothing is kept for it.
func (s *Service) sendKept(w http.ResponseWriter, r *http.Request) (asked string, sent bool) {
	asked = r.URL.Path + "?" + r.URL.RawQuery
	if r.Method == http.MethodPost {
		return asked, false
	}
	if a := s.store.find(asked); a != nil {
		a.write(w, r)
		return asked, true
	}
	if a := s.store.holds(asked); a != nil && a.heldBy(r) {
		a.write(w, r)
		return asked, true
	}
	return asked, false
}

// send sends an answer, and lets the request lead to it from now on where it is
// kept under the key.
func (s *Service) send(w http.ResponseWriter, r *http.Request, a *answer, asked, key string) {
	switch {
	case r.Method == http.MethodPost:
		posted := *a
		posted.life = never // what is kept goes by the address, which does not have it all
		a = &posted
	case a.held:
		s.store.hold(asked, a)
	default:
		s.store.alias(asked, key)
	}
	a.write(w, r)
}
