package api

import (
	"net/http"
	"sync"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/words"
)

// Document is a lesson as data: what /v1/lesson.json serves and what the command
// line prints for --json. URLs are given from the root.
type Document struct {
	Problem     string          `json:"problem"` // as given
	Written     string          `json:"written"` // as a book prints it
	Reading     string          `json:"reading"` // as understood, in words
	Also        []OtherReading  `json:"also,omitempty"`
	Kind        arithmetic.Kind `json:"kind"`
	Answer      string          `json:"answer"`
	Verdict     *bool           `json:"verdict,omitempty"` // of a claim
	Why         string          `json:"why,omitempty"`     // of a claim or comparison
	Model       string          `json:"model"`
	OtherModels []string        `json:"other_models"`
	Pieces      []Piece         `json:"pieces"`
	Steps       []Step          `json:"steps"`
	Picture     string          `json:"picture"` // URL of the whole story
	Title       string          `json:"title"`   // of that picture
	Alt         string          `json:"alt"`     // and what it shows, in words
}

// OtherReading is another way to read the text, and the problem to ask for it.
type OtherReading struct {
	Reading string `json:"reading"`
	Problem string `json:"problem"`
}

// Piece is a kind of piece and how many of it to have on the table.
type Piece struct {
	Piece string `json:"piece"`
	Count int64  `json:"count"`
}

// Step is one move told three ways.
type Step struct {
	Title   string  `json:"title"`
	Hands   string  `json:"hands"`
	Ask     string  `json:"ask,omitempty"`
	Picture string  `json:"picture"`
	Alt     string  `json:"alt"`
	Symbols Symbols `json:"symbols"`
}

// Symbols is what to write beside a move.
type Symbols struct {
	Text   string   `json:"text"`
	MathML string   `json:"mathml"`
	Europe *Writing `json:"europe,omitempty"` // as much of Europe writes it, where that differs
}

// Writing is another way to write the same move.
type Writing struct {
	Text   string `json:"text"`
	MathML string `json:"mathml"`
	Says   string `json:"says,omitempty"` // how it is the same move
}

// NewDocument writes a lesson as data. model is the name that was asked for, ""
// when none was; the pictures' URLs ask for the same.
func NewDocument(l models.Lesson, model string) Document {
	return NewDocumentIn(l, model, words.American)
}

// NewDocumentIn does so in a wording.
func NewDocumentIn(l models.Lesson, model string, w words.Wording) Document {
	l = l.Worded(w)
	p := Picture{Problem: l.Problem.String(), Model: model, Words: w}
	d := Document{
		Problem:     printable(l.Text),
		Written:     l.Problem.String(),
		Reading:     w.Text(words.ReadBack(l.Problem)),
		Kind:        l.Problem.Kind,
		Answer:      w.Text(words.Answer(l.Problem, l.Answer)),
		Why:         l.Why.String(),
		Model:       l.Model.Name,
		OtherModels: []string{},
		Pieces:      []Piece{},
		Picture:     p.URL(),
		Title:       l.Whole.Title.Shown,
		Alt:         l.Whole.Desc.Shown,
	}
	if l.Problem.Kind == arithmetic.Claim {
		d.Verdict = &l.Answer.True
	}
	for _, other := range l.Also {
		d.Also = append(d.Also, OtherReading{w.Text(words.ReadBack(other)), other.String()})
	}
	for _, m := range l.Others() {
		d.OtherModels = append(d.OtherModels, m.Name)
	}
	for _, piece := range l.Pieces {
		d.Pieces = append(d.Pieces, Piece{piece.Name, piece.Count})
	}
	for i, s := range l.Steps {
		p.Step = i + 1
		d.Steps = append(d.Steps, Step{
			Title: s.Title, Hands: s.Hands.String(), Ask: s.Ask.String(),
			Picture: p.URL(), Alt: s.Scene.Desc.Shown,
			Symbols: symbols(s),
		})
	}
	return d
}

func symbols(s models.Step) Symbols {
	out := Symbols{Text: s.Symbols.Text(), MathML: s.Symbols.MathML()}
	if len(s.Europe.Lines) > 0 {
		out.Europe = &Writing{s.Europe.Text(), s.Europe.MathML(), s.Link.String()}
	}
	return out
}

// JSON writes the document, indented, with a line end.
func (d Document) JSON() []byte { return marshal(d) }

// lesson serves /v1/lesson.json.
func (s *Service) lesson(w http.ResponseWriter, r *http.Request) {
	asked, sent := s.sendKept(w, r)
	if sent {
		return
	}
	q, err := given(r)
	var a *answer
	// The document has the problem as it was given, so it is kept as that.
	key := "lesson\n" + q["model"] + "\n" + q["words"] + "\n" + q["problem"]
	if err == nil {
		a, err = s.store.get(key, func() (*answer, error) { return lessonAnswer(q) })
	}
	if err != nil {
		troubled(err).refuse(w, r)
		return
	}
	s.send(w, r, a, asked, key)
}

func lessonAnswer(q query) (*answer, error) {
	model, err := readModel(q["model"])
	if err != nil {
		return nil, err
	}
	w, err := ReadWording(q["words"])
	if err != nil {
		return nil, err
	}
	l, err := models.Teach(q["problem"], model)
	if err != nil {
		return nil, err
	}
	a := answer{kind: "application/json", body: NewDocumentIn(l, model, w).JSON(), life: lasting, policy: sealed}
	// The document has the problem as it was given, and so has its URL; the body
	// is what is tagged.
	a.location = "/v1/lesson.json?problem=" + encode(q["problem"])
	if model != "" {
		a.location += "&model=" + encode(model)
	}
	a.location += inWords(w)
	a.tag = tagOf(string(a.body))
	return &a, nil
}

func lessonURL(path, problem, model string) string {
	u := path + "?problem=" + encode(spelling.Replace(problem))
	if model != "" {
		u += "&model=" + encode(model)
	}
	return u
}

// catalogue is what /v1/models.json serves.
type catalogue struct {
	Models []model  `json:"models"`
	Themes []string `json:"themes"`
}

type model struct {
	Name     string            `json:"name"`
	Title    string            `json:"title"`
	Doc      string            `json:"doc"`
	Kinds    []arithmetic.Kind `json:"kinds"` // the kinds of problem it tells
	Examples []example         `json:"examples"`
}

type example struct {
	Problem string `json:"problem"`
	Picture string `json:"picture"`
	Lesson  string `json:"lesson"`
}

// modelList serves /v1/models.json.
func modelList(w http.ResponseWriter, r *http.Request) {
	a := *listed()
	a.write(w, r)
}

// listed is made once, since it is the same for every request.
var listed = sync.OnceValue(func() *answer {
	c := catalogue{Models: []model{}, Themes: themeNames()}
	for _, m := range models.All {
		one := model{Name: m.Name, Title: m.Title, Doc: m.Doc, Kinds: m.Kinds, Examples: []example{}}
		for _, text := range m.Examples {
			problem := text
			if read, err := reading.Read(text); err == nil {
				problem = read.Problem.String()
			}
			one.Examples = append(one.Examples, example{text,
				Picture{Problem: problem, Model: m.Name}.URL(), lessonURL("/v1/lesson.json", problem, m.Name)})
		}
		c.Models = append(c.Models, one)
	}
	a := &answer{kind: "application/json", body: marshal(c), life: lasting, policy: sealed, location: "/v1/models.json"}
	a.tag = tagOf(string(a.body))
	a.pack()
	return a
})
