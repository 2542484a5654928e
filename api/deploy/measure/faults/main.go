// Faults looks for what goes wrong with the service only under load and over time. It
// starts the program itself, in three ways:
//
//   - restarts: the program is killed and started again at random while good and
//     hostile requests come in. A good request gets a good answer, or no connection.
//   - stops: the program is asked to leave while requests are being answered, and
//     who sends them goes by /readyz. Every answer comes whole.
//   - soak: requests come in for long. Memory levels off, and no goroutine is left.
//
// Run it from the top of the repository; it takes about fourteen minutes:
//
//	go build -o /tmp/modeler ./cmd/modeler
//	go run ./api/deploy/measure/faults /tmp/modeler
//
// The exit status is 1 when anything was wrong.
package main

import (
	"flag"
	"fmt"
	"log"
	"math/rand/v2"
	"net/http"
	"os"
	"time"
)

func main() {
	log.SetFlags(log.Ltime)
	restarts := flag.Duration("restarts", time.Minute, "how long to kill and start")
	stops := flag.Int("stops", 50, "how often to stop")
	soak := flag.Duration("soak", 10*time.Minute, "how long to soak")
	flag.Parse()
	if flag.NArg() != 1 {
		log.Fatal("give the program to run, such as /tmp/modeler")
	}
	program := flag.Arg(0)
	wrong := false
	for _, phase := range []struct {
		name string
		run  func() []string
	}{
		{"restarts", func() []string { return killing(program, *restarts) }},
		{"stops", func() []string { return stopping(program, *stops) }},
		{"soak", func() []string { return soaking(program, *soak) }},
	} {
		for _, complaint := range phase.run() {
			fmt.Printf("WRONG, %s: %s\n", phase.name, complaint)
			wrong = true
		}
	}
	if wrong {
		os.Exit(1)
	}
	fmt.Println("nothing was wrong")
}

// killing kills the program every one to five seconds and starts it again.
func killing(program string, long time.Duration) []string {
	s := start(program)
	l := newLoad(s.address, 16)
	killed := 0
	for end := time.Now().Add(long); time.Now().Before(end); killed++ {
		time.Sleep(time.Second + rand.N(4*time.Second))
		s.kill()
		time.Sleep(rand.N(300 * time.Millisecond))
		s = s.again()
	}
	l.stop()
	s.kill()
	t := l.tally()
	fmt.Printf("restarts: killed %d times; %v\n", killed, t)
	return t.wrong
}

// stopping asks the program to leave, again and again. As one who spreads requests
// over many would, the load stops once /readyz says no, at the end of the second in
// which it does; what is then being answered has to arrive.
func stopping(program string, times int) (wrong []string) {
	const drain, notice = time.Second, 850 * time.Millisecond // the rest is for a machine that is busy
	s := start(program, "--drain", "1")
	caught, answered := 0, 0
	for n := range times {
		l := newLoad(s.address, 16)
		time.Sleep(200*time.Millisecond + rand.N(300*time.Millisecond))
		asked := time.Now()
		s.terminate()
		for s.status("/readyz") != http.StatusServiceUnavailable && time.Since(asked) < notice {
			time.Sleep(10 * time.Millisecond)
		}
		if time.Since(asked) >= notice {
			wrong = append(wrong, fmt.Sprintf("stop %d: /readyz never said no", n+1))
		}
		time.Sleep(time.Until(asked.Add(notice)))
		l.quit()
		if err := s.wait(); err != nil {
			wrong = append(wrong, fmt.Sprintf("stop %d: it ended with %v", n+1, err))
		}
		l.stop()
		t := l.tally()
		wrong = append(wrong, t.wrong...)
		if t.refused+t.cut > 0 {
			wrong = append(wrong, fmt.Sprintf("stop %d: %d requests had no connection, %d answers were cut off: %v", n+1, t.refused, t.cut, t.why))
		}
		caught += l.after(asked.Add(drain))
		answered += t.good + t.hostile
		s = s.again()
	}
	s.kill()
	fmt.Printf("stops: %d, %d answers, %d of them finished after the last was taken in\n", times, answered, caught)
	return wrong
}

// soaking lets requests come in, and samples how much the program holds.
func soaking(program string, long time.Duration) (wrong []string) {
	s := start(program)
	defer s.kill()
	time.Sleep(time.Second)
	before := s.goroutines()
	l := newLoad(s.address, 16)
	var memory []int // MB
	const samples = 60
	for range samples {
		time.Sleep(long / samples)
		memory = append(memory, s.memory())
	}
	l.stop()
	t := l.tally()
	// Idle connections were closed by the load; their goroutines end soon after.
	time.Sleep(2 * time.Second)
	after := s.goroutines()
	middle, last := mean(memory[samples/3:2*samples/3]), mean(memory[2*samples/3:])
	fmt.Printf("soak: %v; %v\n      memory %d MB after a tenth, %d MB in the middle third, %d MB in the last, %d MB at most; goroutines %d before, %d after\n",
		long, t, memory[samples/10], middle, last, most(memory), before, after)
	if last > middle+middle/10+2 {
		wrong = append(wrong, fmt.Sprintf("memory grows: %d MB in the middle third, %d MB in the last", middle, last))
	}
	if after > before+2 {
		wrong = append(wrong, fmt.Sprintf("%d goroutines before, %d after", before, after))
	}
	if t.refused+t.cut > 0 {
		wrong = append(wrong, fmt.Sprintf("%d requests had no connection, %d answers were cut off", t.refused, t.cut))
	}
	return append(wrong, t.wrong...)
}

func mean(list []int) int {
	sum := 0
	for _, n := range list {
		sum += n
	}
	return sum / max(1, len(list))
}

func most(list []int) int {
	best := 0
	for _, n := range list {
		best = max(best, n)
	}
	return best
}
