package svg

import "modeler/models/scene"

// colours is how one role looks: a tint for surfaces, an edge for outlines and
// lines, a deep colour for small solid marks, a colour for heavy strokes, and one
// for text.
type colours struct{ tint, edge, deep, bold, text string }

// Theme maps roles to looks. Slots, not colours, stand in a scene.
type Theme struct {
	Name  string
	paper string
	roles [scene.Tray + 1]colours
	// hatched themes tell roles apart without colour: surfaces get lines in
	// place of tints.
	hatched bool
}

// Themes lists the themes, the usual one first.
var Themes = []*Theme{colour, ink, dark}

// Named returns the theme of that name, or nil.
func Named(name string) *Theme {
	for _, t := range Themes {
		if t.Name == name {
			return t
		}
	}
	return nil
}

// colour is for a screen or a colour printer. The palette is our own: slate ink,
// pine and copper for the two quantities, plum for the result, a highlighter's
// yellow for what has just moved.
var colour = &Theme{
	Name:  "colour",
	paper: "#ffffff",
	roles: [...]colours{
		scene.Ink:    {"#ffffff", "#22303c", "#22303c", "#22303c", "#22303c"},
		scene.Note:   {"#ffffff", "#5a6875", "#5a6875", "#5a6875", "#51606d"},
		scene.First:  {"#bfe2d8", "#0c6657", "#0c6657", "#0c6657", "#0b5f51"},
		scene.Second: {"#f8caa4", "#a3470b", "#a3470b", "#a3470b", "#913c08"},
		scene.Result: {"#ded2f4", "#5b389f", "#5b389f", "#5b389f", "#5b389f"},
		scene.Hidden: {"#ffffff", "#5b389f", "#5b389f", "#5b389f", "#5b389f"},
		scene.Gone:   {"#ffffff", "#616d79", "#b01f3f", "#b01f3f", "#a51a39"},
		scene.Moved:  {"#ffec80", "#4d3900", "#f2bd1d", "#4d3900", "#453300"},
		scene.Guide:  {"#ffffff", "#616d79", "#616d79", "#616d79", "#51606d"},
		scene.Tray:   {"#f4f6f5", "#cfd6d8", "#cfd6d8", "#cfd6d8", "#51606d"},
	},
}

// ink is for a one-colour printer: outlines, hatching, weight, no large fills.
var ink = &Theme{
	Name:    "ink",
	paper:   "#ffffff",
	hatched: true,
	roles: [...]colours{
		scene.Ink:    {"#ffffff", "#000000", "#000000", "#000000", "#000000"},
		scene.Note:   {"#ffffff", "#404040", "#404040", "#404040", "#404040"},
		scene.First:  {"#ffffff", "#000000", "#000000", "#000000", "#000000"},
		scene.Second: {"#ffffff", "#000000", "#ffffff", "#000000", "#000000"},
		scene.Result: {"#ffffff", "#000000", "#000000", "#000000", "#000000"},
		scene.Hidden: {"#ffffff", "#000000", "#000000", "#000000", "#000000"},
		scene.Gone:   {"#ffffff", "#606060", "#000000", "#000000", "#000000"},
		scene.Moved:  {"#ffffff", "#000000", "#000000", "#000000", "#000000"},
		scene.Guide:  {"#ffffff", "#707070", "#707070", "#707070", "#404040"},
		scene.Tray:   {"#ffffff", "#b0b0b0", "#b0b0b0", "#b0b0b0", "#404040"},
	},
}

// dark is for a dark page.
var dark = &Theme{
	Name:  "dark",
	paper: "#14191f",
	roles: [...]colours{
		scene.Ink:    {"#14191f", "#e8edf1", "#e8edf1", "#e8edf1", "#f1f4f6"},
		scene.Note:   {"#14191f", "#a7b3bd", "#a7b3bd", "#a7b3bd", "#b3bec7"},
		scene.First:  {"#124a41", "#63cdb8", "#63cdb8", "#63cdb8", "#7fdcc9"},
		scene.Second: {"#5c2f0c", "#f0a35e", "#f0a35e", "#f0a35e", "#f6b57a"},
		scene.Result: {"#412a70", "#bda3f3", "#bda3f3", "#bda3f3", "#cbb6f7"},
		scene.Hidden: {"#14191f", "#bda3f3", "#bda3f3", "#bda3f3", "#cbb6f7"},
		scene.Gone:   {"#14191f", "#a3afb9", "#ff7f97", "#ff7f97", "#ff93a8"},
		scene.Moved:  {"#665408", "#f2d04e", "#f2d04e", "#f2d04e", "#f7dc74"},
		scene.Guide:  {"#14191f", "#a3afb9", "#a3afb9", "#a3afb9", "#b3bec7"},
		scene.Tray:   {"#1c232b", "#39444e", "#39444e", "#39444e", "#b3bec7"},
	},
}
