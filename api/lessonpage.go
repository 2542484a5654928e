package api

import (
	"html/template"
	"net/http"
	"strconv"

	"modeler/arithmetic"
	"modeler/models"
	"modeler/models/scene"
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
	Key                      []key
	Steps                    []move
	Size                     string // of the symbols
	Rows                     string // on paper
	Writing                  link   // to the other way to write them, where there is one
	Child                    bool   // without the answers
	Walk                     walk
	Views                    views
	Whole                    shown
	Address, HiddenAddress   string
	HiddenURL                string
	Check                    link
	Next, Others             []link
}

// move is one row: told three ways.
type move struct {
	N          int
	Out        bool // not shown, since another move is shown alone
	Title      []piece
	Hands, Ask []said
	Picture    shown
	Symbols    template.HTML
	Spoken     string // of columns, which no reader of mathematics can follow
	Link       []said // with another writing: how it is the same move
	Says, URL  string // of this move alone
}

// key says what a color of the pictures says.
type key struct{ Role, Text string }

// walk leads through a lesson one move at a time. At is 0 where all are shown.
type walk struct {
	At, Last   int
	Says       string // which move is shown
	Back, Next string // addresses; "" where there is none
}

// views are the addresses of the same lesson looked at in other ways.
type views struct{ All, One, Cover, Uncover, Color, Ink, Child string }

// lesson serves /lesson.
func (s *site) lesson(w http.ResponseWriter, r *http.Request) {
	q, err := readRequest(r)
	c, cerr := readChoices(q)
	if err == nil {
		err = cerr
	}
	var l models.Lesson
	if err == nil {
		l, err = models.Teach(q["problem"], c.Model)
	}
	if err == nil && c.Step > len(l.Steps) {
		_, t := number("step", q["step"], 1, len(l.Steps))
		err = t
	}
	if err != nil {
		s.fault(w, r, troubled(err), q["problem"], c.Model, "/lesson")
		return
	}
	view := newLessonPage(l.Worded(c.Words), c)
	view.Style, view.Scripts = s.sheet.url, []string{s.keys.url, s.stepping.url, s.copying.url}
	root := s.address(r)
	view.Card = newCard(root, l, c.Model)
	view.Address = root + view.Whole.Src
	view.HiddenAddress = root + view.HiddenURL
	render(w, r, "lesson.html", view, http.StatusOK, page)
}

func newLessonPage(l models.Lesson, c choices) lessonPage {
	written := l.Problem.String()
	p := c.picture(written)
	v := lessonPage{
		head: head{
			Title: written + " · modeler", Doc: l.Whole.Title.Hidden + " " + words.Pages.LessonDoc,
			Skip: words.Pages.Lesson, Label: words.Pages.Field, Asked: printable(l.Text), W: inWording(c.Words, words.Pages), Ink: c.Ink, Words: c.Words,
		},
		Written: typeset(written),
		Reading: typeset(c.Words.Text(words.ReadBack(l.Problem))),
		Answer:  typeset(c.Words.Text(words.Answer(l.Problem, l.Answer))),
		Why:     phrase(l.Why),
		Model:   l.Model.Title,
		Child:   c.Hidden,
	}
	if l.Problem.Kind == arithmetic.Claim {
		v.Verdict = strconv.FormatBool(l.Answer.True)
	}
	if l.Problem.Kind == arithmetic.Claim || l.Problem.Kind == arithmetic.Comparison {
		v.Claim = claimURL(written, "", 0, c.Words)
	}
	for _, other := range l.Also {
		v.Also = append(v.Also, c.kept().link(other.String()))
	}
	v.Steps, v.Size = moves(l, c), size(l.Steps)
	v.Rows = rows(len(l.Steps))
	v.inWriting(l, c)
	v.walk(l, c)
	v.look(l, c)
	other := c
	other.Words = 1 - c.Words
	v.Otherwise = other.url(written)
	v.need(l)
	if !c.Ink && !c.Hidden {
		v.Key = keyOf(l)
	}
	v.Whole = show(p, l.Whole, false)
	p.Hidden = true
	v.HiddenURL = p.URL()
	for _, m := range l.Others() {
		other := c.at(0)
		other.Model = m.Name
		one := other.link(written)
		one.Title = m.Title
		one.Picture = show(other.picture(written), models.Worded(m.Tell(l.Problem), c.Words).Whole, true)
		one.Picture.Alt = "" // the title beside it says what it leads to
		v.Others = append(v.Others, one)
	}
	v.Check, v.Next = check(l, c), next(l, c)
	return v
}

