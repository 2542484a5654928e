package main

import (
	"fmt"
	"os"
	"strings"

	"github.com/spf13/pflag"

	"modeler/api"
	"modeler/svg"
)

var drawCommand = command{
	name: "draw",
	use:  "PROBLEM [-o FILE] [--step N] [--model M] [FLAGS]",
	doc:  "write a picture as SVG: the whole story, or one step of it",
	flags: func(fs *pflag.FlagSet) {
		var themes []string
		for _, t := range svg.Themes {
			themes = append(themes, t.Name)
		}
		fs.StringP("output", "o", "", "write to this `file`; without it, to the terminal")
		modelFlag(fs)
		fs.String("step", "", "draw step `n`, from 1; without it, the whole story")
		fs.String("theme", "", "draw in this `theme`: "+strings.Join(themes, ", "))
		fs.String("width", "", fmt.Sprintf("draw this many `pixels` wide, %d to %d", api.MinWidth, api.MaxWidth))
		fs.String("answer", "", "`shown` or hidden")
		wordsFlag(fs)
	},
	run: draw,
}

func draw(c call) int {
	p, err := api.ReadPicture(func(name string) string {
		if name == "problem" {
			return c.text
		}
		return c.value(name)
	})
	if err != nil {
		return complain(c.errors, err)
	}
	picture, err := p.Draw()
	if err != nil {
		return complain(c.errors, err)
	}
	if file := c.value("output"); file != "" && file != "-" {
		err = os.WriteFile(file, picture, 0o644)
	} else {
		_, err = c.out.Write(picture)
	}
	if err != nil {
		fmt.Fprintln(c.errors, err)
		return failed
	}
	return done
}
