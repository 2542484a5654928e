package telling

import "errors"

// ErrNotMine is found by [errors.Is] in what Fits says of a problem that is not
// of the model's kind at all: another operation, or numbers of another form.
// What Fits says of its own kind, as of numbers too large, helps a person on;
// this does not, unless the person asked for that model.
var ErrNotMine = errors.New("telling: a problem of another kind")

// NotMine marks a reason with [ErrNotMine]. It reads as before.
func NotMine(why error) error { return notMine{why} }

type notMine struct{ why error }

func (n notMine) Error() string   { return n.why.Error() }
func (n notMine) Unwrap() []error { return []error{n.why, ErrNotMine} }
