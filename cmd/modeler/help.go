package main

import (
	"fmt"
	"strings"

	"github.com/spf13/pflag"

	"modeler/models"
	"modeler/models/words"
)

var helpCommand = command{
	name: "help",
	use:  "[COMMAND]",
	doc:  "say how to use the program, or one command of it",
}

// It is set here because help lists the commands, and is one.
func init() { helpCommand.run = runHelp }

func runHelp(c call) int {
	if c.text == "" {
		fmt.Fprint(c.out, help())
		return done
	}
	if one, ok := commandNamed(c.text); ok {
		fmt.Fprint(c.out, one.help())
		return done
	}
	return noCommand([]string{c.text}, "help ", c.errors)
}

func commandNames() []string {
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	return names
}

// help is the whole help.
func help() string {
	var b strings.Builder
	b.WriteString(`modeler gives the whole lesson for a problem: what to do with the pieces, the
picture and the symbols, move by move.

`)
	for _, c := range commands() {
		fmt.Fprintf(&b, "  modeler %s\n", strings.TrimSpace(c.name+" "+c.use))
		wrap(&b, "      ", c.doc)
	}
	b.WriteString(`
A problem alone asks for its lesson. Write it as it stands in the book, in
quotation marks, since the terminal has its own use for * ? < > ( ) and $:

  modeler '402 - 178'             modeler '1 1/2 + 3/4'
  modeler '7 x 8'                 modeler 'compare 3/4 and 5/8'
  modeler '56 ÷ 8'                modeler 'round 347 to the nearest ten'
  modeler check '3/4 = 6/8'       modeler '$5.00 - $3.27'

Flags may stand before or after the problem; -- ends them. "modeler help draw"
says more of one command, "modeler --version" which version this is.

The exit status is 0 when all went well and a claim is true, 1 when a claim is
false or a file or an address could not be used, and 2 when something could not
be read or shown.
`)
	return b.String()
}

// help is the help of one command.
func (c command) help() string {
	var b strings.Builder
	fmt.Fprintf(&b, "modeler %s\n    %s\n", strings.TrimSpace(c.name+" "+c.use), c.doc)
	if c.flags != nil {
		fs := pflag.NewFlagSet(c.name, pflag.ContinueOnError)
		fs.SortFlags = false
		c.flags(fs)
		b.WriteString("\n" + fs.FlagUsagesWrapped(80))
	}
	return b.String()
}

// wordsFlag is the flag that picks how numbers and parts are named.
func wordsFlag(fs *pflag.FlagSet) {
	fs.String("words", "", "name numbers and parts in these `words`: "+strings.Join(words.Wordings, ", "))
}

// modelFlag is the flag that picks a model.
func modelFlag(fs *pflag.FlagSet) {
	names := make([]string, len(models.All))
	for i, m := range models.All {
		names[i] = m.Name
	}
	fs.String("model", "", "tell it with this `model`: "+strings.Join(names, ", "))
}
