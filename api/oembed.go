package api

import (
	"net/http"
	"net/url"
	"strings"

	"modeler/arithmetic/reading"
	"modeler/models"
	"modeler/models/scene"
)

// photo is the answer of oEmbed, type photo (oembed.com, version 1.0, section
// 2.3.4.1). It is a PNG, since many that speak oEmbed take no SVG.
type photo struct {
	Version  string `json:"version"`
	Type     string `json:"type"`
	Title    string `json:"title"`
	URL      string `json:"url"`
	Width    int    `json:"width"`
	Height   int    `json:"height"`
	Provider string `json:"provider_name"`
	Home     string `json:"provider_url"`
	Age      int    `json:"cache_age"` // seconds
}

// oembed serves /oembed: the picture of one of our lesson pages.
func (s *site) oembed(w http.ResponseWriter, r *http.Request) {
	q, err := readRequest(r)
	var p photo
	if err == nil {
		p, err = s.photoOf(q, r)
	}
	if err != nil {
		troubled(err).refuse(w, r)
		return
	}
	a := answer{kind: "application/json", body: marshal(p), life: lasting, policy: sealed}
	a.tag = tagOf(string(a.body))
	a.write(w, r)
}

func (s *site) photoOf(q query, r *http.Request) (photo, error) {
	if f := word(q["format"]); f != "" && f != "json" {
		t := oneOf("format", f, []string{"json"})
		t.Status = http.StatusNotImplemented // as oEmbed has it
		return photo{}, t
	}
	asked, err := url.Parse(q["url"])
	root := s.address(r)
	if err != nil || asked.Path != "/lesson" || asked.Host != "" && !strings.HasSuffix(root, "://"+asked.Host) {
		return photo{}, &Trouble{Parameter: "url", Status: http.StatusNotFound, reason: reading.Error{
			Code: "bad-url", Text: Clip(q["url"]), End: len([]rune(Clip(q["url"]))), Message: "this is not the address of a lesson here",
			Hint: "give the address of a lesson page", Try: root + "/lesson?problem=7x8",
		}}
	}
	of := readQuery(asked.RawQuery)
	l, err := models.Teach(of["problem"], word(of["model"]))
	if err != nil {
		return photo{}, err
	}
	width, err := room(q, l.Whole)
	if err != nil {
		return photo{}, err
	}
	picture := Picture{Problem: l.Problem.String(), Model: word(of["model"]), Width: width, Format: "png"}
	return photo{
		Version: "1.0", Type: "photo", Title: l.Whole.Title.Shown, URL: root + picture.URL(),
		Width: width, Height: (l.Whole.H*width + l.Whole.W/2) / l.Whole.W, Provider: "modeler", Home: root + "/", Age: 86400,
	}, nil
}

// room is the width at which a scene has room in maxwidth and maxheight.
func room(q query, s *scene.Scene) (int, error) {
	width := s.W
	for _, side := range []string{"maxwidth", "maxheight"} {
		if q[side] == "" {
			continue
		}
		least := MinWidth
		if side == "maxheight" {
			least = MinWidth*s.H/s.W + 1
		}
		most, err := number(side, q[side], least, 100_000)
		if err != nil {
			return 0, err
		}
		if side == "maxheight" {
			most = (2*most - 1) * s.W / (2 * s.H) // its height, rounded, is no more than that
		}
		width = min(width, most)
	}
	return max(width, MinWidth), nil
}
