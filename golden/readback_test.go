package golden

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
	"testing"

	"modeler/arithmetic"
	"modeler/golden/laws"
	"modeler/golden/measure"
	"modeler/golden/problems"
	"modeler/models/scene"
	"modeler/svg"
)

// readers is how the pictures of a model are read back from their bytes: the
// whole story, and the steps in their order.
type readers struct {
	whole func(sight, problems.Truth) error
	steps func([]sight, problems.Truth) error
	alike bool // the last step shows as many pieces as the whole story
}

// readings lists the reading of every model. A model that is not here fails the
// test.
var readings = map[string]readers{
	"base-ten-blocks":       {readBlocks, stepsOfBlocks, true},
	"array":                 {readArray, stepsOfArray, false},
	"fraction-bars":         {readBars, stepsOfBars, true},
	"number-line":           {readLine, stepsOfLine, true},
	"balance":               {readBalance, stepsOfBalance, false},
	"bar-diagram":           {readDiagram, stepsOfDiagram, true},
	"number-bond":           {readBond, stepsOfBond, false},
	"place-value-table":     {readPlaces, stepsOfPlaces, true},
	"ten-frames":            {readFrames, stepsOfFrames, true},
	"linking-cubes":         {readCubes, stepsOfCubes, true},
	"equal-groups":          {readGroups, stepsOfGroups, true},
	"coins":                 {readCoins, stepsOfCoins, true},
	"hundredths-square":     {readSquares, stepsOfSquares, true},
	"fraction-circle":       {readDiscs, stepsOfDiscs, true},
	"function-table":        {readTable, stepsOfTable, false},
	"multiplication-square": {readSquare, stepsOfSquare, false},
	"hundred-chart":         {readChart, stepsOfChart, false},
	"fraction-area":         {readFractionArea, stepsOfFractionArea, true},
	"fraction-wall":         {readWall, stepsOfWall, true},
	"shape-parts":           {readShapes, stepsOfShapes, true},
}

// anywhere lists what is read in every picture of every model, those to come too.
var anywhere = map[string]func(sight, problems.Truth) error{
	"statements": readStatements,
	"jump names": readJumpNames,
	"numerals":   readNumerals,
	"apart":      readApart,
	"landings":   readLandings,
	"ticks":      readTicks,
	"parity":     readParity,
}

// sight is a file that was measured, with the problem that it is to show. paint
// says which fills mean which role; nothing else of the scene is known.
type sight struct {
	measure.Drawing
	problem arithmetic.Problem
	paint   palette
}

// palette is the fills of a role's surfaces and of its solid marks, and the edge
// of its outlines.
type palette map[scene.Role][3]string

// paints learns the palette from a drawn sample of every role.
func paints(t *testing.T) palette {
	t.Helper()
	p := palette{}
	for _, role := range []scene.Role{scene.Ink, scene.First, scene.Second, scene.Result, scene.Moved, scene.Gone, scene.Guide, scene.Note, scene.Tray} {
		s := &scene.Scene{W: 100, H: 100}
		s.Draw(role, scene.Plain, scene.Rect{W: 10, H: 10})
		s.Draw(role, scene.Deep, scene.Rect{W: 10, H: 10})
		d, err := measure.Read(svg.Render(s, svg.Options{}))
		if err != nil || len(d.Rects) != 3 {
			t.Fatalf("%d rectangles: %v", len(d.Rects), err)
		}
		p[role] = [3]string{d.Rects[1].Fill, d.Rects[2].Fill, d.Rects[1].Stroke}
	}
	return p
}

// is reports whether a surface is painted in one of the roles.
func (s sight) is(p measure.Paint, roles ...scene.Role) bool {
	for _, role := range roles {
		if pair := s.paint[role]; p.Fill == pair[0] || p.Fill == pair[1] {
			return true
		}
	}
	return false
}

// ghost reports whether a shape is only the outline of something gone.
func (s sight) ghost(p measure.Paint) bool { return s.empty(p, scene.Gone) }

// empty reports whether a shape is only an outline in one of the roles.
func (s sight) empty(p measure.Paint, roles ...scene.Role) bool {
	return !p.Filled() && slices.ContainsFunc(roles, func(r scene.Role) bool { return p.Stroke == s.paint[r][2] })
}

// see measures a picture, and whether it is well formed.
func see(l *laws.Lesson, s *scene.Scene, paint palette) (sight, error) {
	d, err := measure.Read(svg.Render(s, svg.Options{}))
	return sight{d, l.Problem, paint}, err
}

// finding is what one reader found: nil, errUnread or what is false.
type finding struct {
	reader string
	err    error
}

// readBack reads all the pictures of a lesson.
func readBack(l *laws.Lesson, paint palette) []finding {
	whole, err := see(l, l.Whole, paint)
	if err != nil {
		return []finding{{"measure", err}}
	}
	var steps []sight
	for _, step := range l.Steps {
		s, err := see(l, step.Scene, paint)
		if err != nil {
			return []finding{{"measure", err}}
		}
		steps = append(steps, s)
	}
	return readSights(l.Model.Name, whole, steps, l.Truth)
}

// readSights has every reader read pictures that were measured.
func readSights(model string, whole sight, steps []sight, t problems.Truth) []finding {
	r, known := readings[model]
	if !known {
		return []finding{{"whole", errors.New("nothing reads the pictures of this model back")}}
	}
	list := []finding{{"whole", r.whole(whole, t)}, {"steps", r.steps(steps, t)}}
	list = append(list, finding{"equation", readEquation(whole, t)})
	if r.alike {
		list = append(list, finding{"last step", readAgreement(whole, steps[len(steps)-1])})
	}
	for name, read := range anywhere {
		found := finding{name, read(whole, t)}
		for i, s := range steps {
			if err := read(s, t); err != nil && (found.err == nil || errors.Is(found.err, errUnread)) {
				found.err = err
				if !errors.Is(err, errUnread) {
					found.err = fmt.Errorf("step %d: %w", i+1, err)
				}
			}
		}
		list = append(list, found)
	}
	return list
}

// errUnread says that a picture of this kind is not read back yet.
var errUnread = fmt.Errorf("not read back yet")

func whole(n int64) *big.Rat { return big.NewRat(n, 1) }

// agree compares what was found with what is true.
func agree(what string, found, want *big.Rat) error {
	if found.Cmp(want) != 0 {
		return fmt.Errorf("%s: %s in the picture, %s in truth", what, found.RatString(), want.RatString())
	}
	return nil
}
