package line

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
)

// resultLine is an answer, with its final name where that is another.
func resultLine(a arithmetic.Answer) notation.Line {
	line := telling.Numeral(a.Number, scene.Result)
	if a.Simplest != a.Number {
		line = telling.Join(line, notation.S("="), telling.Numeral(a.Simplest, scene.Result))
	}
	return line
}

// renamedLine is 1/2 = 3/6, or nothing where the name stays.
func renamedLine(was, is arithmetic.Number, role scene.Role) notation.Line {
	if was == is {
		return nil
	}
	return telling.Join(telling.Numeral(was, role), notation.S("="), telling.Numeral(is, role))
}

// jumpLine is a hop in symbols: 345 + 200 = 545.
func jumpLine(m arithmetic.Jump, sign string, last bool) notation.Line {
	role := scene.Ink
	if last {
		role = scene.Result
	}
	return telling.Join(telling.Numeral(m.From, scene.Ink), notation.S(sign), telling.Numeral(m.By, scene.Moved), notation.S("="), telling.Numeral(m.To, role))
}

// splitLine says how the second number is split: 278 = 200 + 70 + 8, or 19 = 20 − 1.
// It is nothing when there is one hop.
func splitLine(b arithmetic.Number, m arithmetic.StartAt) notation.Line {
	var parts []notation.Line
	for _, n := range m.Parts {
		parts = append(parts, telling.Numeral(n, scene.Second))
	}
	if m.Less.Value.Sign() > 0 {
		return telling.Join(telling.Numeral(b, scene.Second), "=", parts[0], "−", telling.Numeral(m.Less, scene.Second))
	}
	if len(parts) == 0 {
		return nil
	}
	return telling.Join(telling.Numeral(b, scene.Second), "=", telling.Chain("+", parts...))
}

// inPlacesLine writes decimals in more places: 0.3 = 0.30. It is nothing where
// none is.
func inPlacesLine(m arithmetic.StartAt, first arithmetic.Number) notation.Line {
	var line notation.Line
	for _, as := range m.As {
		role := scene.Second
		if as[0] == first {
			role = scene.First
		}
		if line != nil {
			line = telling.Join(line, notation.W(","))
		}
		line = telling.Join(line, renamedLine(as[0], as[1], role))
	}
	return line
}

// partsLine says what the parts come to: 4 × 1/4 = 1, or 2 × 1/8 = 1/4.
func partsLine(m arithmetic.CutStretch) notation.Line {
	if m.Into > 0 && m.Within.Form == arithmetic.Common && m.Each.Form == arithmetic.Common {
		return telling.Join(telling.Count(m.Into, scene.Ink), notation.S("×"), telling.Numeral(m.Each, scene.Ink), notation.S("="), telling.Numeral(m.Within, scene.Ink))
	}
	return telling.Join(telling.Count(m.Parts, scene.Ink), notation.S("×"), telling.Numeral(m.Each, scene.Ink), notation.S("="), telling.Numeral(m.Long, scene.Ink))
}

// countLine writes the count that leads to a number: 1/4 + 1/4 + 1/4 = 3/4, or as
// a product where the terms are many. All are parts of the number and in its role.
func countLine(m arithmetic.MarkOnLine, role scene.Role) notation.Line {
	const most = 5
	var line notation.Line
	plus := func(more notation.Line) {
		if len(line) > 0 {
			line = telling.Join(line, notation.S("+"))
		}
		line = telling.Join(line, more)
	}
	var total int64
	for _, c := range m.Counts {
		total += c.Times
	}
	if m.From.Value.Sign() > 0 {
		plus(telling.Numeral(m.From, role))
		total++
	}
	for _, c := range m.Counts {
		if total <= most {
			for range c.Times {
				plus(telling.Numeral(c.Each, role))
			}
			continue
		}
		if c.Times == 1 {
			plus(telling.Numeral(c.Each, role))
			continue
		}
		plus(telling.Join(telling.Count(c.Times, scene.Ink), notation.S("×"), telling.Numeral(c.Each, role)))
	}
	if len(line) == 0 || len(line) == 1 {
		return telling.Numeral(m.Number, role)
	}
	return telling.Join(line, notation.S("="), telling.Numeral(m.Number, role))
}

// sumLine adds hops: 2 + 20 + 45 = 67.
func sumLine(m arithmetic.AddJumps) notation.Line {
	var hops []notation.Line
	for _, n := range m.Hops {
		hops = append(hops, telling.Numeral(n, scene.Ink))
	}
	return telling.Join(telling.Chain("+", hops...), "=", telling.Numeral(m.Sum, scene.Result))
}
