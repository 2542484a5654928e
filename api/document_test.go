package api_test

import (
	"encoding/json"
	"net/http/httptest"
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

// A model is in every list as soon as it is in models.All: the description names
// the same ones, and so does the catalogue when one more is put there.
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

	all := models.All
	defer func() { models.All = all }()
	one := *all[0]
	one.Name, one.Title = "one-more", "One more"
	models.All = append(slices.Clone(all), &one)
	for target, want := range map[string]string{
		"/v1/models.json": `"name": "one-more"`, "/pictures": "One more", "/v1/picture.svg?problem=7x8&errors=status&model=nosuch": ", one-more",
	} {
		w := httptest.NewRecorder()
		api.New(api.Options{}).ServeHTTP(w, httptest.NewRequest("GET", target, nil))
		if !strings.Contains(w.Body.String(), want) {
			t.Errorf("%s lacks the new model", target)
		}
	}
}
