package api_test

import (
	"compress/gzip"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"modeler/api"
)

// origin is the service behind a cache, which counts what reaches it and can be
// told how long its answers may be kept.
type origin struct {
	handler     http.Handler
	asked, held atomic.Int32 // requests, and those answered with 304
	life        atomic.Value // string
}

func (o *origin) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	o.asked.Add(1)
	rec := httptest.NewRecorder()
	o.handler.ServeHTTP(rec, r)
	if rec.Code == http.StatusNotModified {
		o.held.Add(1)
	}
	for name, values := range rec.Header() {
		w.Header()[name] = values
	}
	if life, _ := o.life.Load().(string); life != "" {
		w.Header().Set("Cache-Control", life)
	}
	w.WriteHeader(rec.Code)
	_, _ = w.Write(rec.Body.Bytes())
}

func freePort(t *testing.T) string {
	t.Helper()
	on, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer on.Close()
	return on.Addr().String()
}

// nginx runs the shipped configuration in front of an address.
func nginx(t *testing.T, behind string) (address string) {
	t.Helper()
	program, err := exec.LookPath("nginx")
	if err != nil {
		t.Fatalf("%v; .ci/install gets it", err)
	}
	site, err := os.ReadFile("deploy/nginx.conf")
	if err != nil {
		t.Fatal(err)
	}
	dir, address := t.TempDir(), freePort(t)
	text := strings.NewReplacer("listen 80;", "listen "+address+";", "127.0.0.1:8080", behind, "/var/cache/nginx/modeler", dir+"/cache").Replace(string(site))
	for _, changed := range []string{"listen " + address, "server " + behind, dir + "/cache"} {
		if !strings.Contains(text, changed) {
			t.Fatalf("the configuration has no place for %q", changed)
		}
	}
	// Outside the site: what lets it run here, without rights and in a folder of its own.
	whole := fmt.Sprintf(`daemon off; pid %[1]s/pid; error_log %[1]s/log warn; worker_processes 1;
events { worker_connections 256; }
http { access_log off; client_body_temp_path %[1]s/a; proxy_temp_path %[1]s/b; fastcgi_temp_path %[1]s/c; uwsgi_temp_path %[1]s/d; scgi_temp_path %[1]s/e;
%[2]s }`, dir, text)
	conf := filepath.Join(dir, "nginx.conf")
	if err := os.WriteFile(conf, []byte(whole), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(program, "-e", dir+"/log", "-c", conf)
	if os.Getuid() == 0 {
		cmd.Args = append(cmd.Args, "-g", "user root;")
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = cmd.Process.Signal(os.Interrupt); _ = cmd.Wait() })
	for range 100 {
		if c, err := net.Dial("tcp", address); err == nil {
			c.Close()
			return address
		}
		time.Sleep(20 * time.Millisecond)
	}
	log, _ := os.ReadFile(dir + "/log")
	t.Fatalf("nginx does not listen: %s", log)
	return ""
}

// through asks by way of nginx and gives the status, what the cache did and the body.
func through(t *testing.T, address, target, accept string) (status int, cache, text string) {
	t.Helper()
	r, err := http.NewRequest("GET", "http://"+address+target, nil)
	if err != nil {
		t.Fatal(err)
	}
	r.Header.Set("Accept-Encoding", accept)
	resp, err := (&http.Transport{}).RoundTrip(r)
	if err != nil {
		t.Error(err)
		return 0, "", ""
	}
	defer resp.Body.Close()
	var body io.Reader = resp.Body
	if resp.Header.Get("Content-Encoding") == "gzip" {
		if body, err = gzip.NewReader(body); err != nil {
			t.Error(err)
			return
		}
	}
	b, err := io.ReadAll(body)
	if err != nil {
		t.Error(err)
	}
	return resp.StatusCode, resp.Header.Get("X-Cache"), string(b)
}

