package laws

import (
	"fmt"
	"math/big"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// polygons: in parts of shapes, polygons worth as much are of one area, which is that of
// rectangles worth as much where there are any. Elsewhere a polygon may be a card or a
// bill, which has a number on it and no size of its own.
func polygons(p Picture) error {
	if p.Problem.Kind != arithmetic.ShapePart {
		return nil
	}
	var ref scene.Item
	var all *big.Rat // of the first piece, in square units to 1
	some := false
	for _, it := range p.visible() {
		twice := int64(0)
		switch sh := it.Shape.(type) {
		case scene.Polygon:
			twice, some = doubleArea(sh), some || it.Worth.Sign() != 0
		case scene.Rect:
			twice = 2 * area(sh.Box())
		}
		if twice == 0 || it.Worth.Sign() == 0 {
			continue
		}
		one := new(big.Rat).Quo(big.NewRat(twice, 2), rat(it.Worth))
		if all == nil {
			all, ref = one, it
		}
		if some && one.Cmp(all) != 0 {
			return fmt.Errorf("%s is worth %s, and %s is worth %s", describe(it), it.Worth, describe(ref), ref.Worth)
		}
	}
	return nil
}

// doubleArea is twice the area inside the corners, by the shoelace formula.
func doubleArea(corners []scene.Point) int64 {
	sum := int64(0)
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		sum += int64(a.X)*int64(b.Y) - int64(b.X)*int64(a.Y)
	}
	return max(sum, -sum)
}
