package api

import (
	"encoding/json"
	"net/http"
	"strings"
	"sync"

	"modeler/models"
	"modeler/models/words"
)

// toolsPage explains the service to those who build with it, by examples that work.
type toolsPage struct {
	head
	T          words.Tools
	Root       string
	Component  string // the script of the element
	Parameters []parameter
	Picture    shown
	Dark       string
	Broken     shown
	Mark       string // what the header says of the broken one
	Lesson     string // the beginning of a lesson as data
	Refusal    string // problem details
	Oembed     string
}

// parameter is one that a picture has.
type parameter struct {
	Name, Says, Values string
	Must               bool
}

// pictureParameters are read off the description of the service, so that it is
// written once.
var pictureParameters = sync.OnceValue(func() []parameter {
	var doc struct {
		Paths map[string]struct {
			Get struct {
				Parameters []struct {
					Ref string `json:"$ref"`
				}
			}
		}
		Components struct {
			Parameters map[string]struct {
				Name, Description string
				Required          bool
				Schema            struct {
					Enum                        []string
					Minimum, Maximum, MaxLength json.Number
				}
			}
		}
	}
	if err := json.Unmarshal(openAPI(), &doc); err != nil {
		panic("api: " + err.Error()) // tests read it
	}
	var out []parameter
	for _, ref := range doc.Paths["/v1/picture.svg"].Get.Parameters {
		p := doc.Components.Parameters[strings.TrimPrefix(ref.Ref, "#/components/parameters/")]
		one := parameter{Name: p.Name, Says: p.Description, Must: p.Required}
		switch s := p.Schema; {
		case len(s.Enum) > 0:
			one.Values = strings.Join(s.Enum, ", ")
		case s.Maximum != "":
			one.Values = words.FromTo(s.Minimum.String(), s.Maximum.String())
		case s.Minimum != "":
			one.Values = words.FromTo(s.Minimum.String(), "")
		case s.MaxLength != "":
			one.Values = words.AtMost(s.MaxLength.String())
		}
		out = append(out, one)
	}
	return out
})

// tools serves /tools.
func (s *site) tools(w http.ResponseWriter, r *http.Request) {
	const problem, broken = "3/4=6/8", "23 ducks"
	wording, err := ReadWording(readQuery(r.URL.RawQuery)["words"])
	if err != nil {
		s.fault(w, r, troubled(err), "", "", "/lesson")
		return
	}
	said, t := inWording(wording, words.Pages), inWording(wording, words.ToolsPage)
	root := s.address(r)
	v := toolsPage{
		head: head{
			Title: t.Title + " · modeler", Doc: t.Doc, Style: s.sheet.url, Scripts: []string{s.keys.url, s.copying.url}, Skip: t.Skip,
			Label: said.Field, W: said, Words: wording, Otherwise: "/tools?words=" + words.Wordings[1-wording],
		},
		T: t, Root: root, Component: "/modeler-picture.js", Parameters: pictureParameters(),
	}
	if l, err := models.Teach(problem, ""); err == nil {
		v.Picture = show(Picture{Problem: l.Problem.String()}, l.Whole, false)
		v.Dark = v.Picture.Dark
		v.Lesson = beginning(NewDocument(l, "").JSON())
		v.Oembed = root + "/oembed?url=" + encode(root+lessonURL("/lesson", problem, ""))
	}
	if _, err := models.Teach(broken, ""); err != nil {
		t := troubled(err)
		drawn := t.scene()
		v.Mark = "X-Picture-Error: " + t.mark()
		v.Refusal = string(marshal(t.details()))
		v.Broken = shown{Src: "/v1/picture.svg?problem=" + encode(broken), Alt: sentence(printable(t.Message)), W: drawn.W, H: drawn.H}
	}
	render(w, r, "tools.html", v, http.StatusOK, page)
}

// beginning is the first lines of a document, and the rest of its first step.
func beginning(document []byte) string {
	const most = 32
	lines := strings.SplitAfterN(string(document), "\n", most+1)
	if len(lines) <= most {
		return string(document)
	}
	return strings.Join(lines[:most], "") + "  …"
}
