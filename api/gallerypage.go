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
	v := galleryPage{
		head: head{
			Title: words.Galleries.Title + " · modeler", Doc: words.Galleries.Doc,
			Style: s.sheet.url, Scripts: []string{s.keys.url, s.copying.url}, Skip: words.Galleries.Skip, Label: words.Pages.Field, W: words.Pages,
		},
		G: words.Galleries,
	}
	root := s.address(r)
	for _, one := range exhibits() {
		one.Examples = slices.Clone(one.Examples)
		for i := range one.Examples {
			one.Examples[i].Address = root + one.Examples[i].Address
		}
		v.Models = append(v.Models, one)
	}
	render(w, r, "gallery.html", v, http.StatusOK, page)
}

// exhibits are all examples of all models, with addresses under this root. They are
// told once, since they are the same for every request.
var exhibits = sync.OnceValue(func() (all []gallery) {
	for _, m := range models.All {
		one := gallery{Name: m.Name, Title: m.Title, Doc: m.Doc}
		for _, text := range m.Examples {
			if e, ok := newExhibit(text, m); ok {
				one.Examples = append(one.Examples, e)
			}
		}
		all = append(all, one)
	}
	return all
})

func newExhibit(text string, m *models.Model) (exhibit, bool) {
	l, err := models.Teach(text, m.Name)
	if err != nil {
		return exhibit{}, false // tests see that every example is told
	}
	name := m.Name
	if usual, err := models.Teach(text, ""); err == nil && usual.Model == m {
		name = "" // a shorter address for the same picture
	}
	p := Picture{Problem: l.Problem.String(), Model: name}
	e := exhibit{link: linkTo(l.Problem.String(), name), Address: p.URL()}
	e.Picture = show(p, l.Whole, true)
	return e, true
}
