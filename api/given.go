package api

import (
	"encoding/json"
	"errors"
	"io"
	"mime"
	"net/http"
	"strconv"

	"modeler/arithmetic/reading"
)

// longestBody bounds what is sent with POST, in bytes.
const longestBody = 16 << 10

// given has the parameters of a request: those of its URL and, with POST, those of
// its body, which go before them. A body is plain text, the problem; or JSON, an
// object of the parameters; or a form. In a body a plus is a plus.
func given(r *http.Request) (query, error) {
	q, err := readRequest(r)
	if err != nil || r.Method != http.MethodPost {
		return q, err
	}
	body, err := io.ReadAll(http.MaxBytesReader(nil, r.Body, longestBody))
	var large *http.MaxBytesError
	switch {
	case errors.As(err, &large):
		return q, bodyTrouble(http.StatusRequestEntityTooLarge, "too-large", "there is too much to read",
			"send at most "+strconv.Itoa(longestBody)+" bytes")
	case err != nil:
		return q, bodyTrouble(http.StatusBadRequest, "bad-body", "what was sent could not be read", "send it again")
	}
	kind, _, err := mime.ParseMediaType(r.Header.Get("Content-Type"))
	if err != nil {
		kind = ""
	}
	switch kind {
	case "", "text/plain":
		if len(body) > 0 {
			q["problem"] = string(body)
		}
	case "application/json":
		return q, q.merge(body)
	case "application/x-www-form-urlencoded":
		for name, value := range readQuery(string(body)) {
			q[name] = value
		}
	default:
		return q, bodyTrouble(http.StatusUnsupportedMediaType, "bad-body", "a body of this type cannot be read",
			"send text/plain with the problem, or application/json with an object of the parameters")
	}
	return q, nil
}

// merge takes the parameters of a JSON object: texts, and whole numbers.
func (q query) merge(body []byte) error {
	var object map[string]any
	if err := json.Unmarshal(body, &object); err != nil {
		return bodyTrouble(http.StatusBadRequest, "bad-body", "the body is not a JSON object", `send an object such as {"problem": "402 - 178"}`)
	}
	for name, value := range object {
		switch v := value.(type) {
		case string:
			q[name] = v
		case float64: // a width or a step; no number of a problem comes this way
			q[name] = strconv.FormatFloat(v, 'f', -1, 64)
		case nil:
		default:
			return bodyTrouble(http.StatusBadRequest, "bad-body", "“"+Clip(name)+"” is neither a text nor a number", "give every parameter as a text")
		}
	}
	return nil
}

func bodyTrouble(status int, code reading.Code, message, hint string) *Trouble {
	return &Trouble{Status: status, reason: reading.Error{Code: code, Message: message, Hint: hint}}
}
