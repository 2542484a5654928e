package coins

import (
	"modeler/arithmetic"
	"modeler/models/notation"
	"modeler/models/scene"
	"modeler/models/telling"
	"modeler/models/words"
)

// tell tells every move.
func (l *lesson) tell() telling.Telling {
	p := l.Problem
	t := telling.Telling{Answer: l.Answer, Pieces: l.pieces()}
	answered := l.equation(true)
	title := words.CoinsTitle(p, l.Answer.Order, answered.Text())
	if p.Kind == arithmetic.CoinsWorth {
		title = words.CoinsTitle(p, nil, l.Answer.Number.String())
	}
	for i, move := range l.Moves {
		told, lines := l.move(move, i)
		s := &scene.Scene{W: scene.PaperW, H: l.bottom + scene.Margin, Title: title, Desc: told.Desc}
		telling.AddPart(s, scene.ShownOnly, l.picture(i, false))
		if i < l.secret() {
			s.Items = nil
			telling.AddPart(s, scene.Always, l.picture(i, false))
		} else {
			telling.AddPart(s, scene.HiddenOnly, l.picture(len(l.Moves), true))
			s.Desc.Hidden = l.asked()
		}
		t.Steps = append(t.Steps, telling.Step{Title: told.Title, Hands: told.Hands, Ask: told.Ask, Scene: s, Symbols: notation.Lines(lines...)})
	}
	t.Whole = &scene.Scene{Title: title, Desc: scene.Telling{Shown: words.CoinsTold(p, l.Moves), Hidden: l.asked()}}
	telling.AddPart(t.Whole, scene.ShownOnly, l.picture(len(l.Moves), false))
	telling.AddPart(t.Whole, scene.HiddenOnly, l.picture(len(l.Moves), true))
	telling.Equation(t.Whole, l.bottom, l.equation(false), answered)
	return t
}

// secret is the first step that gives the answer away: that before the last.
func (l *lesson) secret() int { return len(l.Moves) - 2 }

// asked describes the problem while its answer is hidden.
func (l *lesson) asked() string {
	var list []string
	for _, move := range l.Moves {
		if m, ok := move.(arithmetic.LayMoney); ok {
			list = append(list, words.CoinsLies(m))
		}
	}
	return words.Sentences(append(list, words.CoinsAsk(l.Problem))...)
}

// move is one move in words and symbols.
func (l *lesson) move(move arithmetic.Move, i int) (words.Told, []notation.Line) {
	p := l.Problem
	switch m := move.(type) {
	case arithmetic.TakeCoins:
		return words.CoinsTake(m, i == 0), []notation.Line{times(m.Group)}
	case arithmetic.LayMoney:
		return words.CoinsLay(p, m), []notation.Line{telling.Numeral(m.Number, telling.RoleOf(m.Nth))}
	case arithmetic.CountCoins:
		line := telling.Join(times(m.Group))
		if m.From > 0 {
			line = telling.Join(telling.Numeral(arithmetic.Dollars(m.From), scene.Ink), "+", telling.Numeral(arithmetic.Dollars(m.Group.Worth), scene.Ink), "=", telling.Numeral(arithmetic.Dollars(m.Totals[len(m.Totals)-1]), scene.Result))
		}
		return words.CoinsCount(m), []notation.Line{line}
	case arithmetic.CountUp:
		return words.CoinsUp(m), []notation.Line{telling.Join(telling.Numeral(arithmetic.Dollars(m.From), scene.Ink), "+", telling.Numeral(arithmetic.Dollars(m.Worth), scene.Result), "=", telling.Numeral(arithmetic.Dollars(m.To), scene.Ink))}
	}
	read := move.(arithmetic.ReadMoney)
	if p.Kind == arithmetic.Coins {
		return words.CoinsMade(p, read, l.Answer.Order), []notation.Line{l.equation(true)}
	}
	lines := []notation.Line{l.equation(true)}
	if p.Kind == arithmetic.Subtraction {
		lines = []notation.Line{l.laid(), l.equation(true)}
	}
	return words.CoinsRead(p, read), lines
}

// times is coins of one kind: 2 × $0.25 = $0.50.
func times(g arithmetic.CoinGroup) notation.Line {
	return telling.Join(telling.Count(g.Count, scene.Ink), "×", telling.Numeral(g.Coin.Money(), scene.Ink), "=", telling.Numeral(arithmetic.Dollars(g.Worth), scene.Result))
}

// laid is what was laid to count up: $0.03 + $0.70 + $1.00 = $1.73.
func (l *lesson) laid() notation.Line {
	var list []notation.Line
	for _, move := range l.Moves {
		if m, ok := move.(arithmetic.CountUp); ok {
			list = append(list, telling.Numeral(arithmetic.Dollars(m.Worth), scene.Ink))
		}
	}
	return telling.Join(telling.Chain("+", list...), "=", telling.Numeral(l.Answer.Number, scene.Result))
}

// equation stands at the foot. Where it has no room it is the amount alone.
func (l *lesson) equation(answered bool) notation.Line {
	p := l.Problem
	fill := notation.Line{telling.Unknown()}
	switch p.Kind {
	case arithmetic.Addition, arithmetic.Subtraction:
		if answered {
			fill = telling.Numeral(l.Answer.Number, scene.Result)
		}
		return telling.Written(p, fill)
	}
	var list []notation.Line
	for _, move := range l.Moves {
		switch m := move.(type) {
		case arithmetic.TakeCoins:
			list = append(list, telling.Numeral(arithmetic.Dollars(m.Group.Worth), scene.Ink))
		case arithmetic.CountCoins:
			list = append(list, telling.Numeral(arithmetic.Dollars(m.Group.Worth), scene.Ink))
		}
	}
	if p.Kind == arithmetic.CoinsWorth {
		return l.sum(telling.Chain("+", list...), fill, answered, len(list))
	}
	number := telling.Numeral(l.Answer.Number, scene.First)
	if answered {
		fill = telling.Chain("+", list...)
	}
	line := telling.Join(number, "=", fill)
	if len(list) < 2 || telling.Width(line, scene.Small, true) > scene.PaperW-2*scene.Margin {
		return number
	}
	return line
}

// sum is what coins of every kind are worth, and what all come to.
func (l *lesson) sum(worths, fill notation.Line, answered bool, kinds int) notation.Line {
	if answered {
		fill = telling.Numeral(l.Answer.Number, scene.Result)
	}
	line := telling.Join(worths, "=", fill)
	if kinds < 2 || telling.Width(line, scene.Small, true) > scene.PaperW-2*scene.Margin {
		return fill
	}
	return line
}

// pieces is what to have on the table.
func (l *lesson) pieces() []telling.Piece {
	counts := map[arithmetic.Coin]int64{}
	for _, b := range l.bands {
		for _, u := range b.units {
			for _, c := range u.coins {
				counts[c]++
			}
		}
	}
	var list []telling.Piece
	for _, c := range arithmetic.CoinKinds {
		if n := counts[c]; n > 0 {
			list = append(list, telling.Piece{Name: c.Name(n != 1), Count: n})
		}
	}
	return list
}
