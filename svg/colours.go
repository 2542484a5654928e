package svg

import "modeler/models/scene"

// Paper is the colour that the theme draws on, as #rrggbb.
func (t *Theme) Paper() string { return t.paper }

// Text is the colour of text in a role, so that a page can write a number in the
// colour it has in the picture.
func (t *Theme) Text(r scene.Role) string { return t.roles[r].text }

// Tint is the colour of surfaces in a role.
func (t *Theme) Tint(r scene.Role) string { return t.roles[r].tint }

// Edge is the colour of outlines and lines in a role.
func (t *Theme) Edge(r scene.Role) string { return t.roles[r].edge }

// Fill is the colour of an item's surface, or "none" where only its edge is drawn
// or lines stand in for a tint.
func (t *Theme) Fill(it scene.Item) string {
	look := t.roles[it.Role]
	switch {
	case it.Finish == scene.Deep:
		return look.deep
	case it.Finish == scene.Plain && t.Hatching(it) == "":
		return look.tint
	}
	return "none"
}

// Hatching names the lines that an item's surface is filled with, so that two
// roles can be told apart; "" is none.
func (t *Theme) Hatching(it scene.Item) string {
	h, has := t.hatching(it)
	if !has {
		return ""
	}
	return h.String()
}
