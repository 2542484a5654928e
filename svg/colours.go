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
