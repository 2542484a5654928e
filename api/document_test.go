package api_test

import (
	"encoding/json"
	"net/url"
	"slices"
	"strings"
	"testing"

	"modeler/api"
	"modeler/arithmetic/reading"
	"modeler/models"
)

// lesson.json has the members that its contract lists, and its addresses work.
func TestLessonDocument(t *testing.T) {
	for _, m := range models.All {
		for _, text := range m.Examples {
			target := "/v1/lesson.json?problem=" + url.QueryEscape(text) + "&model=" + m.Name
			var d api.Document
			dec := json.NewDecoder(strings.NewReader(get(t, target)))
			dec.DisallowUnknownFields()
			if err := dec.Decode(&d); err != nil {
				t.Errorf("GET %s: %v", target, err)
				continue
			}
			if d.Problem != text || d.Reading == "" || d.Kind == "" || d.Answer == "" || d.Model != m.Name || d.Alt == "" || len(d.Steps) == 0 {
				t.Errorf("GET %s: a member is missing: %+v", target, d)
			}
			if read, err := reading.Read(text); err == nil && (read.Problem.Kind == "claim") != (d.Verdict != nil && d.Why != "") {
				t.Errorf("GET %s: verdict %v, why %q", target, d.Verdict, d.Why)
			}
			for _, u := range append([]string{d.Picture}, pictures(d)...) {
				if resp := ask(t, "GET", u); resp.StatusCode != 200 || resp.Header.Get("X-Picture-Error") != "" || resp.Header.Get("Content-Location") != u {
					t.Errorf("GET %s has %s: status %d, error %q, at %s", target, u, resp.StatusCode, resp.Header.Get("X-Picture-Error"), resp.Header.Get("Content-Location"))
				}
			}
		}
	}
}

func pictures(d api.Document) (urls []string) {
	for _, s := range d.Steps {
		urls = append(urls, s.Picture)
	}
	return urls
}

func TestCatalogueListsEveryModel(t *testing.T) {
	var c struct {
		Models []struct {
			Name, Doc string
			Examples  []struct{ Problem, Picture, Lesson string }
		}
		Themes []string
	}
	if err := json.Unmarshal([]byte(get(t, "/v1/models.json")), &c); err != nil {
		t.Fatal(err)
	}
	if len(c.Models) != len(models.All) || len(c.Themes) == 0 {
		t.Fatalf("got %d models and %d themes, want %d models", len(c.Models), len(c.Themes), len(models.All))
	}
	for i, m := range models.All {
		if c.Models[i].Name != m.Name || c.Models[i].Doc != m.Doc || len(c.Models[i].Examples) != len(m.Examples) {
			t.Errorf("model %d is %+v, want %s", i, c.Models[i], m.Name)
		}
		for _, e := range c.Models[i].Examples {
			if ask(t, "GET", e.Picture).Header.Get("X-Picture-Error") != "" || ask(t, "GET", e.Lesson).StatusCode != 200 {
				t.Errorf("the addresses of %s do not work: %s %s", e.Problem, e.Picture, e.Lesson)
			}
		}
	}
}

// The description, the catalogue, the page of pictures and the error for an unknown
// model name the models of models.All, in its order.
func TestListsOfModelsAreReadOffTheRegistry(t *testing.T) {
	var names []string
	for _, m := range models.All {
		names = append(names, m.Name)
	}
	var doc struct {
		Components struct {
			Parameters map[string]struct{ Schema struct{ Enum []string } }
			Schemas    map[string]struct {
				Properties map[string]struct {
					Enum  []string
					Items struct{ Enum []string }
				}
			}
		}
	}
	if err := json.Unmarshal([]byte(get(t, "/openapi.json")), &doc); err != nil {
		t.Fatal(err)
	}
	lesson := doc.Components.Schemas["Lesson"].Properties
	for what, list := range map[string][]string{
		"the parameter": doc.Components.Parameters["model"].Schema.Enum, "a lesson's model": lesson["model"].Enum, "its other models": lesson["other_models"].Items.Enum,
	} {
		if !slices.Equal(list, names) {
			t.Errorf("%s can be %v, want %v", what, list, names)
		}
	}

	var list struct {
		Models []struct{ Name, Title string }
	}
	if err := json.Unmarshal([]byte(get(t, "/v1/models.json")), &list); err != nil {
		t.Fatal(err)
	}
	gallery := get(t, "/pictures")
	var listed []string
	for _, m := range list.Models {
		listed = append(listed, m.Name)
		if !strings.Contains(gallery, m.Title) {
			t.Errorf("/pictures lacks %q", m.Title)
		}
	}
	if !slices.Equal(listed, names) {
		t.Errorf("/v1/models.json has %v, want %v", listed, names)
	}
	if refused := get(t, "/v1/picture.txt?problem=7x8&model=nosuch"); !strings.Contains(refused, strings.Join(names, ", ")) {
		t.Errorf("an unknown model is refused without the names that there are: %s", refused)
	}
}
