package main

import (
	"errors"
	"fmt"
	"io"
	"math/rand/v2"
	"net/http"
	"net/url"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"time"
)

// load is a number of clients that ask without a pause.
type load struct {
	address  string
	client   *http.Client
	quitting atomic.Bool
	wait     sync.WaitGroup
	lock     sync.Mutex
	count    tally
	ended    []time.Time // of the answers that came
}

// tally is how the requests went.
type tally struct {
	good, hostile int      // requests that got an answer
	refused       int      // no connection
	cut           int      // a connection, and no answer or not all of it
	why           error    // of the last that was cut off
	wrong         []string // answers that should not be
}

func (t tally) String() string {
	return fmt.Sprintf("%d good and %d hostile requests answered, %d without a connection, %d cut off", t.good, t.hostile, t.refused, t.cut)
}

func newLoad(address string, clients int) *load {
	l := &load{address: address, client: &http.Client{Timeout: 30 * time.Second,
		Transport:     &http.Transport{MaxIdleConnsPerHost: clients},
		CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}}
	for range clients {
		l.wait.Go(func() {
			for !l.quitting.Load() {
				l.ask()
			}
		})
	}
	return l
}

// quit lets the clients begin nothing more.
func (l *load) quit() { l.quitting.Store(true) }

// stop waits for the answers that are still to come.
func (l *load) stop() {
	l.quit()
	l.wait.Wait()
	l.client.CloseIdleConnections()
}

func (l *load) tally() tally {
	l.lock.Lock()
	defer l.lock.Unlock()
	return l.count
}

// after is how many answers came whole after a time.
func (l *load) after(at time.Time) (n int) {
	l.lock.Lock()
	defer l.lock.Unlock()
	for _, t := range l.ended {
		if t.After(at) {
			n++
		}
	}
	return n
}

// ask sends one request, in one of four cases a hostile one, and notes how it went.
func (l *load) ask() {
	hostile := rand.N(4) == 0
	r := l.request(hostile)
	resp, err := l.client.Do(r)
	var body []byte
	if err == nil {
		body, err = io.ReadAll(resp.Body)
		resp.Body.Close()
	}
	l.lock.Lock()
	defer l.lock.Unlock()
	switch {
	case errors.Is(err, syscall.ECONNREFUSED):
		l.count.refused++
		return
	case err != nil:
		l.count.cut++
		l.count.why = err
		return
	case hostile:
		l.count.hostile++
	default:
		l.count.good++
	}
	l.ended = append(l.ended, time.Now())
	end := strings.TrimSpace(string(body))
	whole := strings.HasSuffix(r.URL.Path, ".png") || strings.HasSuffix(end, "</svg>") || strings.HasSuffix(end, "}") || strings.HasSuffix(end, "</html>")
	if resp.StatusCode >= 500 && resp.StatusCode != http.StatusNotImplemented || !hostile && (resp.StatusCode != http.StatusOK || !whole || resp.Header.Get("X-Picture-Error") != "") {
		if len(l.count.wrong) < 20 {
			l.count.wrong = append(l.count.wrong, fmt.Sprintf("%s %.200s: status %d, %s, %d bytes", r.Method, r.URL, resp.StatusCode, resp.Header.Get("X-Picture-Error"), len(body)))
		}
	}
}

// bad are values that mean harm.
var bad = []string{
	"<script>alert(1)</script>", "\x00\x1b[31m", "402\r\nX-Evil: 1", "\xff\xfe", "\u202e402", "../../etc/passwd", "1e999", "{{.}}",
	strings.Repeat("(", 150), strings.Repeat("1", 3000), strings.Repeat("9+", 90) + "9", "99999999999 x 99999999999", "1/0",
}

// request makes one up: hostile, or good and mostly never seen before.
func (l *load) request(hostile bool) *http.Request {
	a, b := rand.N(900)+100, rand.N(99)+1
	problem := []string{
		fmt.Sprintf("%d - %d", a, b), fmt.Sprintf("%d + %d", a, b), fmt.Sprintf("%d x %d", b%9+2, a%9+2),
		fmt.Sprintf("%d/12 + %d/8", a%11+1, b%7+1), fmt.Sprintf("%d / %d", (b%9+2)*(a%9+2), b%9+2), "402 - 178",
	}[rand.N(6)]
	path := []string{"/v1/picture.svg", "/v1/picture.svg", "/v1/picture.svg", "/v1/lesson.json", "/lesson", "/v1/picture.png"}[rand.N(6)]
	q := url.Values{"problem": {problem}}
	method, body := http.MethodGet, io.Reader(nil)
	switch {
	case hostile && rand.N(3) == 0 && strings.HasPrefix(path, "/v1/"):
		method, body = http.MethodPost, strings.NewReader(bad[rand.N(len(bad))])
	case hostile:
		q.Set([]string{"problem", "model", "step", "width", "theme", "answer", "nothing"}[rand.N(7)], bad[rand.N(len(bad))])
	case path == "/v1/picture.png":
		q.Set("width", fmt.Sprint(200+rand.N(2000)))
	case path == "/v1/picture.svg":
		q.Set("width", fmt.Sprint(64+rand.N(3900)))
	}
	r, err := http.NewRequest(method, "http://"+l.address+path+"?"+q.Encode(), body)
	if err != nil {
		panic(err) // the address is ours
	}
	return r
}