// rows names how many rows the moves and the whole story take on paper, two in a
// row, for the style sheet to fit them on a page.
func rows(moves int) string {
	name := "rows-" + strconv.Itoa(max(2, (moves+2)/2))
	if moves%2 == 0 {
		name += " even" // the whole story has a row of its own
	}
	return name
}

// walk sets which move is shown and where its neighbors are.
func (v *lessonPage) walk(l models.Lesson, c choices) {
	written, last := l.Problem.String(), len(l.Steps)
	v.Walk = walk{At: c.Step, Last: last}
	if c.Step == 0 {
		return
	}
	v.Walk.Says = words.MoveAt(c.Step, last)
	v.Title = v.Walk.Says + " · " + v.Title
	if c.Step > 1 {
		v.Walk.Back = c.at(c.Step - 1).url(written)
	}
	if c.Step < last {
		v.Walk.Next = c.at(c.Step + 1).url(written)
	}
}

// look sets the addresses of the other ways to look at the lesson.
func (v *lessonPage) look(l models.Lesson, c choices) {
	written := l.Problem.String()
	url := func(change func(*choices)) string {
		other := c
		change(&other)
		return other.url(written)
	}
	v.Views = views{
		All:     url(func(c *choices) { c.Step = 0 }),
		One:     url(func(c *choices) { c.Step = 1 }),
		Cover:   url(func(c *choices) { c.Hidden = true }),
		Uncover: url(func(c *choices) { c.Hidden = false }),
		Color:   url(func(c *choices) { c.Ink = false }),
		Ink:     url(func(c *choices) { c.Ink, c.Step = true, 0 }),
		Child:   url(func(c *choices) { c.Hidden, c.Ink, c.Step = true, true, 0 }),
	}
}

// keyOf lists what the colors of a lesson's pictures say.
func keyOf(l models.Lesson) []key {
	seen := map[scene.Role]bool{}
	for _, s := range l.Steps {
		for _, it := range s.Scene.Items {
			seen[it.Role] = true
		}
	}
	var out []key
	for _, r := range []scene.Role{scene.First, scene.Second, scene.Moved, scene.Gone, scene.Result} {
		if seen[r] {
			out = append(out, key{r.String(), words.KeyOf(r)})
		}
	}
	return out
}

func moves(l models.Lesson, c choices) []move {
	var rows []move
	for i, s := range l.Steps {
		p, drawn := c.picture(l.Problem.String()), s.Scene
		p.Step = i + 1
		if c.Hidden && i > 0 { // the question comes before the move, and so does the picture
			p.Step, drawn = i, l.Steps[i-1].Scene
		}
		one := move{
			N: i + 1, Out: c.Step > 0 && c.Step != i+1, Title: typeset(s.Title), Hands: phrase(s.Hands), Ask: phrase(s.Ask),
			Picture: show(p, drawn, false),
			// Every text in it is escaped where it is written.
			Symbols: template.HTML(s.Symbols.MathML()), Spoken: spoken(s.Symbols),
			URL: c.at(i + 1).url(l.Problem.String()), Says: words.MoveAt(i+1, len(l.Steps)),
		}
		one.Picture.Soon = !one.Out && i < max(c.Step, 1)
		rows = append(rows, one)
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

// check says how to check the answer another way.
func check(l models.Lesson, c choices) link {
	s, ok := words.Check(l.Problem, l.Answer)
	if !ok {
		return link{}
	}
	one := c.kept().link(s.Problem)
	one.Text = s.Text
	return one
}

// next offers problems to go on with.
func next(l models.Lesson, c choices) []link {
	var out []link
	similar := models.LikeIt(l)
	for _, s := range []words.Suggestion{
		{Text: words.Pages.Easier, Problem: similar.Easier}, {Text: words.Pages.Like, Problem: similar.Like}, {Text: words.Pages.Harder, Problem: similar.Harder},
	} {
		if s.Problem != "" {
			one := c.kept().link(s.Problem)
			one.Text = s.Text
			out = append(out, one)
		}
	}
	return out
}
