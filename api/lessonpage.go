package api

import (
	"html/template"
	"net/http"
	"strconv"

	"modeler/arithmetic"
	"modeler/models"
	"modeler/models/words"
)

// lessonPage is a lesson as a page shows it.
type lessonPage struct {
	head
	Written, Reading, Answer []piece
	Also                     []link
	Model                    string
	Verdict                  string // of a claim: true or false
	Claim                    string // of a claim or comparison: the child's page
	Why                      []said
	Pieces, Cautions         []string
	Steps                    []move
	Size                     string // of the symbols
	Writing                  link   // to the other way to write them, where there is one
	Whole                    shown
	Address, HiddenAddress   string
	HiddenURL                string
	Next                     []link
	Others                   []link
}

// move is one row: told three ways.
type move struct {
	N          int
	Title      []piece
	Hands, Ask []said
	Picture    shown
	Symbols    template.HTML
	Link       []said // with another writing: how it is the same move
}

// lesson serves /lesson.
func (s *site) lesson(w http.ResponseWriter, r *http.Request) {
	q, err := readRequest(r)
	model, merr := readModel(q["model"])
	if err == nil {
		err = merr
	}
	europe, werr := ReadWriting(q["writing"])
	if err == nil {
		err = werr
	}
	var l models.Lesson
	if err == nil {
		l, err = models.Teach(q["problem"], model)
	}
	if err != nil {
		s.fault(w, r, troubled(err), q["problem"], model, "/lesson")
		return
	}
	view := newLessonPage(l, model)
	view.inWriting(l, model, europe)
	view.Style = s.styled
	root := s.address(r)
	view.Card = newCard(root, l, model)
	view.Address = root + view.Whole.Src
	view.HiddenAddress = root + view.HiddenURL
	render(w, r, "lesson.html", view, http.StatusOK, page)
}

func newLessonPage(l models.Lesson, model string) lessonPage {
	written := l.Problem.String()
	p := Picture{Problem: written, Model: model}
	v := lessonPage{
		head: head{
			Title: written + " · modeler", Doc: l.Whole.Title.Hidden + " told with the hands, in pictures and in symbols.",
			Skip: "lesson", Label: "Problem", Asked: printable(l.Text),
		},
		Written: typeset(written),
		Reading: typeset(words.ReadBack(l.Problem)),
		Answer:  typeset(words.Answer(l.Problem, l.Answer)),
		Why:     phrase(l.Why),
		Model:   l.Model.Title,
	}
	if l.Problem.Kind == arithmetic.Claim {
		v.Verdict = strconv.FormatBool(l.Answer.True)
	}
	if l.Problem.Kind == arithmetic.Claim || l.Problem.Kind == arithmetic.Comparison {
		v.Claim = claimURL(written, "", 0)
	}
	for _, other := range l.Also {
		v.Also = append(v.Also, linkTo(other.String(), ""))
	}
	v.Steps, v.Size = moves(l, p), size(l.Steps)
	v.need(l)
	v.Whole = show(p, l.Whole, false)
	hidden := p
	hidden.Hidden = true
	v.HiddenURL = hidden.URL()
	for _, m := range l.Others() {
		one := linkTo(written, m.Name)
		one.Title = m.Title
		one.Picture = show(Picture{Problem: written, Model: m.Name}, m.Tell(l.Problem).Whole, true)
		one.Picture.Alt = "" // the title beside it says what it leads to
		v.Others = append(v.Others, one)
	}
	v.Next = next(l)
	return v
}

func moves(l models.Lesson, p Picture) []move {
	var rows []move
	for i, s := range l.Steps {
		p.Step = i + 1
		rows = append(rows, move{
			N: i + 1, Title: typeset(s.Title), Hands: phrase(s.Hands), Ask: phrase(s.Ask),
			Picture: show(p, s.Scene, false),
			// Every text in it is escaped where it is written.
			Symbols: template.HTML(s.Symbols.MathML()),
		})
	}
	return rows
}

// need lists the pieces, and what a grown-up should know about them.
func (v *lessonPage) need(l models.Lesson) {
	var names []string
	cut := false
	for _, piece := range l.Pieces {
		names, cut = append(names, piece.Name), cut || piece.Cut
		text := piece.Name
		if piece.Count > 0 {
			text = arithmetic.Grouped(piece.Count) + " " + text
		}
		v.Pieces = append(v.Pieces, text)
	}
	v.Cautions = words.Cautions(names, cut)
}

// next says what to do after the lesson: check it, try another, print it.
func next(l models.Lesson) []link {
	var out []link
	add := func(s words.Suggestion) {
		one := link{Text: s.Text}
		if s.Problem != "" {
			one = linkTo(s.Problem, "")
			one.Text = s.Text
		}
		out = append(out, one)
	}
	if s, ok := words.Check(l.Problem, l.Answer); ok {
		add(s)
	}
	if another, ok := models.Next(l); ok {
		add(words.Another(another))
	}
	add(words.Print())
	return out
}