// A real cache with the shipped configuration: each picture is asked for once
// however many want it, a held one is asked about and not sent again, errors are
// kept for a minute or not at all, and a restart of the service is not noticed.
func TestBehindNginx(t *testing.T) {
	o := &origin{handler: api.New(api.Options{})}
	back := httptest.NewServer(o)
	behind := strings.TrimPrefix(back.URL, "http://")
	address := nginx(t, behind)
	const target = "/v1/picture.svg?problem=402-178"
	want := get(t, target)

	var wait sync.WaitGroup
	for i := range 40 {
		accept := []string{"gzip, deflate, br", "gzip", "br, gzip;q=0.8", "zstd, gzip"}[i%4]
		wait.Go(func() {
			if status, _, text := through(t, address, target, accept); status != 200 || text != want {
				t.Errorf("with %q: %d, %d bytes", accept, status, len(text))
			}
		})
	}
	wait.Wait()
	if n := o.asked.Load(); n != 1 {
		t.Errorf("40 requests for one picture were %d at the origin", n)
	}
	for _, accept := range []string{"identity", "br", "gzip;q=0"} {
		if _, _, text := through(t, address, target, accept); text != want {
			t.Errorf("with %q: another picture", accept)
		}
	}
	if n := o.asked.Load(); n != 2 {
		t.Errorf("two forms of one picture were %d requests at the origin", n)
	}

	// What is held is asked about when its time is over.
	o.life.Store("public, max-age=1")
	o.asked.Store(0)
	through(t, address, "/v1/picture.svg?problem=7x8", "gzip")
	time.Sleep(2200 * time.Millisecond) // nginx counts whole seconds
	if _, cache, text := through(t, address, "/v1/picture.svg?problem=7x8", "gzip"); cache != "STALE" || text != get(t, "/v1/picture.svg?problem=7x8") {
		t.Errorf("an old picture is %s; it should be served while it is asked about", cache)
	}
	for i := 0; i < 100 && o.held.Load() == 0; i++ {
		time.Sleep(20 * time.Millisecond)
	}
	if o.held.Load() != 1 || o.asked.Load() != 2 {
		t.Errorf("%d requests, %d answered with 304; want 2 and 1", o.asked.Load(), o.held.Load())
	}
	o.life.Store("")

	// A picture of an error is kept for its minute; what is no picture of it, too; a
	// refusal for want of time is not.
	o.asked.Store(0)
	for range 3 {
		if status, _, text := through(t, address, "/v1/picture.svg?problem=ducks", "gzip"); status != 200 || !strings.Contains(text, "<svg") {
			t.Errorf("a wrong problem: %d", status)
		}
	}
	if n := o.asked.Load(); n != 1 {
		t.Errorf("3 requests for a wrong problem were %d at the origin", n)
	}
	o.life.Store("no-store")
	o.asked.Store(0)
	for range 3 {
		through(t, address, "/v1/lesson.json?problem=9x9", "gzip")
	}
	if n := o.asked.Load(); n != 3 {
		t.Errorf("3 requests for what may not be kept were %d at the origin", n)
	}
	o.life.Store("")

	// The service goes away and comes back: what is kept goes on being served, also
	// when its time is over.
	back.Close()
	for _, target := range []string{target, "/v1/picture.svg?problem=7x8"} {
		if status, cache, _ := through(t, address, target, "gzip"); status != 200 {
			t.Errorf("%s, with nothing behind: %d, %s", target, status, cache)
		}
	}
	on, err := net.Listen("tcp", behind)
	if err != nil {
		t.Fatal(err)
	}
	again := &httptest.Server{Listener: on, Config: &http.Server{Handler: o}}
	again.Start()
	defer again.Close()
	if status, _, text := through(t, address, "/v1/picture.svg?problem=6x7", "gzip"); status != 200 || !strings.Contains(text, "42") {
		t.Errorf("after a restart: %d", status)
	}
}
