package api

import (
	"net/http"
	"slices"
	"sync"

	"modeler/models"
	"modeler/models/words"
)

// galleryPage shows what every model draws, each picture with its address.
type galleryPage struct {
	head
	G      words.Gallery
	Models []gallery
}

// gallery is one model and its examples.
type gallery struct {
	Name, Title, Doc string
	Examples         []exhibit
}

// exhibit is a picture to be taken away.
type exhibit struct {
	link
	Address string // whole
}

// gallery serves /pictures.
func (s *site) gallery(w http.ResponseWriter, r *http.Request) {
	wording, err := ReadWording(readQuery(r.URL.RawQuery)["words"])
	if err != nil {
		s.fault(w, r, troubled(err), "", "", "/lesson")
		return
	}
	said, g := inWording(wording, words.Pages), inWording(wording, words.Galleries)
	v := galleryPage{
		head: head{
			Title: g.Title + " · modeler", Doc: g.Doc, Style: s.sheet.url, Scripts: []string{s.keys.url, s.copying.url}, Skip: g.Skip,
			Label: said.Field, W: said, Words: wording, Otherwise: "/pictures?words=" + words.Wordings[1-wording],
		},
		G: g,
	}
	root := s.address(r)
	for _, one := range exhibits[wording]() {
		one.Examples = slices.Clone(one.Examples)
		for i := range one.Examples {
			one.Examples[i].Address = root + one.Examples[i].Address
		}
		v.Models = append(v.Models, one)
	}
	render(w, r, "gallery.html", v, http.StatusOK, page)
}

// exhibits are all examples of all models, with addresses under this root. They are
// told once in each wording, since they are the same for every request.
var exhibits = [...]func() []gallery{
	words.American: sync.OnceValue(func() []gallery { return newExhibits(words.American) }),
	words.British:  sync.OnceValue(func() []gallery { return newExhibits(words.British) }),
}

func newExhibits(w words.Wording) (all []gallery) {
	for _, m := range models.All {
		one := gallery{Name: m.Name, Title: w.Text(m.Title), Doc: w.Text(m.Doc)}
		for _, text := range m.Examples {
			if e, ok := newExhibit(text, m, w); ok {
				one.Examples = append(one.Examples, e)
			}
		}
		all = append(all, one)
	}
	return all
}

func newExhibit(text string, m *models.Model, w words.Wording) (exhibit, bool) {
	l, err := models.Teach(text, m.Name)
	if err != nil {
		return exhibit{}, false // tests see that every example is told
	}
	name := m.Name
	if usual, err := models.Teach(text, ""); err == nil && usual.Model == m {
		name = "" // a shorter address for the same picture
	}
	p := Picture{Problem: l.Problem.String(), Model: name, Words: w}
	e := exhibit{link: choices{Model: name, Words: w}.link(l.Problem.String()), Address: p.URL()}
	e.Picture = show(p, l.Worded(w).Whole, true)
	return e, true
}
