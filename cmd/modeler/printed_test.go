package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the printouts with what the program prints now")

// A printout is what a person sees: a line "$ modeler ..." with the command,
// then what it prints, then its exit status where that is not 0. Lines that begin
// with # are comments. Results and errors are told apart by "! " in front of what
// goes to the error output.
func TestPrintouts(t *testing.T) {
	files, err := filepath.Glob("testdata/*.txt")
	if err != nil || len(files) == 0 {
		t.Fatalf("no printouts: %v", err)
	}
	for _, file := range files {
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		got := replay(string(want))
		switch {
		case got == string(want):
		case *update && os.Getenv("CI") == "":
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		default:
			t.Errorf("%s: the program prints otherwise; to accept: go test ./cmd/modeler -update\n%s", file, difference(string(want), got))
		}
	}
}

// replay runs the commands of a printout and writes down what happens.
func replay(printout string) string {
	var out strings.Builder
	for line := range strings.Lines(printout) {
		if strings.HasPrefix(line, "#") {
			out.WriteString(line)
			continue
		}
		command, is := strings.CutPrefix(line, "$ modeler")
		if !is {
			continue
		}
		out.WriteString(line)
		var results, errors strings.Builder
		status := run(arguments(strings.TrimSpace(command)), &results, &errors)
		out.WriteString(results.String())
		for e := range strings.Lines(errors.String()) {
			out.WriteString(strings.TrimRight("! "+strings.TrimRight(e, "\n"), " ") + "\n")
		}
		if status != 0 {
			fmt.Fprintf(&out, "(exit %d)\n", status)
		}
		out.WriteString("\n")
	}
	return out.String()
}

// arguments splits a command line at its spaces, outside quotation marks.
func arguments(line string) []string {
	var out []string
	var one strings.Builder
	quoted, any := false, false
	for _, r := range line {
		switch {
		case r == '\'':
			quoted, any = !quoted, true
		case r == ' ' && !quoted:
			if any {
				out = append(out, one.String())
			}
			one.Reset()
			any = false
		default:
			one.WriteRune(r)
			any = true
		}
	}
	if any {
		out = append(out, one.String())
	}
	return out
}

// difference shows the first lines that differ.
func difference(want, got string) string {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range a {
		if i >= len(b) || a[i] != b[i] {
			tail := strings.Join(b[min(i, len(b)):min(i+6, len(b))], "\n")
			return fmt.Sprintf("line %d: want\n%s\ngot\n%s", i+1, a[i], tail)
		}
	}
	return fmt.Sprintf("line %d: got more:\n%s", len(a), strings.Join(b[min(len(a), len(b)):], "\n"))
}
