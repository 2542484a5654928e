package api

import (
	"context"
	"io"
	"log/slog"
	"net"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"
	"time"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
)

func TestAPanicIsA500ThatSaysNothingOfTheInside(t *testing.T) {
	var log strings.Builder
	old := slog.Default()
	slog.SetDefault(slog.New(slog.NewTextHandler(&log, nil)))
	defer slog.SetDefault(old)
	h := recovered(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { panic("secret") }))
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest("GET", "/x?problem="+strings.Repeat("7", 500), nil))
	if w.Code != 500 || strings.Contains(w.Body.String(), "secret") || !strings.Contains(w.Body.String(), `"internal"`) {
		t.Errorf("got %d %s", w.Code, w.Body)
	}
	if !strings.Contains(log.String(), "secret") || strings.Contains(log.String(), strings.Repeat("7", 50)) {
		t.Errorf("the log should have the cause and a beginning of the problem: %.300s", log.String())
	}
}

func TestShutdownFinishesTheRequestInFlight(t *testing.T) {
	on, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	began, finish := make(chan bool), make(chan bool)
	h := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		close(began)
		<-finish
		_, _ = io.WriteString(w, "whole")
	})
	ctx, cancel := context.WithCancel(context.Background())
	served := make(chan error, 1)
	s := New(Options{})
	s.Handler = h
	go func() { served <- s.Serve(ctx, on, 0) }()
	got := make(chan string, 1)
	go func() {
		resp, err := http.Get("http://" + on.Addr().String())
		if err != nil {
			got <- err.Error()
			return
		}
		defer resp.Body.Close()
		b, err := io.ReadAll(resp.Body)
		if err != nil {
			b = []byte(err.Error())
		}
		got <- string(b)
	}()
	<-began
	cancel()
	select {
	case err := <-served:
		t.Fatalf("the server left a request behind: %v", err)
	case <-time.After(50 * time.Millisecond):
	}
	close(finish)
	if text := <-got; text != "whole" {
		t.Errorf("got %q, want the whole answer", text)
	}
	if err := <-served; err != nil {
		t.Errorf("Serve gave %v", err)
	}
}

func TestReadQueryIsKind(t *testing.T) {
	for _, c := range []struct{ raw, want string }{
		{"problem=3/4=6/8", "3/4=6/8"},
		{"problem=345%2B278", "345+278"},
		{"problem=1+1/2", "1 1/2"},
		{"a=1&problem=50%&problem=7", "50%"},
		{"problem=&problem=7", "7"},
		{"problem=5%+%2B+1%zz", "5% + 1%zz"},
		{"problem=order+1/2;3/4", "order 1/2;3/4"},
		{"%70roblem=7", "7"},
		{"problem", ""},
		{"", ""},
	} {
		if got := readQuery(c.raw)["problem"]; got != c.want {
			t.Errorf("%s: got %q, want %q", c.raw, got, c.want)
		}
	}
}

// FuzzEncode checks that the standard library decodes what we encode.
func FuzzEncode(f *testing.F) {
	for _, s := range []string{"402-178", "3/4 = 6/8", "8 × ? = 48", "é%+&=#;\x00"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		got, err := url.ParseQuery("problem=" + encode(s))
		if err != nil || got.Get("problem") != s {
			t.Errorf("%q is encoded as %s and decoded as %q, %v", s, encode(s), got.Get("problem"), err)
		}
		if mine := readQuery("problem=" + encode(s))["problem"]; mine != s {
			t.Errorf("%q is encoded as %s and read as %q", s, encode(s), mine)
		}
	})
}

// The spelling for URLs leaves out spaces, so it has to be read as the same
// problem, for every example and every other reading of it.
func TestSpellingIsReadAsTheSameProblem(t *testing.T) {
	for _, m := range models.All {
		for _, text := range m.Examples {
			read, err := reading.Read(text)
			if err != nil {
				t.Errorf("%s: %v", text, err)
				continue
			}
			for _, p := range append(read.Also, read.Problem) {
				short := spelling.Replace(p.String())
				again, err := reading.Read(reading.RestorePlus(short))
				if err != nil || again.Problem.String() != p.String() {
					t.Errorf("%s is spelled %s and read as %v, %v", p, short, again.Problem, err)
				}
			}
		}
	}
}

func TestNearFindsTheWordThatWasMeant(t *testing.T) {
	names := []string{"number-line", "array", "blocks"}
	for _, c := range []struct{ word, want string }{
		{"arry", "array"}, {"aray", "array"}, {"rraay", "array"}, {"BLOCKS", "blocks"}, {"numberline", "number-line"},
		{"number-lien", "number-line"}, {"zebra", ""}, {"", ""}, {strings.Repeat("a", 10_000), ""},
	} {
		if got := Near(c.word, names); got != c.want {
			t.Errorf("near %.20q: got %q, want %q", c.word, got, c.want)
		}
	}
}

// The picture of an error keeps the laws of a picture: everything on the paper,
// no two texts on each other.
func TestErrorPicturesStayOnThePaper(t *testing.T) {
	long := strings.Repeat("wordwordword ", 40)
	for _, tr := range []*Trouble{
		{reason: reading.Error{Message: "there is no sign between the two numbers", Text: "23 45", Start: 0, End: 5, Hint: "put + or − between them", Try: "23 + 45"}, Parameter: "problem"},
		{reason: reading.Error{Message: "nothing here", Hint: "type a problem"}, Parameter: "problem"},
		{reason: reading.Error{Message: long, Text: long, Start: 300, End: 320, Hint: long, Try: "7 × 8"}, Parameter: "width"},
		{reason: reading.Error{Message: strings.Repeat("x", 300), Text: strings.Repeat("W", 300), Start: 0, End: 300}},
		{reason: reading.Error{Message: "missing at the end", Text: "23 +", Start: 4, End: 4}},
		{reason: reading.Error{Message: "outside", Text: "23", Start: -4, End: 40}},
		{reason: reading.Error{Message: "odd \x00\u202e", Text: "\x00\xff\u202e\t\n", Start: 1, End: 2}},
	} {
		s := tr.scene()
		paper := scene.Box{X: scene.Margin - 3, Y: scene.Margin - 3, W: s.W - 2*scene.Margin + 6, H: s.H - 2*scene.Margin + 6}
		var labels []scene.Box
		for _, it := range s.Items {
			if !paper.Contains(it.Shape.Box()) {
				t.Errorf("%.40s: %+v leaves the paper %+v", tr.Message, it.Shape, paper)
			}
			if text, ok := it.Shape.(scene.Text); ok {
				for _, other := range labels {
					if other.Overlaps(text.Box()) {
						t.Errorf("%.40s: %+v lies on another text", tr.Message, text)
					}
				}
				labels = append(labels, text.Box())
				for _, r := range text.Runs {
					if strings.ContainsAny(r.Text, "\x00\u202e\n") {
						t.Errorf("%.40s: %q cannot be printed", tr.Message, r.Text)
					}
				}
			}
		}
	}
}
