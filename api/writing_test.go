package api_test

import (
	"encoding/json"
	"strings"
	"testing"

	"modeler/api"
)

// A subtraction with trades has its other writing in the document, and a problem
// without has none.
func TestLessonDocumentHasTheOtherWriting(t *testing.T) {
	for problem, want := range map[string]bool{"402-178": true, "45-23": false, "345%2B278": false, "7x8": false} {
		var d api.Document
		if err := json.Unmarshal([]byte(get(t, "/v1/lesson.json?problem="+problem)), &d); err != nil {
			t.Fatal(err)
		}
		has := false
		for _, s := range d.Steps {
			if e := s.Symbols.Europe; e != nil {
				has = true
				if !strings.Contains(e.Text, "+10") || !strings.HasPrefix(e.MathML, "<math") {
					t.Errorf("%s: %q is no equal addition", problem, e.Text)
				}
			}
		}
		if has != want {
			t.Errorf("%s: another writing: %v, want %v", problem, has, want)
		}
	}
}

func TestLessonPageTakesAWriting(t *testing.T) {
	us, europe := get(t, "/lesson?problem=402-178"), get(t, "/lesson?problem=402-178&writing=europe")
	if strings.Contains(us, ">+10<") || !strings.Contains(us, "writing=europe") {
		t.Error("the usual page writes equal additions, or does not lead to them")
	}
	if !strings.Contains(europe, ">+10<") || !strings.Contains(europe, "That 1 is the ten that was traded.") {
		t.Error("the other page does not write equal additions, or does not say how they are trades")
	}
	if plain := get(t, "/lesson?problem=7x8"); strings.Contains(plain, "writing=") {
		t.Error("a lesson without another writing leads to one")
	}
}

func TestUnknownWritingIsOfferedTheTwo(t *testing.T) {
	for _, v := range []string{"german", "uk", "e"} {
		_, err := api.ReadWriting(v)
		if err == nil || !strings.Contains(err.(*api.Trouble).Hint, "us, europe") {
			t.Errorf("%q: %v", v, err)
		}
	}
	for v, want := range map[string]bool{"": false, "us": false, " Europe": true} {
		if europe, err := api.ReadWriting(v); err != nil || europe != want {
			t.Errorf("%q: %v, %v", v, europe, err)
		}
	}
}
