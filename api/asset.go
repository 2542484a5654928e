package api

import (
	"net/http"
	"strings"
)

// asset is a file that pages load, at an address that changes when the file does,
// so that a browser may keep it for good.
type asset struct {
	path, url string
	kind      string // media type
	body      []byte
}

func newAsset(path, kind string, body []byte) *asset {
	return &asset{path: path, url: path + "?v=" + strings.Trim(tagOf(string(body)), `"`), kind: kind, body: body}
}

// script is an asset of the folder web.
func script(name string) *asset {
	body, err := web.ReadFile("web/" + name)
	if err != nil {
		panic("api: " + err.Error()) // it is embedded
	}
	return newAsset("/"+name, "text/javascript; charset=utf-8", body)
}

// serve sends the file. An older or a missing tag in the address still gives it,
// for a while.
func (f *asset) serve(w http.ResponseWriter, r *http.Request) {
	a := answer{kind: f.kind, body: f.body, life: page, policy: sealed, tag: tagOf(string(f.body))}
	if r.URL.RequestURI() == f.url {
		a.life = forever
	}
	a.write(w, r)
}

// style serves /style.css.
func (s *site) style(w http.ResponseWriter, r *http.Request) { s.sheet.serve(w, r) }

// script serves the scripts by their paths.
func (s *site) script(w http.ResponseWriter, r *http.Request) {
	for _, f := range []*asset{s.spoken, s.stepping, s.keys, s.copying} {
		if f.path == r.URL.Path {
			f.serve(w, r)
		}
	}
}
