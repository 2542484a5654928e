package api

import (
	"net/http"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"modeler/arithmetic/reading"
)

// longestQuery bounds the query string of a URL, in bytes. The reader bounds the
// problem itself, in characters; this is room for it with every character
// escaped, and for the other parameters.
const longestQuery = 4096

// readRequest has the parameters of a request. Under /v1/, whose URLs are written
// by hand, a lost plus is put back in the problem: in a query string a bare +
// means a space. The form of the page escapes it, so there a space is a space.
func readRequest(r *http.Request) (query, error) {
	q := readQuery(r.URL.RawQuery)
	if strings.HasPrefix(r.URL.Path, "/v1/") {
		q["problem"] = reading.RestorePlus(q["problem"])
	}
	if len(r.URL.RawQuery) > longestQuery {
		q["problem"] = ""
		return q, &Trouble{
			reason: reading.Error{
				Code:    reading.TooLong,
				Message: "this address is too long to read",
				Hint:    "use at most " + strconv.Itoa(longestQuery) + " characters after the question mark",
				Try:     "402 − 178",
			},
			Parameter: "problem",
			Status:    http.StatusRequestURITooLong,
		}
	}
	return q, nil
}

func (q query) value(name string) string { return q[name] }

// printable replaces what cannot stand in a page or a picture: control and
// direction marks, and bytes that are no text.
func printable(s string) string {
	out := make([]rune, 0, len(s))
	for _, r := range s {
		switch {
		case unicode.IsSpace(r):
			r = ' '
		case !unicode.IsPrint(r):
			r = utf8.RuneError
		}
		out = append(out, r)
	}
	return string(out)
}
