package api

import (
	"math"
	"net"
	"net/http"
	"strconv"
	"sync"

	"github.com/hashicorp/golang-lru/v2/simplelru"
	"golang.org/x/time/rate"

	"modeler/arithmetic/reading"
)

// mostClients is how many clients are told apart; the one that has been quiet the
// longest is forgotten first.
const mostClients = 16 << 10

// limited lets each client make so many requests a second, and twice as many at
// once; 0 is any number. A client is the address that a connection comes from: in
// front of a service that is limited there must be no proxy that all come through.
func limited(most int, h http.Handler) http.Handler {
	if most <= 0 {
		return h
	}
	var lock sync.Mutex
	clients, err := simplelru.NewLRU[string, *rate.Limiter](mostClients, nil)
	if err != nil {
		panic("api: " + err.Error()) // the size is positive
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		who, _, err := net.SplitHostPort(r.RemoteAddr)
		if err != nil {
			who = r.RemoteAddr
		}
		lock.Lock()
		client, known := clients.Get(who)
		if !known {
			client = rate.NewLimiter(rate.Limit(most), 2*most)
			clients.Add(who, client)
		}
		turn := client.Reserve()
		wait := turn.Delay()
		if wait > 0 {
			turn.Cancel()
		}
		lock.Unlock()
		if wait == 0 {
			h.ServeHTTP(w, r)
			return
		}
		seconds := strconv.Itoa(int(math.Ceil(wait.Seconds())))
		w.Header().Set("Retry-After", seconds)
		t := &Trouble{Status: http.StatusTooManyRequests, reason: reading.Error{
			Code: "too-many", Message: "there were too many requests from here", Hint: "ask again in " + seconds + " s"}}
		t.refuse(w, r)
	})
}
