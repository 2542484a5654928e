package svg

import "modeler/models/scene"

// Bold is the colour of heavy strokes in a role.
func (t *Theme) Bold(r scene.Role) string { return t.roles[r].bold }
