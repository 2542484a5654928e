package api

import (
	"bytes"
	"embed"
	"html/template"
	"net/http"
	"net/url"
	"regexp"
	"strings"
	"sync"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
	"modeler/models/words"
	"modeler/svg"
)

//go:embed web
var web embed.FS

var pages = template.Must(template.ParseFS(web, "web/*.html"))

// site serves the page: the ask, the lesson, and what they need.
type site struct {
	public string          // the service's own address, "" to go by the request
	covers [2]func() cover // by wording; made when first asked for, so that the start is quick

	sheet    *asset // the style sheet
	spoken   *asset // the script of the child's page
	stepping *asset // of a lesson
	keys     *asset // of the field
	copying  *asset // of addresses to copy
}

func newSite(public string) *site {
	s := &site{
		public: public,
		sheet:  newAsset("/style.css", "text/css; charset=utf-8", styleSheet()),
		spoken: script("claim.js"), stepping: script("lesson.js"), keys: script("ask.js"), copying: script("copy.js"),
	}
	for w := range s.covers {
		s.covers[w] = sync.OnceValue(func() cover {
			c := newCover(s.sheet.url, words.Wording(w))
			c.Scripts = []string{s.keys.url}
			return c
		})
	}
	return s
}

// head is what every page has.
type head struct {
	Title, Doc, Style string
	Scripts           []string
	Skip              string // what the skip link leads to
	Label             string // of the field
	Asked             string // what stands in the field
	Fault             bool   // it could not be read
	Action            string // where the field leads; "" is the lesson
	Button            string // beside the field; "" is to show the lesson
	Card              *card  // of a lesson: what others show of it
	Ink               bool   // black on white
	Words             words.Wording
	Otherwise         string // the same page in the other wording; "" for a page that has none
	W                 words.Page
}

// card is what a link to a lesson looks like elsewhere: a picture that does not give
// the answer away, and where to ask for more. Its URLs are whole (Open Graph
// protocol; oEmbed, discovery).
type card struct {
	Title, Image, Alt string
	W, H              int
	Oembed, Data      string
}

func newCard(root string, l models.Lesson, model string) *card {
	const width = 1200
	p := Picture{Problem: l.Problem.String(), Model: model, Hidden: true, Width: width, Format: "png"}
	lesson := lessonURL("/lesson", l.Problem.String(), model)
	return &card{
		Title: l.Whole.Title.Hidden, Image: root + p.URL(), Alt: l.Whole.Desc.Hidden,
		W: width, H: (l.Whole.H*width + l.Whole.W/2) / l.Whole.W,
		Oembed: root + "/oembed?url=" + url.QueryEscape(root+lesson), Data: root + lessonURL("/v1/lesson.json", l.Problem.String(), model),
	}
}

// piece is a stretch of text, or a fraction to be typeset with a bar.
type piece struct{ Text, Num, Den string }

// said is a stretch of a phrase in one role.
type said struct {
	Class  string
	Pieces []piece
}

// shown is a picture on a page.
type shown struct {
	Src, Dark, Alt string
	W, H           int
	Lazy           bool
	Soon           bool // load it before the others
}

// link leads to a problem's lesson.
type link struct {
	Text, Title, URL string
	Pieces           []piece
	Picture          shown
}

var fractionText = regexp.MustCompile(`(\d+|\?)/(\d+|\?)`)

// wholesBefore matches the wholes of a mixed number in front of its fraction.
var wholesBefore = regexp.MustCompile(`\d $`)

// typeset finds the fractions of a text. The space inside a mixed number becomes a
// hair space: the fraction has air of its own, and who copies or hears the text
// still has a space there.
func typeset(text string) []piece {
	var out []piece
	for {
		at := fractionText.FindStringSubmatchIndex(text)
		if at == nil {
			break
		}
		if before := text[:at[0]]; wholesBefore.MatchString(before) {
			out = append(out, piece{Text: strings.TrimSuffix(before, " ") + "\u200a"})
		} else if before != "" {
			out = append(out, piece{Text: before})
		}
		out = append(out, piece{Num: text[at[2]:at[3]], Den: text[at[4]:at[5]]})
		text = text[at[1]:]
	}
	if text != "" {
		out = append(out, piece{Text: text})
	}
	for i := 1; i < len(out); i++ {
		if out[i-1].Den != "" {
			out[i].Text = joined(out[i].Text)
		}
	}
	return out
}

// joined keeps a mark on the line of the fraction before it: a browser may otherwise
// break a line after every fraction (CSS Text 3, 5.1; U+2060 is the word joiner).
func joined(text string) string {
	if text != "" && strings.ContainsAny(text[:1], ".,;:?!)") {
		return "\u2060" + text
	}
	return text
}

var sign = regexp.MustCompile(`(\d|\)|\?) ([−+×÷]) (\d|\(|\?)`)

// unbroken keeps a sign on the line of its two numbers: 402 − 178 is not parted at
// the end of a line, but may be before and after an equals sign.
func unbroken(text string) string {
	const kept = "$1\u00a0$2\u00a0$3"
	text = sign.ReplaceAllString(text, kept)
	return sign.ReplaceAllString(text, kept) // 1 + 2 + 3: the first time has passed over the second sign
}

