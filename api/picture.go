package api

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"net/http"
	"strconv"
	"strings"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
	"modeler/models/words"
	"modeler/svg"
	"modeler/svg/raster"
)

// Bounds of a picture's width in pixels.
const (
	MinWidth = 64
	MaxWidth = 4000
)

// Picture is one picture asked for: a problem and how to draw it.
type Picture struct {
	Problem string
	Model   string     // a model's name; "" is the one a teacher would reach for
	Step    int        // from 1; 0 is the picture of the whole story
	Hidden  bool       // without the answer
	Theme   *svg.Theme // nil is the usual one
	Width   int        // pixels; 0 is the natural width
	Scale   int        // times the natural width; 0 is once, and Width goes before it
	Format  string     // svg, png or txt; "" is svg
	Words   words.Wording
}

// MaxScale is the most that a picture is enlarged by its scale.
const MaxScale = 5

// ReadPicture reads the parameters of a picture by their names; value returns ""
// for one that is not given. Its error is always a *[Trouble], and what could be
// read is returned beside it, so that the error can be drawn as asked.
func ReadPicture(value func(name string) string) (Picture, error) {
	p := Picture{Problem: value("problem")}
	var first error
	keep := func(err error) {
		if first == nil {
			first = err
		}
	}
	if v := word(value("theme")); v != "" {
		if p.Theme = svg.Named(v); p.Theme == nil {
			keep(oneOf("theme", v, themeNames()))
		}
	}
	if v := value("width"); v != "" {
		n, err := number("width", v, MinWidth, MaxWidth)
		if err != nil {
			keep(err)
		}
		p.Width = n
	}
	if v := value("scale"); v != "" {
		n, err := number("scale", v, 1, MaxScale)
		if err != nil {
			keep(err)
		}
		p.Scale = n
	}
	switch v := word(value("answer")); v {
	case "", "shown":
	case "hidden":
		p.Hidden = true
	default:
		keep(oneOf("answer", v, []string{"shown", "hidden"}))
	}
	if v := value("step"); v != "" {
		n, err := number("step", v, 1, 1000)
		if err != nil {
			keep(err)
		}
		p.Step = n
	}
	var err error
	if p.Words, err = ReadWording(value("words")); err != nil {
		keep(err)
	}
	if p.Model, err = readModel(value("model")); err != nil {
		keep(err)
	}
	return p, first
}

// readModel reads the name of a model; "" is none.
func readModel(v string) (string, error) {
	name := word(v)
	if name == "" || models.Named(name) != nil {
		return name, nil
	}
	t := oneOf("model", name, modelNames())
	t.Message = "there is no model called “" + Clip(name) + "”"
	t.Code, t.Status = reading.NoSuchModel, http.StatusUnprocessableEntity
	return "", t
}

// word is a value that is one of a few names: case and outer space do not matter.
func word(v string) string { return strings.ToLower(strings.TrimSpace(v)) }

func oneOf(name, value string, all []string) *Trouble {
	try := Near(value, all)
	if try == "" && len(all) > 0 {
		try = all[0]
	}
	return parameterTrouble(name, value, name+" cannot be “"+Clip(value)+"”",
		name+" is one of: "+strings.Join(all, ", "), try)
}

// number reads a whole number from low to high; beyond, the nearer end is offered.
func number(name, value string, low, high int) (int, *Trouble) {
	digits := strings.TrimSpace(value)
	hint := name + " is a whole number from " + strconv.Itoa(low) + " to " + strconv.Itoa(high)
	n, err := strconv.Atoi(digits)
	switch {
	case err != nil && (digits == "" || strings.Trim(digits, "0123456789") != ""):
		return 0, parameterTrouble(name, value, name+" is not a whole number", hint, strconv.Itoa(low))
	case err != nil || n > high:
		return 0, parameterTrouble(name, value, name+" is too large", hint, strconv.Itoa(high))
	case n < low:
		return 0, parameterTrouble(name, value, name+" is too small", hint, strconv.Itoa(low))
	}
	return n, nil
}

func themeNames() []string {
	names := make([]string, len(svg.Themes))
	for i, t := range svg.Themes {
		names[i] = t.Name
	}
	return names
}

func modelNames() []string {
	names := make([]string, len(models.All))
	for i, m := range models.All {
		names[i] = m.Name
	}
	return names
}

// Draw tells the lesson and draws the picture, or writes what it shows. Its error is
// always a *[Trouble].
func (p Picture) Draw() ([]byte, error) {
	read, err := models.Read(p.Problem)
	if err != nil {
		return nil, troubled(err)
	}
	return p.drawAsRead(read)
}

// drawAsRead is Draw for a problem that was read already.
func (p Picture) drawAsRead(read reading.Reading) ([]byte, error) {
	l, err := models.TeachAsRead(read, p.Model)
	if err != nil {
		return nil, troubled(err)
	}
	s, err := p.scene(l.Worded(p.Words))
	if err != nil {
		return nil, err
	}
	if p.Format == "txt" {
		return []byte(s.Title.Say(p.Hidden) + "\n\n" + s.Desc.Say(p.Hidden) + "\n"), nil
	}
	width := p.Width
	if width == 0 && p.Scale > 0 {
		width = p.Scale * s.W
	}
	body := svg.Render(s, svg.Options{Theme: p.Theme, Width: width, Hidden: p.Hidden})
	if p.Format != "png" {
		return body, nil
	}
	pixels, err := raster.PNG(body, 0)
	if errors.Is(err, raster.ErrTooLarge) {
		// As wide as this picture, which is as high as it is, may be.
		t := parameterTrouble("width", strconv.Itoa(width), "this picture would be too high", "ask for it less wide", strconv.Itoa(svg.Width(s, raster.MaxPixels)))
		return nil, t
	}
	if err != nil {
		panic("api: " + err.Error()) // every file of ours can be drawn
	}
	return pixels, nil
}

