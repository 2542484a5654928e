package hundredths

import (
	"strconv"

	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// lesson is a working with its board, while it is told.
type lesson struct {
	arithmetic.Working
	board   board
	now     state
	posed   state // the problem before anything is answered
	steps   []step
	squares int64
	told    []string // what the whole story says, part by part
	asked   []string // and with the answer hidden
	why     words.Phrase
}

// step is a move in words and symbols, and what there is after it.
type step struct {
	words.Told
	lines []notation.Line
	shown state
	// hidden is drawn in its place while the answer is hidden, where it is given.
	hidden *state
}

// newLesson lays the board out for a working.
func newLesson(w arithmetic.Working) *lesson {
	l := &lesson{Working: w, squares: 1}
	rows, labels := 1, 0
	for _, move := range w.Moves {
		switch m := move.(type) {
		case arithmetic.RuleSquares:
			l.squares = m.Squares
		case arithmetic.SplitSquare:
			l.squares = m.Squares
		case arithmetic.ShadeSquares:
			l.squares = max(l.squares, (m.Total+99)/100)
			rows = max(rows, m.Nth+1)
			labels = max(labels, telling.Width(telling.Numeral(m.Number, scene.First), scene.Middle, false))
		}
	}
	l.board = layBoard(rows, int(l.squares), labels)
	l.board.tall = l.tallest()
	l.now.rows = make([]row, rows)
	for i := range l.now.rows {
		l.now.rows[i].hidden = rows > 1
	}
	return l
}

// tallest is the height of the tallest line that stands under the squares.
func (l *lesson) tallest() int {
	lines := []notation.Line{{telling.Count(0, scene.Ink)}, l.equation(true)}
	if l.Problem.Kind == arithmetic.Show {
		lines = lines[:1]
	}
	tall := 0
	for _, line := range lines {
		tall = max(tall, scene.Text{Size: scene.Middle, Runs: line.Runs()}.Box().H)
	}
	return tall
}

// tell tells every move and draws the pictures.
func (l *lesson) tell() telling.Telling {
	for _, move := range l.Moves {
		l.now = l.now.settled()
		l.move(move)
	}
	return l.pictures()
}

// settled is a state in which nothing has just changed.
func (st state) settled() state {
	rows := make([]row, len(st.rows))
	for i, r := range st.rows {
		rows[i] = r
		rows[i].runs = nil
		for _, run := range r.runs {
			run.fresh = false
			rows[i].runs = append(rows[i].runs, run)
		}
	}
	st.rows = rows
	return st
}

// add tells a move after which there is what is there now.
func (l *lesson) add(t words.Told, lines ...notation.Line) {
	l.steps = append(l.steps, step{Told: t, lines: lines, shown: l.now})
}

// conceal draws what is posed in place of the last step while the answer is hidden.
func (l *lesson) conceal() { l.steps[len(l.steps)-1].hidden = &l.posed }

// pictures draws the steps and the whole story.
func (l *lesson) pictures() telling.Telling {
	t := telling.Telling{Answer: l.Answer, Why: l.why, Pieces: []telling.Piece{{Name: words.SquaresPaper(l.pieces()), Count: l.pieces()}}}
	answered := l.equation(true)
	title := words.SquaresTitle(l.Problem, l.Answer, answered.Text())
	foot := l.foot(true)
	for _, st := range l.steps {
		s := l.picture(st.shown, st.hidden)
		s.Title, s.Desc = title, st.Desc
		if st.hidden != nil && s.Desc.Hidden == "" {
			s.Desc.Hidden = words.Sentences(append(l.asked, words.SquaresAsks(l.Problem))...)
		}
		s.W, s.H = scene.PaperW, foot+scene.Margin
		t.Steps = append(t.Steps, telling.Step{Title: st.Title, Hands: st.Hands, Ask: st.Ask, Scene: s, Symbols: notation.Lines(st.lines...)})
	}
	last := l.now.settled()
	posed := l.posed
	if l.foots() {
		last.caption, posed.caption = nil, nil
	}
	t.Whole = l.picture(last, &posed)
	t.Whole.Title = title
	t.Whole.Desc.Shown = words.Sentences(l.told...)
	t.Whole.Desc.Hidden = words.Sentences(append(l.asked, words.SquaresAsks(l.Problem))...)
	telling.Equation(t.Whole, l.foot(!l.foots()), l.equation(false), answered)
	return t
}

// pieces is how many large squares are drawn.
func (l *lesson) pieces() int64 { return l.squares * int64(len(l.now.rows)) }

// foots reports whether the caption under the squares says what the equation at the
// foot of the whole story says.
func (l *lesson) foots() bool { return l.Problem.Kind != arithmetic.Show }

// foot is how far down the content reaches.
func (l *lesson) foot(captioned bool) int {
	bottom := l.board.bottom()
	if l.board.beside || captioned && len(l.board.boxes) == 1 {
		bottom += below + l.board.tall
	}
	if l.board.beside && l.Answer.Relation != arithmetic.Equal {
		bottom += moreDown
	}
	return bottom
}

// picture draws a state, and another while the answer is hidden where there is one.
func (l *lesson) picture(shown state, hidden *state) *scene.Scene {
	s := &scene.Scene{}
	if hidden == nil {
		l.board.draw(s, shown)
		return s
	}
	for _, version := range []struct {
		when  scene.When
		state state
	}{{scene.ShownOnly, shown}, {scene.HiddenOnly, *hidden}} {
		part := &scene.Scene{}
		l.board.draw(part, version.state)
		telling.AddPart(s, version.when, part)
	}
	return s
}

// equation is the problem as it stands at the foot, with its answer or a question
// mark.
func (l *lesson) equation(answered bool) notation.Line {
	p := l.Problem
	fill := notation.Line{telling.Unknown()}
	if answered {
		fill = telling.Numeral(l.Answer.Number, scene.Result)
	}
	switch p.Kind {
	case arithmetic.Show:
		return l.shownAs(answered)
	case arithmetic.Comparison, arithmetic.Claim:
		return l.compared(answered)
	case arithmetic.Renaming:
		return l.renamed(answered)
	case arithmetic.Addition, arithmetic.Subtraction:
		line := telling.Written(p, fill)
		return l.simplest(line, answered)
	}
	n, _ := p.Left.(arithmetic.Number)
	return l.simplest(telling.Join(telling.Numeral(n, scene.First), "=", fill), answered)
}

// simplest adds the last name of the answer to a line, where that is another.
func (l *lesson) simplest(line notation.Line, answered bool) notation.Line {
	if !answered || l.Answer.Simplest == l.Answer.Number {
		return line
	}
	return telling.Join(line, "=", telling.Numeral(l.Answer.Simplest, scene.Result))
}

// shownAs is a number and how many tenths or hundredths it is.
func (l *lesson) shownAs(answered bool) notation.Line {
	read := l.Moves[len(l.Moves)-1].(arithmetic.ReadSquares)
	if !answered {
		return telling.Join(telling.Unknown(), "=", notation.F("?", strconv.FormatInt(read.Parts, 10), scene.Hidden))
	}
	return telling.Join(telling.Numeral(read.Number, scene.First), "=", parts(read.Shaded, read.Parts, scene.Result))
}

// parts is a fraction of so many parts.
func parts(count, of int64, role scene.Role) notation.Term {
	return notation.F(strconv.FormatInt(count, 10), strconv.FormatInt(of, 10), role)
}

func (l *lesson) compared(answered bool) notation.Line {
	a, b, _ := l.Problem.Operands()
	first, second := telling.Numeral(a, scene.First), telling.Numeral(b, scene.Second)
	switch {
	case answered:
		return telling.Join(first, signOf(l.Answer.Relation), second)
	case l.Problem.Kind == arithmetic.Claim:
		return telling.Join(first, l.Problem.Rel.String(), second, telling.Unknown())
	}
	return telling.Join(first, telling.Unknown(), second)
}

func signOf(r arithmetic.Relation) notation.Term {
	sign := notation.S(r.String())
	sign.Role = scene.Result
	return sign
}

// renamed is a number beside the fraction that had a blank.
func (l *lesson) renamed(answered bool) notation.Line {
	n, _ := l.Problem.Left.(arithmetic.Number)
	number := telling.Numeral(n, scene.First)
	blank := l.Problem.Blank
	top, low := "?", "?"
	if blank.Num > 0 {
		top = strconv.FormatInt(blank.Num, 10)
	}
	if blank.Den > 0 {
		low = strconv.FormatInt(blank.Den, 10)
	}
	fill := notation.Line{notation.F(top, low, scene.Hidden)}
	if answered {
		fill = telling.Numeral(l.Answer.Number, scene.Result)
	}
	if blank.First {
		return telling.Join(fill, "=", number)
	}
	return telling.Join(number, "=", fill)
}
