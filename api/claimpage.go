package api

import (
	"net/http"
	"strconv"

	"modeler/arithmetic"
	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
	"modeler/models/words"
)

// claimPage is the child's page: two amounts, what the child thinks of them, and
// then the pictures that show it.
type claimPage struct {
	head
	Left, Right  []piece // the two amounts
	Sign         string  // between them
	Asks         bool    // the child has not said yet
	Choices      []choice
	Thought      []said
	Picture      shown
	Sentence     []said
	At, Last     int
	Back, On     string // URLs; "" where there is none
	End          *claimEnd
	Aloud        string
	Again, Whole string // to think again; the whole lesson
	Such         []link // of the page without a claim: claims to look at
	C            words.ClaimWords
}

type choice struct {
	Class  string
	Pieces []said
	URL    string
}

// claimEnd is what stands on the last of a claim's pages.
type claimEnd struct {
	Stands    []piece
	Why       []said
	Found     string
	TrueWords string // before them
	True      []link
}

// claimsToTry are of every sort that a child meets.
var claimsToTry = []string{"3/4 = 6/8", "5/8 > 2/3", "0.5 = 1/2", "0.3 < 0.29", "7 × 8 = 8 × 7", "4 + 1 = 5 + 2", "347 > 374"}

// thoughts are the values of the parameter think.
var thoughts = map[string]arithmetic.Relation{"first": arithmetic.Greater, "same": arithmetic.Equal, "second": arithmetic.Less}

// claim serves /claim.
func (s *site) claim(w http.ResponseWriter, r *http.Request) {
	q, err := readRequest(r)
	wording, werr := ReadWording(q["words"])
	if err == nil {
		err = werr
	}
	if err == nil && q["problem"] == "" {
		render(w, r, "claim.html", s.claimStart(wording), http.StatusOK, page)
		return
	}
	think := word(q["think"])
	if _, known := thoughts[think]; err == nil && think != "" && !known {
		err = oneOf("think", think, []string{"first", "same", "second"})
	}
	var l models.Lesson
	if err == nil {
		l, err = models.Teach(q["problem"], "")
	}
	if err == nil && l.Problem.Kind != arithmetic.Claim && l.Problem.Kind != arithmetic.Comparison {
		err = notAClaim(l)
	}
	at := 1
	if v := q["look"]; err == nil && v != "" {
		n, t := number("look", v, 1, len(l.Steps)+1)
		if t != nil {
			err = t
		}
		at = n
	}
	if err != nil {
		s.fault(w, r, troubled(err), q["problem"], "", "/claim")
		return
	}
	view := newClaimPage(l.Worded(wording), think, at, wording)
	view.Style, view.Scripts = s.sheet.url, []string{s.spoken.url}
	render(w, r, "claim.html", view, http.StatusOK, page)
}

func (s *site) claimStart(w words.Wording) claimPage {
	c := inWording(w, words.ClaimPage)
	v := claimPage{
		head: head{
			Title: c.Heading + " · modeler", Doc: c.Doc,
			Style: s.sheet.url, Scripts: []string{s.keys.url, s.spoken.url}, Skip: c.Skip, Label: c.Make, Action: "/claim", Button: c.Show,
			W: inWording(w, words.Pages), Words: w, Otherwise: "/claim?words=" + words.Wordings[1-w],
		},
		C: c,
	}
	for _, text := range claimsToTry {
		if read, err := models.Read(text); err == nil {
			v.Such = append(v.Such, claimLink(read.Problem.String(), w))
		}
	}
	return v
}

// notAClaim offers a claim to one who typed something else: what it comes to.
func notAClaim(l models.Lesson) *Trouble {
	try := claimsToTry[0]
	if value, err := arithmetic.Evaluate(l.Problem.Left); err == nil && l.Problem.Right == nil {
		claim := arithmetic.Problem{Kind: arithmetic.Claim, Rel: arithmetic.Equal, Left: l.Problem.Left, Right: arithmetic.FinalName(arithmetic.Frac(value))}
		if _, err := models.Teach(claim.String(), ""); err == nil {
			try = claim.String()
		}
	}
	return &Trouble{Parameter: "problem", Status: http.StatusUnprocessableEntity, reason: reading.Error{
		Code: "not-a-claim", Text: l.Text, End: len([]rune(l.Text)), Message: "a claim is about two amounts",
		Hint: "put =, < or > between two amounts", Try: try,
	}}
}

