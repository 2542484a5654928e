package laws

import (
	"math/big"
	"strings"

	"modeler/models/scene"
)

// onScale reports whether a label is one of the numbers along a scale: at least
// three stand on its height, and they are as far apart as their values say.
func onScale(labels []scene.Text, i int) bool {
	type point struct {
		x int64
		v *big.Rat
	}
	var points []point
	for k, l := range labels {
		if l.Y != labels[i].Y {
			continue
		}
		v, ok := new(big.Rat).SetString(strings.ReplaceAll(label(l), ",", ""))
		if ok {
			points = append(points, point{int64(l.X), v})
		} else if k == i {
			return false
		}
	}
	if len(points) < 3 {
		return false
	}
	dx, dv := points[1].x-points[0].x, new(big.Rat).Sub(points[1].v, points[0].v)
	for _, q := range points[2:] {
		a := new(big.Rat).Mul(new(big.Rat).Sub(q.v, points[0].v), big.NewRat(dx, 1))
		b := new(big.Rat).Mul(dv, big.NewRat(q.x-points[0].x, 1))
		if a.Cmp(b) != 0 {
			return false
		}
	}
	return true
}
