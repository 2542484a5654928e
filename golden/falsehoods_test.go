package golden

import (
	"slices"
	"strings"

	"modeler/arithmetic"
	"modeler/fraction"
	"modeler/golden/laws"
	"modeler/models/scene"
)

var falsehoods = []falsehood{
	{"a piece too few", without(isPlane)},
	{"a counter too few", without(isCounter)},
	{"a piece too many", func(l *laws.Lesson) bool {
		i := last(l.Whole, isPiece)
		if i >= 0 {
			l.Whole.Add(l.Whole.Items[i])
		}
		return i >= 0
	}},
	{"a piece too wide", only(toScale, inWhole(isPlane, func(it *scene.Item) bool { return wider(it, 4, 0) }))},
	{"a piece too high", only(offLine, inWhole(isPlane, func(it *scene.Item) bool { return wider(it, 0, 4) }))},
	{"a counter too large", only(offLine, inWhole(isCounter, func(it *scene.Item) bool {
		c := it.Shape.(scene.Circle)
		c.R += 4
		it.Shape = c
		return true
	}))},
	{"a counter out of its row", first(isCounter, func(it *scene.Item) bool {
		c := it.Shape.(scene.Circle)
		c.Y += 5
		it.Shape = c
		return true
	})},
	{"worth something else", inWhole(isPiece, func(it *scene.Item) bool {
		it.Worth, _ = it.Worth.Add(fraction.Whole(1))
		return true
	})},
	{"a piece of the other number", inWhole(isPiece, func(it *scene.Item) bool {
		switch it.Of {
		case scene.OfFirst:
			it.Of = scene.OfSecond
		case scene.OfSecond:
			it.Of = scene.OfFirst
		default:
			it.Of = scene.OfNothing
		}
		return true
	})},
	{"a piece in the color of the other number", func(l *laws.Lesson) bool {
		switch l.Problem.Kind {
		case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Claim, arithmetic.Comparison:
		default:
			return false // the colors of its parts may be any
		}
		i := last(l.Whole, isPiece)
		return i >= 0 && offLine(l) && swapRole(&l.Whole.Items[i])
	}},
	{"a whole outline too long", inWhole(func(it scene.Item) bool {
		_, rect := it.Shape.(scene.Rect)
		return rect && it.Finish == scene.Bold && it.Role == scene.Ink
	}, func(it *scene.Item) bool { return wider(it, 10, 0) })},
	{"a ghost is solid", inWhole(func(it scene.Item) bool {
		return it.Role == scene.Gone && it.Finish != scene.Bold && it.Shape.Box().H > 8 && it.Worth.Sign() != 0
	}, func(it *scene.Item) bool {
		it.Role, it.Finish = scene.First, scene.Plain
		return true
	})},
	{"a ghost too few", without(func(it scene.Item) bool {
		return it.Role == scene.Gone && it.Finish != scene.Bold && it.Worth.Sign() != 0
	})},
	{"a tick in the wrong place", only(onLine, func(l *laws.Lesson) bool {
		upright := func(it scene.Item, x int) bool {
			line, ok := it.Shape.(scene.Line)
			return ok && line.X1 == line.X2 && line.X1 == x
		}
		i := last(l.Whole, func(it scene.Item) bool {
			x, drawn := it.Shape.Box().X, 0
			for _, other := range l.Whole.Items {
				if upright(other, x) {
					drawn++
				}
			}
			return upright(it, x) && drawn == 1
		})
		if i < 0 {
			return false
		}
		line := l.Whole.Items[i].Shape.(scene.Line)
		line.X1, line.X2 = line.X1+17, line.X2+17
		l.Whole.Items[i].Shape = line
		return true
	})},
	{"a split in the wrong place", only(offLine, inWhole(func(it scene.Item) bool {
		line, ok := it.Shape.(scene.Line)
		return ok && line.X1 == line.X2 && it.Finish == scene.Bold && it.Role == scene.Ink
	}, func(it *scene.Item) bool {
		line := it.Shape.(scene.Line)
		line.X1, line.X2 = line.X1+17, line.X2+17
		it.Shape = line
		return true
	}))},
	{"a point in the wrong place", inWhole(isPoint, func(it *scene.Item) bool {
		c := it.Shape.(scene.Circle)
		c.X -= 30
		it.Shape = c
		return true
	})},
	{"a label says one more", inWhole(isNumber, func(it *scene.Item) bool {
		return reword(it, func(r []scene.Run) bool {
			r[0].Text = addOne(r[0].Text)
			return true
		})
	})},
	{"a label is missing its last digit", inWhole(func(it scene.Item) bool {
		n, ok := number(it)
		return ok && n >= 10
	}, func(it *scene.Item) bool {
		return reword(it, func(r []scene.Run) bool {
			r[0].Text = r[0].Text[:len(r[0].Text)-1]
			return true
		})
	})},
	{"numerator and denominator swapped", inWhole(func(it scene.Item) bool {
		t, ok := it.Shape.(scene.Text)
		return ok && slices.ContainsFunc(t.Runs, func(r scene.Run) bool { return r.Den != "" && r.Den != r.Num })
	}, func(it *scene.Item) bool {
		return reword(it, func(runs []scene.Run) bool {
			for i, r := range runs {
				if r.Den != "" && r.Den != r.Num {
					runs[i].Num, runs[i].Den = r.Den, r.Num
					return true
				}
			}
			return false
		})
	})},
	{"a partial product is missing", func(l *laws.Lesson) bool {
		i := last(l.Whole, func(it scene.Item) bool {
			_, ok := number(it)
			return ok && slices.ContainsFunc(l.Whole.Items, func(plate scene.Item) bool {
				r, is := plate.Shape.(scene.Rect)
				return is && r.Round > 0 && plate.Worth.Sign() == 0 && r.Box().Contains(scene.Box{X: it.Shape.(scene.Text).X, Y: it.Shape.(scene.Text).Y}) && r.H < 60
			})
		})
		if i < 0 || l.Problem.Kind != arithmetic.Product {
			return false
		}
		l.Whole.Items = slices.Delete(l.Whole.Items, i, i+1)
		return true
	}},
	{"the equation comes to one more", inWhole(isEquation, func(it *scene.Item) bool {
		return reword(it, func(runs []scene.Run) bool {
			r := &runs[len(runs)-1]
			if r.Den != "" {
				r.Num = addOne(r.Num)
				return true
			}
			if strings.Trim(r.Text, "0123456789,") != "" {
				return false
			}
			r.Text = addOne(r.Text)
			return true
		})
	})},
	{"the equation has the wrong sign", inWhole(isEquation, func(it *scene.Item) bool {
		wrong := map[string]string{"=": "≠", "≠": "=", "<": ">", ">": "<"}
		return reword(it, func(runs []scene.Run) bool {
			for i, r := range runs {
				if w := wrong[strings.TrimSpace(r.Text)]; w != "" {
					runs[i].Text = strings.Replace(r.Text, strings.TrimSpace(r.Text), w, 1)
					return true
				}
			}
			return false
		})
	})},
	{"a jump to the wrong side", inWhole(isJump, func(it *scene.Item) bool {
		h := it.Shape.(scene.Hop)
		h.X2 = h.X1 - (h.X2 - h.X1)
		it.Shape = h
		return true
	})},
	{"a jump too long", inWhole(isJump, func(it *scene.Item) bool {
		h := it.Shape.(scene.Hop)
		if h.X2 += 15; h.X1 > h.X2 {
			h.X2 -= 30
		}
		it.Shape = h
		return true
	})},
	{"a jump is missing", without(func(it scene.Item) bool { return isJump(it) && it.Worth.Sign() != 0 })},
	{"a jump says one more", inWhole(func(it scene.Item) bool {
		t, ok := it.Shape.(scene.Text)
		return ok && len(t.Runs) == 1 && (strings.HasPrefix(t.Runs[0].Text, "+") || strings.HasPrefix(t.Runs[0].Text, "−")) &&
			strings.Trim(t.Runs[0].Text, "+−") != "" && strings.Trim(t.Runs[0].Text, "+−0123456789,") == ""
	}, func(it *scene.Item) bool {
		return reword(it, func(r []scene.Run) bool {
			sign := []rune(r[0].Text)[0]
			r[0].Text = string(sign) + addOne(string([]rune(r[0].Text)[1:]))
			return true
		})
	})},
	{"the title gives another answer", func(l *laws.Lesson) bool {
		_, answer, ok := strings.Cut(l.Whole.Title.Shown, "= ")
		if !ok || answer != l.Answer.Number.String() || strings.Trim(answer, "0123456789,") != "" {
			return false
		}
		l.Whole.Title.Shown = strings.TrimSuffix(l.Whole.Title.Shown, answer) + addOne(answer)
		return true
	}},
	{"the description gives another answer", func(l *laws.Lesson) bool {
		answer := l.Answer.Number.String()
		if strings.Count(l.Whole.Desc.Shown, answer) != 1 || len(answer) < 2 {
			return false
		}
		l.Whole.Desc.Shown = strings.Replace(l.Whole.Desc.Shown, answer, "many", 1)
		return true
	}},
	{"the answer is not hidden", func(l *laws.Lesson) bool {
		i := last(l.Whole, isEquation)
		if i < 0 || l.Problem.Kind == arithmetic.Ordering || l.Problem.Kind == arithmetic.Factors || l.Problem.Kind == arithmetic.Claim {
			return false
		}
		l.Whole.Items[i].When = scene.Always
		return true
	}},
	{"the lesson has another answer", func(l *laws.Lesson) bool {
		switch l.Problem.Kind {
		case arithmetic.Addition, arithmetic.Subtraction, arithmetic.Product, arithmetic.Division, arithmetic.PartOf:
		default:
			return false
		}
		v, err := l.Answer.Number.Value.Add(fraction.Whole(1))
		l.Answer.Number.Value = v
		return err == nil
	}},
	{"a step has another scale", func(l *laws.Lesson) bool {
		s := l.Steps[len(l.Steps)-1].Scene
		s.H += 10
		return len(l.Steps) > 1
	}},
	{"a piece is missing in the last step", func(l *laws.Lesson) bool {
		s := l.Steps[len(l.Steps)-1].Scene
		i := last(s, isPiece)
		if i >= 0 {
			s.Items = slices.Delete(s.Items, i, i+1)
		}
		return i >= 0
	}},
	{"a step says what the one before said", func(l *laws.Lesson) bool {
		n := len(l.Steps)
		if n > 1 {
			l.Steps[n-1].Scene.Desc = l.Steps[n-2].Scene.Desc
		}
		return n > 1
	}},
	{"a label lies on another", func(l *laws.Lesson) bool {
		isText := func(it scene.Item) bool { _, ok := it.Shape.(scene.Text); return ok }
		i, j := last(l.Whole, isText), last(l.Whole, isNumber)
		if j < 0 || i == j {
			return false
		}
		over, under := l.Whole.Items[j].Shape.(scene.Text), l.Whole.Items[i].Shape.(scene.Text)
		over.X, over.Y = under.X, under.Y
		l.Whole.Items[j].Shape = over
		return true
	}},
	{"a piece off the paper", inWhole(isPlane, func(it *scene.Item) bool {
		r, ok := it.Shape.(scene.Rect)
		r.X = scene.PaperW - r.W/2
		it.Shape = r
		return ok
	})},
}
