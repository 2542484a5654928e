// Modeler gives the whole lesson for a problem of primary mathematics: what to
// do with the pieces, the picture and the symbols, move by move.
package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"

	"github.com/spf13/pflag"

	"modeler/api"
	"modeler/arithmetic/reading"
)

// Exit statuses.
const (
	done       = 0
	isFalse    = 1 // check: the claim is not true
	failed     = 1 // a file or an address could not be used
	unreadable = 2 // the problem or the command line cannot be read or shown
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// command is one word of the command line.
type command struct {
	name  string
	use   string // what may follow it
	doc   string
	flags func(*pflag.FlagSet)
	run   func(call) int
}

// call is a command with its flags read.
type call struct {
	text        string // what stands beside the flags, joined by spaces
	flags       *pflag.FlagSet
	out, errors io.Writer
}

// value is a flag's value; "" when the command has no such flag.
func (c call) value(name string) string {
	f := c.flags.Lookup(name)
	if f == nil {
		return ""
	}
	return f.Value.String()
}

// commands are in the order that help lists them. It is a function because help
// is one of them.
func commands() []command {
	return []command{lessonCommand, drawCommand, checkCommand, modelsCommand, galleryCommand, serveCommand, helpCommand}
}

func commandNamed(name string) (command, bool) {
	for _, c := range commands() {
		if c.name == name {
			return c, true
		}
	}
	return command{}, false
}

// run is the program: results go to out, errors to err.
func run(args []string, out, err io.Writer) int {
	if len(args) == 0 {
		fmt.Fprint(err, help())
		return unreadable
	}
	switch args[0] {
	case "-h", "--help":
		fmt.Fprint(out, help())
		return done
	case "--version":
		fmt.Fprintln(out, "modeler", version())
		return done
	}
	if c, ok := commandNamed(args[0]); ok {
		return c.call(args[1:], out, err)
	}
	return withoutCommand(args, out, err)
}

// version is the version of the program that the build has written in it.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return "(no version)"
	}
	return info.Main.Version
}

// withoutCommand takes a line that begins with no command: a problem asks for its
// lesson, and a mistyped command is told the nearest one.
func withoutCommand(args []string, out, err io.Writer) int {
	text := strings.Join(args, " ")
	_, unread := reading.Read(text)
	near := api.Near(args[0], commandNames())
	if unread == nil || near == "" && strings.ContainsAny(text, "0123456789") {
		return lessonCommand.call(args, out, err)
	}
	return noCommand(args, "", err)
}

// noCommand offers the command that was meant, with what came after it.
func noCommand(args []string, before string, err io.Writer) int {
	near := api.Near(args[0], commandNames())
	try := "modeler help"
	if near != "" {
		try = strings.Join(append([]string{"modeler " + before + near}, quoted(args[1:])...), " ")
	}
	return complain(err, &reading.Error{
		Text: api.Clip(args[0]), End: len([]rune(api.Clip(args[0]))),
		Message: "there is no command of this name",
		Hint:    "the commands are " + strings.Join(commandNames(), ", "),
		Try:     try,
	})
}

// call reads the flags and runs the command.
func (c command) call(args []string, out, err io.Writer) int {
	fs := pflag.NewFlagSet(c.name, pflag.ContinueOnError)
	fs.SetOutput(io.Discard)
	fs.Usage = func() {}
	if c.flags != nil {
		c.flags(fs)
	}
	switch e := fs.Parse(minusSigns(args)); {
	case errors.Is(e, pflag.ErrHelp):
		fmt.Fprint(out, c.help())
		return done
	case e != nil:
		return complain(err, c.flagError(e, fs))
	}
	return c.run(call{strings.Join(fs.Args(), " "), fs, out, err})
}

// minusSigns writes a minus at the front of an argument as a book prints it, so
// that "-5 + 8" is taken for a problem and not for a flag.
func minusSigns(args []string) []string {
	out := make([]string, len(args))
	for i, a := range args {
		if a == "--" {
			copy(out[i:], args[i:])
			break
		}
		if rest, has := strings.CutPrefix(a, "-"); has && rest != "" && strings.ContainsAny(rest[:1], " 0123456789.$?_(") {
			a = "−" + rest
		}
		out[i] = a
	}
	return out
}

// flagError says which flag is not known, or lacks its value.
func (c command) flagError(e error, fs *pflag.FlagSet) *reading.Error {
	r := &reading.Error{Message: strings.ToLower(e.Error()), Hint: "see: modeler help " + c.name}
	var lacking *pflag.ValueRequiredError
	if errors.As(e, &lacking) {
		r.Text = "--" + lacking.GetFlag().Name
		r.End = len(r.Text)
		r.Message = r.Text + " needs a value after it"
	}
	var unknown *pflag.NotExistError
	if errors.As(e, &unknown) {
		name := unknown.GetSpecifiedName()
		r.Text = "--" + api.Clip(name)
		if len(name) == 1 {
			r.Text = "-" + name
		}
		r.End = len([]rune(r.Text))
		r.Message = "modeler " + c.name + " has no flag of this name"
		var names []string
		fs.VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
		if near := api.Near(name, names); near != "" {
			r.Try = "--" + near
		}
	}
	return r
}

// complain prints an error and gives the exit status that says so.
func complain(w io.Writer, err error) int {
	var t *api.Trouble
	var e *reading.Error
	switch {
	case errors.As(err, &t):
		if t.Parameter != "problem" && t.Try != "" {
			t.Try = "--" + t.Parameter + " " + t.Try
		}
		fmt.Fprint(w, t.Block())
	case errors.As(err, &e):
		if e.Text == "" {
			e.Code = reading.Empty // there are no words to underline
		}
		fmt.Fprint(w, e.Block())
	default:
		fmt.Fprintln(w, err)
	}
	return unreadable
}

// quoted puts arguments that a terminal would take apart in quotation marks.
func quoted(args []string) []string {
	out := make([]string, len(args))
	for i, a := range args {
		a = api.Clip(a)
		if strings.ContainsAny(a, " *?<>()$&|;\"\\#~`!") && !strings.Contains(a, "'") {
			a = "'" + a + "'"
		}
		out[i] = a
	}
	return out
}
