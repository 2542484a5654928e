package api

import (
	"encoding/json"
	"errors"
	"net/http"
	"strconv"
	"strings"
	"unicode/utf8"

	"modeler/arithmetic/reading"
)

// reason is what is wrong; the alias keeps its name from hiding its method Error.
type reason = reading.Error

// Trouble is an error that a person can mend: which parameter, which characters
// of it, what is wrong, what was expected and a value near it that works.
type Trouble struct {
	reason
	Parameter string // problem, model, step, answer, theme, width, errors, think or look
	Status    int    // the HTTP status that says the same
}

// troubled gives the error of a problem the parameter and the status it lacks.
func troubled(err error) *Trouble {
	var t *Trouble
	if errors.As(err, &t) {
		return t
	}
	var e *reading.Error
	if !errors.As(err, &e) {
		// Nothing below returns any other error; should one come, it is ours.
		e = &reading.Error{Code: "internal", Message: "this problem could not be shown", Hint: "try another one", Try: "402 − 178"}
		return &Trouble{reason: *e, Parameter: "problem", Status: http.StatusInternalServerError}
	}
	t = &Trouble{reason: *e, Parameter: "problem", Status: http.StatusBadRequest}
	switch {
	case e.Code == reading.TooLong:
		t.Status = http.StatusRequestURITooLong
	case e.Readable():
		t.Status = http.StatusUnprocessableEntity
	}
	return t
}

// parameterTrouble is about a value that a parameter cannot have.
func parameterTrouble(name, value, message, hint, try string) *Trouble {
	value = Clip(value)
	return &Trouble{
		reason: reading.Error{
			Code: reading.Code("bad-" + name), Text: value, End: utf8.RuneCountInString(value),
			Message: message, Hint: hint, Try: try,
		},
		Parameter: name,
		Status:    http.StatusBadRequest,
	}
}

// Clip shortens a value that is only shown back, and replaces what does not
// print.
func Clip(value string) string {
	const longest = 40
	r := []rune(printable(value))
	if len(r) > longest {
		r = append(r[:longest], '…')
	}
	return string(r)
}

// details is the body of an error after RFC 9457. The type is about:blank, so the
// title is the status in words; the other members are extensions.
type details struct {
	Type      string `json:"type"`
	Title     string `json:"title"`
	Status    int    `json:"status"`
	Detail    string `json:"detail"`
	Code      string `json:"code"`
	Hint      string `json:"hint,omitempty"`
	Parameter string `json:"parameter,omitempty"`
	Text      string `json:"text,omitempty"`     // the value as it was understood
	Position  *int   `json:"position,omitempty"` // in characters of text, from 0
	Length    int    `json:"length,omitempty"`
	Try       string `json:"try,omitempty"`
}

// refuse answers with the trouble's own status and problem details.
func (t *Trouble) refuse(w http.ResponseWriter, r *http.Request) {
	if r.Method == http.MethodPost && t.Status == http.StatusRequestURITooLong {
		t.Status = http.StatusRequestEntityTooLarge // it came in the body
	}
	a := answer{status: t.Status, kind: "application/problem+json", body: marshal(t.details()), life: brief, policy: sealed}
	switch t.Status {
	case http.StatusTooManyRequests:
		a.life = never
	case http.StatusServiceUnavailable:
		a.life = never
		w.Header().Set("Retry-After", "2")
	}
	a.write(w, r)
}

// details are what RFC 9457 has of a trouble.
func (t *Trouble) details() details {
	d := details{
		Type: "about:blank", Title: http.StatusText(t.Status), Status: t.Status, Detail: t.Message,
		Code: string(t.Code), Hint: t.Hint, Parameter: t.Parameter, Try: t.Try,
	}
	if t.Parameter != "" {
		d.Text, d.Position, d.Length = printable(t.Text), &t.Start, t.End-t.Start
	}
	return d
}

// mark is the value of the X-Picture-Error header.
func (t *Trouble) mark() string {
	mark := string(t.Code) + "; position=" + strconv.Itoa(t.Start)
	if t.Parameter != "problem" {
		mark += "; parameter=" + t.Parameter
	}
	return mark
}

// marshal writes JSON for people and programs: indented, with < and & as they are.
func marshal(v any) []byte {
	var b strings.Builder
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(v); err != nil {
		panic("api: " + err.Error()) // only for a type that JSON lacks: a mistake in the program
	}
	return []byte(b.String())
}
