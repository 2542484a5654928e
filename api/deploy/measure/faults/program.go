package main

import (
	"bufio"
	"fmt"
	"log"
	"net"
	"net/http"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"syscall"
	"time"
)

// started is a run of the program.
type started struct {
	program, address, metrics string
	flags                     []string
	cmd                       *exec.Cmd
}

// start runs the program on free ports and waits until it answers.
func start(program string, flags ...string) *started {
	s := &started{program: program, address: freeAddress(), metrics: freeAddress(), flags: flags}
	return s.again()
}

// again runs it once more on the same ports.
func (s *started) again() *started {
	next := *s
	next.cmd = exec.Command(s.program, append([]string{"serve", "--listen", s.address, "--metrics", s.metrics}, s.flags...)...)
	next.cmd.Stderr = os.Stderr
	if err := next.cmd.Start(); err != nil {
		log.Fatal(err)
	}
	for range 500 {
		if next.status("/readyz") == http.StatusOK {
			return &next
		}
		time.Sleep(10 * time.Millisecond)
	}
	log.Fatal("the program does not answer")
	return nil
}

func (s *started) kill() {
	if err := s.cmd.Process.Kill(); err != nil {
		log.Fatal(err)
	}
	_ = s.cmd.Wait() // it says that it was killed
}

func (s *started) terminate() {
	if err := s.cmd.Process.Signal(syscall.SIGTERM); err != nil {
		log.Fatal(err)
	}
}

// wait waits until it has ended by itself.
func (s *started) wait() error { return s.cmd.Wait() }

// status asks on a connection of its own; 0 is no answer.
func (s *started) status(path string) int {
	c := http.Client{Transport: &http.Transport{DisableKeepAlives: true}, Timeout: 5 * time.Second}
	resp, err := c.Get("http://" + s.address + path)
	if err != nil {
		return 0
	}
	resp.Body.Close()
	return resp.StatusCode
}

// memory is what it holds of the machine's memory, in MB.
func (s *started) memory() int {
	text, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", s.cmd.Process.Pid))
	if err != nil {
		log.Fatal(err)
	}
	for line := range strings.Lines(string(text)) {
		if f := strings.Fields(line); len(f) == 3 && f[0] == "VmRSS:" {
			return number(f[1]) >> 10
		}
	}
	log.Fatal("no VmRSS")
	return 0
}

// goroutines is how many there are, by the program's own numbers.
func (s *started) goroutines() int {
	c := http.Client{Transport: &http.Transport{DisableKeepAlives: true}}
	resp, err := c.Get("http://" + s.metrics + "/metrics")
	if err != nil {
		log.Fatal(err)
	}
	defer resp.Body.Close()
	lines := bufio.NewScanner(resp.Body)
	for lines.Scan() {
		if count, is := strings.CutPrefix(lines.Text(), "go_goroutines "); is {
			return number(count)
		}
	}
	log.Fatal("no go_goroutines")
	return 0
}

func number(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil {
		log.Fatal(err)
	}
	return n
}

func freeAddress() string {
	on, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		log.Fatal(err)
	}
	defer on.Close()
	return on.Addr().String()
}
