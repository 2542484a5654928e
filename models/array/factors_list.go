package array

import (
	"strings"

	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// list writes the factors at the foot, smaller and on more lines where they need
// it.
func (a *factors) list(s *scene.Scene) {
	const name, gap = 40, 12
	size := scene.Large
	lines := wrap(words.ArrayFactorList(a.answer.Pairs), size, scene.PaperW-2*scene.Margin)
	if len(lines) > 1 {
		size = scene.Middle
		lines = wrap(words.ArrayFactorList(a.answer.Pairs), size, scene.PaperW-2*scene.Margin)
	}
	y := a.bottom + gap
	if !a.toScale() {
		a.note(s)
		y += noteTall
	}
	s.Add(telling.Text(scene.Ink, scene.PaperW/2, y+name/2, scene.Small, words.ArrayFactorsAre(a.n)))
	y += name + size*3/4
	for i, line := range lines {
		t := scene.Words(scene.PaperW/2, y+i*size*5/4, size, line)
		t.Bold = true
		s.Add(scene.Item{Shape: t, Role: scene.Result, When: scene.ShownOnly})
	}
	s.Add(captionAt(blanked("?"), scene.PaperW/2, y))
	s.H = y + (len(lines)-1)*size*5/4 + size/2 + scene.Margin
}

// wrap sets a list with commas in lines no wider than wide, in bold.
func wrap(list []string, size, wide int) []string {
	var lines []string
	line := ""
	for i, n := range list {
		if i < len(list)-1 {
			n += ","
		}
		longer := strings.TrimPrefix(line+" "+n, " ")
		if line != "" && scene.Advance(longer, size, true) > wide {
			lines, longer = append(lines, line), n
		}
		line = longer
	}
	return append(lines, line)
}