func phrase(p words.Phrase) []said {
	var out []said
	for _, s := range p {
		one := said{Pieces: typeset(unbroken(s.Text))}
		if n := len(out); n > 0 && len(one.Pieces) > 0 {
			if before := out[n-1].Pieces; len(before) > 0 && before[len(before)-1].Den != "" {
				one.Pieces[0].Text = joined(one.Pieces[0].Text)
			}
		}
		if s.Role != scene.Ink {
			one.Class = s.Role.String()
		}
		out = append(out, one)
	}
	return out
}

// show is a picture of a scene in the light and the dark theme.
func show(p Picture, s *scene.Scene, lazy bool) shown {
	dark := p
	dark.Theme = svg.Named("dark")
	if p.Theme != nil {
		dark.Theme = p.Theme
	}
	return shown{Src: p.URL(), Dark: dark.URL(), Alt: sentence(s.Title.Say(p.Hidden)) + " " + s.Desc.Say(p.Hidden), W: s.W, H: s.H, Lazy: lazy}
}

// sentence ends a text with a full stop, if it has no end of its own.
func sentence(text string) string {
	if strings.HasSuffix(text, "?") || strings.HasSuffix(text, ".") {
		return text
	}
	return text + "."
}

// render writes a page and sends it.
func render(w http.ResponseWriter, r *http.Request, name string, view any, status int, life string) {
	var b bytes.Buffer
	if err := pages.ExecuteTemplate(&b, name, view); err != nil {
		panic("api: " + err.Error()) // a mistake in a template; tests run every page
	}
	a := answer{status: status, kind: "text/html; charset=utf-8", body: b.Bytes(), life: life, policy: own}
	if status == http.StatusOK {
		a.tag = tagOf(b.String())
	}
	a.write(w, r)
}

// faultPage shows a trouble as a page.
type faultPage struct {
	head
	Message, Hint, Text string
	Before, At, After   string
	Try, TryURL         string
	TryPieces           []piece
}

func (s *site) fault(w http.ResponseWriter, r *http.Request, t *Trouble, asked, model, way string) {
	wording, _ := ReadWording(readQuery(r.URL.RawQuery)["words"]) // where it is the fault, the usual one
	said := inWording(wording, words.Pages)
	f := faultPage{
		head: head{
			Title: wording.Text(printable(t.Message)) + " · modeler", Doc: said.FaultDoc,
			Style: s.sheet.url, Scripts: []string{s.keys.url}, Skip: said.FaultSkip, Label: said.Field,
			Asked: printable(asked), Fault: true, Action: way, W: said, Words: wording,
		},
		Message: wording.Text(printable(t.Message)), Hint: wording.Text(printable(t.Hint)), Text: printable(t.Text), Try: t.Try,
	}
	if t.Text != "" {
		const letter, room = 20, 2000 // about a hundred characters
		f.Before, f.At, f.After = t.around(letter, room)
	}
	switch {
	case t.Try == "":
	case t.Parameter != "" && t.Parameter != "problem":
		f.TryURL, f.TryPieces = lessonURL(way, asked, "")+"&"+t.Parameter+"="+encode(t.Try)+otherThan(t.Parameter, wording), typeset(t.Try)
	default:
		if t.Code == reading.NoPicture || t.Code == reading.NoSuchModel {
			model = ""
		}
		f.TryURL, f.TryPieces = lessonURL(way, t.Try, model)+inWords(wording), typeset(t.Try)
	}
	if way == "/claim" {
		c := inWording(wording, words.ClaimPage)
		f.Label, f.Button = c.Make, c.Show
	}
	render(w, r, "error.html", f, t.Status, brief)
}

// otherThan is what an address has for a wording, unless the parameter that is
// mended says it.
func otherThan(parameter string, w words.Wording) string {
	if parameter == "words" {
		return ""
	}
	return inWords(w)
}

// missing answers where there is no such page, or no such way to ask for it.
func (s *site) missing(w http.ResponseWriter, r *http.Request, status int) {
	t := &Trouble{Status: status, reason: reading.Error{
		Code: "not-found", Message: "there is no page here", Hint: "the way in is the field above, or the examples"}}
	switch {
	case status == http.StatusMethodNotAllowed:
		// The router lists OPTIONS too, which it answers itself.
		if w.Header().Get("Allow") == "" {
			w.Header().Set("Allow", "GET, HEAD, OPTIONS")
		}
		t.Code, t.Message, t.Hint = "method-not-allowed", "this address is not for "+Clip(r.Method), "use one of "+w.Header().Get("Allow")
	case status != http.StatusNotFound:
		t.Code, t.Message, t.Hint = "internal", "this could not be shown", ""
	}
	if strings.HasPrefix(r.URL.Path, "/v1/") || status != http.StatusNotFound {
		t.Hint = strings.Replace(t.Hint, "the way in is the field above, or the examples",
			"pictures are at /v1/picture.svg, lessons at /v1/lesson.json, the catalogue at /v1/models.json", 1)
		t.refuse(w, r)
		return
	}
	s.fault(w, r, t, "", "", "/lesson")
}

// address is the root of the URLs that a parent copies: the public address, or
// the host that was asked when it looks like one.
func (s *site) address(r *http.Request) string {
	if s.public != "" {
		return s.public
	}
	const longest = 255 // of a name and its port (RFC 1035, 2.3.4)
	if r.Host == "" || len(r.Host) > longest || strings.Trim(r.Host, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-:[]") != "" {
		return ""
	}
	if r.TLS != nil {
		return "https://" + r.Host
	}
	return "http://" + r.Host
}
