package main

import (
	"fmt"
	"strings"

	"modeler/models"
)

var modelsCommand = command{
	name: "models",
	doc:  "list the models: what each is for, and examples",
	run:  listModels,
}

func listModels(c call) int {
	var b strings.Builder
	for i, m := range models.All {
		if i > 0 {
			b.WriteString("\n")
		}
		b.WriteString(m.Name + "\n")
		wrap(&b, "    ", m.Doc)
		wrap(&b, "    for example: ", strings.Join(m.Examples[:min(3, len(m.Examples))], "; "))
	}
	fmt.Fprint(c.out, b.String())
	return done
}
