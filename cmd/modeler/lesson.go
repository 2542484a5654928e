package main

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/spf13/pflag"

	"modeler/api"
	"modeler/arithmetic"
	"modeler/models"
	"modeler/models/words"
)

var lessonCommand = command{
	name: "lesson",
	use:  "PROBLEM [--model M] [--writing W] [--json]",
	doc:  "tell the lesson: for each move the hands, the picture in words, the symbols",
	flags: func(fs *pflag.FlagSet) {
		modelFlag(fs)
		fs.String("writing", "", "write calculations as this `writing` does: "+strings.Join(api.Writings, ", "))
		wordsFlag(fs)
		fs.Bool("json", false, "print it as data, as /v1/lesson.json serves it")
	},
	run: lesson,
}

func lesson(c call) int {
	p, err := api.ReadPicture(func(name string) string {
		if name == "problem" {
			return c.text
		}
		return c.value(name)
	})
	if err != nil {
		return complain(c.errors, err)
	}
	europe, err := api.ReadWriting(c.value("writing"))
	if err != nil {
		return complain(c.errors, err)
	}
	l, err := models.Teach(p.Problem, p.Model)
	if err != nil {
		return complain(c.errors, err)
	}
	if c.value("json") == "true" {
		_, err = c.out.Write(api.NewDocumentIn(l, p.Model, p.Words).JSON())
	} else {
		_, err = fmt.Fprint(c.out, tell(l.Worded(p.Words), europe, p.Words))
	}
	if err != nil {
		return failed
	}
	return done
}

// tell is a lesson for a terminal 80 characters wide.
//
//	402 − 178
//	four hundred two, take away one hundred seventy-eight
//
//	You need: 4 hundreds, 10 tens, 12 ones
//
//	1. Lay it out
//	   Ask: Which pieces make 402?
//	   Lay out 402: 4 hundreds, no tens, 2 ones.
//
//	         4 0 2
//	       − 1 7 8
//
//	   Picture: ...
func tell(l models.Lesson, europe bool, w words.Wording) string {
	var b strings.Builder
	problem := l.Problem.String()
	b.WriteString(problem + "\n")
	wrap(&b, "", w.Text(words.ReadBack(l.Problem)))
	for _, other := range l.Also {
		wrap(&b, "It can also be read as: ", other.String())
	}
	b.WriteString("\n")
	var pieces, names []string
	cut := false
	for _, p := range l.Pieces {
		names, cut = append(names, p.Name), cut || p.Cut
		text := p.Name
		if p.Count > 0 {
			text = arithmetic.Grouped(p.Count) + " " + text
		}
		pieces = append(pieces, text)
	}
	if len(pieces) > 0 {
		wrap(&b, "You need: ", strings.Join(pieces, ", "))
		for _, caution := range words.Cautions(names, cut) {
			wrap(&b, "", caution)
		}
		b.WriteString("\n")
	}
	for i, s := range l.Steps {
		if europe && len(s.Europe.Lines) > 0 {
			s.Symbols = s.Europe
		} else {
			s.Link = nil
		}
		tellStep(&b, i+1, s)
	}
	wrap(&b, "The whole picture: ", l.Whole.Desc.Shown)
	b.WriteString("\n")
	wrap(&b, "Answer: ", w.Text(words.Answer(l.Problem, l.Answer)))
	if why := l.Why.String(); why != "" {
		wrap(&b, "", why)
	}
	if s, ok := words.Check(l.Problem, l.Answer); ok {
		wrap(&b, "", s.Text)
		b.WriteString("    " + s.Problem + "\n")
	}
	tellOthers(&b, l)
	return b.String()
}

func tellStep(b *strings.Builder, n int, s models.Step) {
	title := strconv.Itoa(n) + ". "
	b.WriteString(title + s.Title + "\n")
	indent := strings.Repeat(" ", len(title))
	if len(s.Ask) > 0 {
		wrap(b, indent+"Ask: ", s.Ask.String())
	}
	wrap(b, indent, s.Hands.String())
	b.WriteString("\n")
	if symbols := strings.TrimRight(s.Symbols.Text(), "\n"); symbols != "" {
		for line := range strings.SplitSeq(symbols, "\n") {
			b.WriteString(strings.TrimRight(indent+"    "+line, " ") + "\n")
		}
		b.WriteString("\n")
	}
	if len(s.Link) > 0 {
		wrap(b, indent, s.Link.String())
		b.WriteString("\n")
	}
	wrap(b, indent+"Picture: ", s.Scene.Desc.Shown)
	b.WriteString("\n")
}

func tellOthers(b *strings.Builder, l models.Lesson) {
	var names []string
	for _, m := range l.Others() {
		names = append(names, m.Name)
	}
	if len(names) == 0 {
		fmt.Fprintf(b, "Told with %s\n", l.Model.Name)
		return
	}
	wrap(b, "Told with "+l.Model.Name+"; --model takes also: ", strings.Join(names, ", "))
}

// wrap writes a text in lines of at most 80 characters. The first begins with the
// lead; the others are indented as far as the lead is by its spaces.
func wrap(b *strings.Builder, lead, text string) {
	const width = 80
	indent := strings.Repeat(" ", len(lead)-len(strings.TrimLeft(lead, " ")))
	line, empty := lead, true
	for word := range strings.FieldsSeq(text) {
		glue := " "
		if empty {
			glue = ""
		}
		if !empty && utf8.RuneCountInString(line+glue+word) > width {
			b.WriteString(strings.TrimRight(line, " ") + "\n")
			line, glue = indent, ""
		}
		line, empty = line+glue+word, false
	}
	b.WriteString(strings.TrimRight(line, " ") + "\n")
}
