package api

import (
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"
)

// The service is stopped three times while it is busy. Every request that was sent
// before it stopped taking them in has its whole answer, and no goroutine is left. The
// long form is deploy/measure/faults.
func TestStopsUnderLoadDropNothing(t *testing.T) {
	const drain, notice, clients = time.Second, 700 * time.Millisecond, 6
	before := runtime.NumGoroutine()
	for stop := range 3 {
		on, err := net.Listen("tcp", "127.0.0.1:0")
		if err != nil {
			t.Fatal(err)
		}
		ctx, leave := context.WithCancel(t.Context())
		ended := make(chan error, 1)
		go func() { ended <- New(Options{}).Serve(ctx, on, drain) }()

		client := &http.Client{Transport: &http.Transport{MaxIdleConnsPerHost: clients}}
		var quit atomic.Bool
		var wait sync.WaitGroup
		var answers atomic.Int32
		for n := range clients {
			wait.Go(func() {
				for i := 0; !quit.Load(); i++ {
					format := []string{"svg", "png", "txt"}[i%3]
					target := fmt.Sprintf("http://%s/v1/picture.%s?problem=%d-%d&width=%d", on.Addr(), format, 200+i%700, 1+n, 200+i)
					resp, err := client.Get(target)
					if err != nil {
						t.Errorf("stop %d: %v", stop, err)
						return
					}
					b, err := io.ReadAll(resp.Body)
					resp.Body.Close()
					if err != nil || resp.StatusCode != 200 || format == "svg" && !strings.HasSuffix(string(b), "</svg>\n") {
						t.Errorf("stop %d, %s: status %d, %d bytes, %v", stop, target, resp.StatusCode, len(b), err)
					}
					answers.Add(1)
				}
			})
		}
		leave()
		time.Sleep(notice)
		quit.Store(true)
		if err := <-ended; err != nil {
			t.Errorf("stop %d: %v", stop, err)
		}
		wait.Wait()
		client.CloseIdleConnections()
		if answers.Load() < clients {
			t.Errorf("stop %d: only %d answers", stop, answers.Load())
		}
	}
	for range 100 { // connections take a moment to end
		if runtime.NumGoroutine() <= before+2 {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	t.Errorf("%d goroutines before, %d after", before, runtime.NumGoroutine())
}