func claimURL(problem, think string, look int, w words.Wording) string {
	u := lessonURL("/claim", problem, "")
	if think != "" {
		u += "&think=" + think
	}
	if look > 0 {
		u += "&look=" + strconv.Itoa(look)
	}
	return u + inWords(w)
}

func claimLink(problem string, w words.Wording) link {
	return link{Text: problem, URL: claimURL(problem, "", 0, w), Pieces: typeset(problem)}
}

func newClaimPage(l models.Lesson, think string, at int, w words.Wording) claimPage {
	p := l.Problem
	written := p.String()
	c := inWording(w, words.ClaimPage)
	look := at
	if think == "" {
		look = 0
	}
	aloud := func(text string) string { return w.Text(words.Aloud(text)) }
	v := claimPage{
		head: head{
			Title: written + " · modeler", Doc: words.Asked(p) + " " + c.SayFirst,
			Skip: c.Skip, Label: c.Make, Asked: printable(l.Text), Action: "/claim", Button: c.Show,
			W: inWording(w, words.Pages), Words: w, Otherwise: claimURL(written, think, look, 1-w),
		},
		Left: typeset(p.Left.String()), Right: typeset(p.Right.String()), Sign: p.Rel.String(),
		Asks: think == "", C: c, Whole: choices{Words: w}.url(written), Again: claimURL(written, "", 0, w),
	}
	if v.Sign == "" {
		v.Sign = "?"
	}
	if v.Asks {
		choices := words.ClaimChoices(p)
		v.Aloud = aloud(words.Asked(p)) + " " + c.Think
		for i, name := range []string{"first", "same", "second"} {
			v.Choices = append(v.Choices, choice{[]string{scene.First.String(), "same", scene.Second.String()}[i], phrase(choices[i]), claimURL(written, name, 1, w)})
			v.Aloud += " " + aloud(choices[i].String()) + "."
		}
		return v
	}
	v.At, v.Last = at, len(l.Steps)+1
	v.Thought = phrase(words.ClaimThought(p, thoughts[think]))
	if at > 1 {
		v.Back = claimURL(written, think, at-1, w)
	}
	picture := Picture{Problem: written, Step: at, Words: w}
	if at == v.Last {
		picture.Step = 0
		v.Picture = show(picture, l.Whole, false)
		v.End = claimEnding(l, thoughts[think], w)
		v.Aloud = aloud(words.ClaimStands(p, l.Answer) + " " + words.ClaimReason(p, l.Answer, l.Why).String())
		return v
	}
	step := l.Steps[at-1]
	v.On = claimURL(written, think, at+1, w)
	v.Picture, v.Sentence = show(picture, step.Scene, false), phrase(step.Hands)
	v.Aloud = aloud(step.Hands.String())
	return v
}

func claimEnding(l models.Lesson, think arithmetic.Relation, w words.Wording) *claimEnd {
	p, a := l.Problem, l.Answer
	end := &claimEnd{
		Stands: typeset(words.ClaimStands(p, a)), Why: phrase(words.ClaimReason(p, a, l.Why)),
		Found: words.ClaimFound(think, a.Relation), TrueWords: words.ClaimPage.True,
	}
	if a.True {
		end.TrueWords = words.ClaimPage.AlsoTrue
	}
	truths := []arithmetic.Problem{{Kind: arithmetic.Claim, Left: p.Left, Rel: a.Relation, Right: p.Right}}
	if equation, ok := arithmetic.TrueEquality(p); ok && a.Relation != arithmetic.Equal {
		truths = []arithmetic.Problem{equation, truths[0]}
	}
	for _, truth := range truths {
		if _, err := models.Teach(truth.String(), ""); err == nil && truth.String() != p.String() {
			end.True = append(end.True, claimLink(truth.String(), w))
		}
	}
	return end
}
