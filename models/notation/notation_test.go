package notation

import (
	"encoding/xml"
	"fmt"
	"io"
	"strings"
	"testing"

	"modeler/models/scene"
)

// column is 402 − 178 after the first trade.
func column() Block {
	return Block{Columns: true, Rule: 3, Lines: []Line{
		{{}, {Text: "3", Small: true, Role: scene.Moved}, {Text: "10", Small: true, Role: scene.Moved}, {}},
		{{}, {Text: "4", Struck: true}, {Text: "0", Struck: true}, {Text: "2"}},
		{S("−"), N("1", scene.Second), N("7", scene.Second), N("8", scene.Second)},
		{{}, {}, {}, {Text: "?"}},
	}}
}

func TestMathMLIsWellFormedAndEscaped(t *testing.T) {
	for _, b := range []Block{column(), divided(), Lines(Line{F("3", "4", scene.First), S("<"), N("5 & more", scene.Second)}), Lines(Line{W("a")}, Line{W("b")})} {
		d := xml.NewDecoder(strings.NewReader(b.MathML()))
		depth := 0
		for {
			tok, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatalf("%v in %s", err, b.MathML())
			}
			switch tok.(type) {
			case xml.StartElement:
				depth++
			case xml.EndElement:
				depth--
			}
		}
		if depth != 0 || b.MathML() == "" {
			t.Errorf("unbalanced: %s", b.MathML())
		}
	}
}

// divided is 7 ÷ 3 as it is written in the US, with an equation beside it.
func divided() Block {
	return Block{Columns: true, Lines: []Line{
		{{}, {}, N("2", scene.Result)},
		{N("3", scene.Second), S(")"), {Text: "7", Role: scene.First, Over: true}},
		{{}, S("−"), N("6", scene.First)},
		{{}, {}, {Text: "1", Role: scene.First, Over: true}},
	}, Beside: []Line{{N("3", scene.Second), S("×"), N("2", scene.Result), S("="), N("6", scene.First)}}}
}

func TestRulesRunOverTheirCellsOnly(t *testing.T) {
	if got, want := divided().Text(), "    2\n    ─\n3 ) 7\n  − 6\n    ─\n    1\n\n3 × 2 = 6"; got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	ruled := Block{Columns: true, Lines: []Line{{{Text: "1", Over: true}, {Text: "12", Over: true}, {Text: "3"}}}}
	if got, want := ruled.Text(), "────\n1 12 3"; got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	m := divided().MathML()
	for _, want := range []string{`<mtd class="over"><mn class="first">7</mn></mtd>`, `<mtd><mn class="first">6</mn></mtd>`, `<mtr><mtd><mrow><mn class="second">3</mn><mo>×</mo>`} {
		if !strings.Contains(m, want) {
			t.Errorf("%s is not in %s", want, m)
		}
	}
}

func TestNothingIsWrittenForAnEmptyBlock(t *testing.T) {
	if (Block{}).MathML() != "" || (Block{}).Text() != "" {
		t.Error("an empty block writes something")
	}
}

func ExampleBlock_Text() {
	fmt.Println("402 − 178")
	fmt.Println(column().Text())
	fmt.Println(Lines(Line{F("3", "4", scene.First), S("="), F("6", "8", scene.Second)}).Text())
	// Output:
	// 402 − 178
	//   3 10
	//   4̸  0̸ 2
	// − 1  7 8
	// ────────
	//        ?
	// 3/4 = 6/8
}

func ExampleLine_Text() {
	fmt.Println(Line{N("7", scene.First), S("×"), N("8", scene.Second), S("="), N("56", scene.Result)}.Text())
	// Output: 7 × 8 = 56
}

func ExampleBlock_MathML() {
	fmt.Println(Lines(Line{F("1", "2", scene.First), S("+"), F("1", "4", scene.Second)}).MathML())
	// Output: <math xmlns="http://www.w3.org/1998/Math/MathML" display="block"><mrow><mfrac class="first"><mn>1</mn><mn>2</mn></mfrac><mo>+</mo><mfrac class="second"><mn>1</mn><mn>4</mn></mfrac></mrow></math>
}

func TestAMixedNumberHasNoSpaceInside(t *testing.T) {
	mixed := Line{N("1", scene.First), F("1", "2", scene.First), S("+"), F("3", "4", scene.Second)}
	runs := mixed.Runs()
	if len(runs) != 4 || runs[0].Text != "1" || runs[1].Den != "2" || runs[2].Text != " + " {
		t.Errorf("%+v", runs)
	}
	if got := mixed.Text(); got != "1 1/2 + 3/4" {
		t.Errorf("in one line of text: %q", got) // 11/2 would be another number
	}
	for _, apart := range []Line{
		{N("2", scene.First), F("1", "2", scene.Second)}, // two numbers
		{S("="), F("1", "2", scene.Ink)},
		{W("about"), F("1", "2", scene.Ink)},
		{N("?", scene.Hidden), F("1", "2", scene.Hidden)},
	} {
		if runs := apart.Runs(); !strings.HasSuffix(runs[0].Text, " ") {
			t.Errorf("no space before the fraction: %+v", runs)
		}
	}
}

func TestWordsAndBracketsJoinTheirNeighbors(t *testing.T) {
	for want, l := range map[string]Line{
		"8| ×| ?| =| 48":  {N("8", scene.First), S("×"), N("?", scene.Ink), S("="), N("48", scene.Ink)},
		"340| is a ten|":  {N("340", scene.First), W("is a"), W("ten"), {}},
		"2| ×| (8| +| 7)": {N("2", scene.Ink), S("×"), S("("), N("8", scene.Ink), S("+"), N("7", scene.Ink), S(")")},
	} {
		var texts []string
		for _, r := range l.Runs() {
			texts = append(texts, r.Text)
		}
		if got := strings.Join(texts, "|"); strings.TrimSpace(got) != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	struck := Line{N("1", scene.Ink), {Text: "2", Struck: true}, N("3", scene.Ink)}.Runs()
	if len(struck) != 3 {
		t.Errorf("what is struck is no run of its own: %+v", struck)
	}
}

// A question mark between two numbers, and a word, stand apart from both.
func TestMathMLSetsApartWhatABrowserWouldJoin(t *testing.T) {
	for want, l := range map[string]Line{
		`<mn>402</mn><mspace width="0.28em"></mspace><mn class="hidden">?</mn><mspace width="0.28em"></mspace><mn>376</mn>`: {N("402", scene.Ink), N("?", scene.Hidden), N("376", scene.Ink)},
		`<mn>7</mn><mspace width="0.28em"></mspace><mtext>r</mtext><mspace width="0.28em"></mspace><mn>2</mn>`:              {N("7", scene.Ink), W("r"), N("2", scene.Ink)},
		`<mn>7</mn><mo>×</mo><mn>8</mn>`:                {N("7", scene.Ink), S("×"), N("8", scene.Ink)},
		`<mn>2</mn><mfrac><mn>3</mn><mn>4</mn></mfrac>`: {N("2", scene.Ink), F("3", "4", scene.Ink)},
	} {
		if got := Lines(l).MathML(); !strings.Contains(got, "<mrow>"+want+"</mrow>") {
			t.Errorf("got %s, want %s in it", got, want)
		}
	}
}