func (p Picture) scene(l models.Lesson) (*scene.Scene, error) {
	switch {
	case p.Step == 0:
		return l.Whole, nil
	case p.Step > len(l.Steps):
		last := strconv.Itoa(len(l.Steps))
		hint := "this lesson has " + last + " steps"
		if last == "1" {
			hint = "this lesson has one step"
		}
		t := parameterTrouble("step", strconv.Itoa(p.Step), "there is no step "+strconv.Itoa(p.Step), hint, last)
		t.Code, t.Status = "no-such-step", http.StatusUnprocessableEntity
		return nil, t
	}
	return l.Steps[p.Step-1].Scene, nil
}

// URL is the one canonical URL of the picture, from the root: the problem in its
// plain spelling, then what is not as usual, always in the same order.
func (p Picture) URL() string {
	format := p.Format
	if format == "" {
		format = "svg"
	}
	u := "/v1/picture." + format + "?problem=" + encode(spelling.Replace(p.Problem))
	if p.Model != "" {
		u += "&model=" + encode(p.Model)
	}
	if p.Step > 0 {
		u += "&step=" + strconv.Itoa(p.Step)
	}
	if p.Hidden {
		u += "&answer=hidden"
	}
	u += inWords(p.Words)
	if format == "txt" {
		return u
	}
	if p.Theme != nil && p.Theme != svg.Themes[0] {
		u += "&theme=" + encode(p.Theme.Name)
	}
	switch {
	case p.Width > 0:
		u += "&width=" + strconv.Itoa(p.Width)
	case p.Scale > 1:
		u += "&scale=" + strconv.Itoa(p.Scale)
	}
	return u
}

// tagOf is the entity tag of what a canonical URL gives: it changes when the
// program does, so nobody has to remember to raise a number when a drawing
// changes.
func tagOf(canonical string) string {
	sum := sha256.Sum256([]byte(revision() + "\n" + canonical))
	return `"` + hex.EncodeToString(sum[:12]) + `"`
}

// pictureKinds are the media types of the formats.
var pictureKinds = map[string]string{"svg": "image/svg+xml", "png": "image/png", "txt": "text/plain; charset=utf-8"}

// picture serves /v1/picture.svg, .png and .txt.
func (s *Service) picture(format string) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		asked, sent := s.sendKept(w, r)
		if sent {
			return
		}
		q, err := given(r)
		p, perr := ReadPicture(q.value)
		p.Format = format
		if err == nil {
			err = perr
		}
		if v := word(q["errors"]); err == nil && v != "" && v != "status" && v != "picture" {
			err = oneOf("errors", v, []string{"picture", "status"})
		}
		var a *answer
		if err == nil {
			a, err = s.drawn(p, r)
		}
		if err == nil {
			s.send(w, r, a, asked, a.location)
			return
		}
		t := troubled(err)
		if format == "txt" || r.Method == http.MethodPost || word(q["errors"]) == "status" || t.Status == http.StatusServiceUnavailable {
			t.refuse(w, r)
			return
		}
		s.troubleDrawn(w, r, t, p)
	}
}

// troubleDrawn answers with a picture of the trouble, and with status 200: a browser
// shows no picture that comes with an error status, and image proxies pass only 200.
func (s *Service) troubleDrawn(w http.ResponseWriter, r *http.Request, t *Trouble, p Picture) {
	a := &answer{kind: pictureKinds[p.Format], life: brief, policy: sealed,
		body: svg.Render(t.scene(), svg.Options{Theme: p.Theme, Width: p.Width})}
	if p.Format == "png" {
		done, ok := s.turn()
		if !ok {
			busy().refuse(w, r)
			return
		}
		defer done()
		var err error
		if a.body, err = raster.PNG(a.body, 0); err != nil {
			t.refuse(w, r)
			return
		}
	}
	w.Header().Set("X-Picture-Error", t.mark())
	a.write(w, r)
}

// drawn is the answer with the picture: the one that is kept, or one with nothing
// in it for a client that has it, for which reading the problem is all the work
// there is, or else a new one.
func (s *Service) drawn(p Picture, r *http.Request) (*answer, error) {
	read, err := models.Read(p.Problem)
	if err != nil {
		return nil, err
	}
	canonical := p
	canonical.Problem = read.Problem.String()
	url := canonical.URL()
	a := answer{kind: pictureKinds[p.Format], life: lasting, policy: sealed, location: url, tag: tagOf(url)}
	if a.heldBy(r) {
		a.held = true
		return &a, nil
	}
	return s.store.get(url, func() (*answer, error) {
		if p.Format == "png" {
			done, ok := s.turn()
			if !ok {
				return nil, busy()
			}
			defer done()
		}
		body, err := p.drawAsRead(read)
		if err != nil {
			return nil, err
		}
		a.body = body
		return &a, nil
	})
}

func busy() *Trouble {
	return &Trouble{Status: http.StatusServiceUnavailable, reason: reading.Error{
		Code: "busy", Message: "too many pictures are being drawn just now", Hint: "ask again in a few seconds"}}
}
