package api

import (
	"bytes"
	"encoding/json"
	"net/http"
	"sync"
	"text/template"

	"modeler/arithmetic/reading"
	"modeler/models/words"
)

// openAPI is the description of the service after OpenAPI 3.1, with the names and
// bounds that the program has.
var openAPI = sync.OnceValue(func() []byte {
	list := func(names []string) string {
		text, err := json.Marshal(names)
		if err != nil {
			panic("api: " + err.Error()) // they are texts
		}
		return string(text)
	}
	var b bytes.Buffer
	err := template.Must(template.ParseFS(web, "web/openapi.json")).Execute(&b, map[string]any{
		"Models": list(modelNames()), "Themes": list(themeNames()), "Wordings": list(words.Wordings), "MaxText": reading.MaxText,
		"MinWidth": MinWidth, "MaxWidth": MaxWidth, "MaxScale": MaxScale, "MaxBody": longestBody,
	})
	if err != nil {
		panic("api: " + err.Error()) // tests fill it in
	}
	return b.Bytes()
})

// describe serves /openapi.json.
func describe(w http.ResponseWriter, r *http.Request) {
	a := *described()
	a.write(w, r)
}

var described = sync.OnceValue(func() *answer {
	a := &answer{kind: "application/json", body: openAPI(), life: lasting, policy: sealed, location: "/openapi.json"}
	a.tag = tagOf(string(a.body))
	a.pack()
	return a
})

// component serves /modeler-picture.js, an element for other people's pages that
// shows pictures from here. It may be read from anywhere.
func component(w http.ResponseWriter, r *http.Request) {
	body, err := web.ReadFile("web/modeler-picture.js")
	if err != nil {
		panic("api: " + err.Error()) // it is embedded
	}
	a := answer{kind: "text/javascript; charset=utf-8", body: body, life: lasting, policy: sealed, tag: tagOf(string(body))}
	a.write(w, r)
}
