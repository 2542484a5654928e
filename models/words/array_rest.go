package words

import (
	"strings"

	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayCutIn names strips that stand for what is left over.
func ArrayCutIn(count, parts int64) string {
	if count == 1 {
		return "1 left over, cut in " + g(parts)
	}
	return g(count) + " left over, each cut in " + g(parts)
}

// ArrayShareOf stands behind the fraction that a row gets of them, or that they are
// of a row.
func ArrayShareOf(m arithmetic.SetOut) string {
	if m.Grouping {
		return "of a row"
	}
	return "for each row"
}

// tenths is the name of parts of which so many make a whole.
func tenths(m arithmetic.TradeRest, count int64) string { return Count(count, Parts(m.Unit, 1)) }

// ArrayTradedFor names strips that are traded for ten parts each.
func ArrayTradedFor(m arithmetic.TradeRest) string { return tenths(m, m.Traded) }

// ArrayPartsEach names the parts that a row gets.
func ArrayPartsEach(m arithmetic.TradeRest) string {
	return plural(Parts(m.Unit, 1), m.Each) + " for each row"
}

// Cut says how to cut what is left over.
func (a ArrayShare) Cut(m arithmetic.CutRest, read arithmetic.ReadSide, parts []arithmetic.PlacePart) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Cut what is left over", Say("How can what is left over be shared too?")
	share, all := In(scene.Result, m.Share.String()), In(scene.Result, m.All.String())
	last := ""
	if final := arithmetic.FinalName(m.All).String(); final != m.All.String() {
		last = ", which is " + final
	}
	cut := "Cut each of the " + g(m.Left) + " left over in " + g(m.Parts) + " equal parts. "
	if m.Left == 1 {
		cut = "Cut the 1 left over in " + g(m.Parts) + " equal parts. "
	}
	got := "one part of each"
	if m.Left == 1 {
		got = "one part"
	}
	hands = Say(cut+"Every row gets "+got+": ", share, ". That makes ", all, " in each row"+last+".")
	if a.Grouping {
		ask = Say("What part of a row are those left over?")
		is := " are "
		if m.Left == 1 {
			is = " is "
		}
		hands = Say("A row takes "+g(m.Parts)+", and "+g(m.Left)+is, share, " of it. That makes ", all, " rows"+last+".")
	}
	desc = a.Story(read, parts)
	desc.Shown += " " + strings.Replace(hands.String(), last, "", 1)
	return title, hands, ask, desc
}

// Traded says how to trade what is left over for tenths, hundredths or thousandths.
func (a ArrayShare) Traded(m arithmetic.TradeRest, trades []arithmetic.TradeRest, read arithmetic.ReadSide, parts []arithmetic.PlacePart) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Trade for "+Parts(m.Unit, 2), Say("How many "+Parts(m.Unit, 2)+" does each row get?")
	from := "what is left over"
	if m.Unit == 10 {
		from = g(m.From) + " left over"
	}
	hands = Say("Trade "+from+" for "+tenths(m, m.Traded)+". Each row gets ", In(scene.Result, tenths(m, m.Each)), ".")
	if m.Left > 0 {
		hands = Say(hands, " "+capital(tenths(m, m.Left))+" stay over.")
		if m.Left == 1 {
			hands = Say(hands[:len(hands)-1], " "+capital(tenths(m, m.Left))+" stays over.")
		}
	} else {
		hands = Say(hands, " That makes ", In(scene.Result, m.All.String()), " in each row.")
	}
	desc = a.Story(read, parts)
	for _, t := range trades {
		desc.Shown += " " + capital(tenths(t, t.Traded)) + " give each row " + tenths(t, t.Each) + "."
	}
	if m.Left == 0 {
		desc.Shown += " In all " + m.All.String() + " in each row."
	}
	return title, hands, ask, desc
}

// More says how to give what is left over a line of its own.
func (a ArrayShare) More(m arithmetic.OneMoreLine, read arithmetic.ReadSide, parts []arithmetic.PlacePart) (title string, hands, ask Phrase, desc scene.Telling) {
	title, ask = "Make room for the rest", Say("Where do those left over go?")
	places := Count(m.Empty, "place")
	stay := " stay empty."
	if m.Empty == 1 {
		stay = " stays empty."
	}
	need := "The " + g(m.Left) + " left over need "
	if m.Left == 1 {
		need = "The 1 left over needs "
	}
	if a.Grouping {
		hands = Say(need+"a row too, and "+places+" of it"+stay+" That makes ", In(scene.Result, Count(m.Found, "row")), ".")
	} else {
		hands = Say(need+"a place too: make room for ", In(scene.Result, g(m.Found)), " in each row, and "+places+stay)
	}
	desc = a.Story(read, parts)
	desc.Shown += " " + hands.String()
	return title, hands, ask, desc
}

// ArrayRoundedUp names the problem and its answer where what is left over needs one
// more.
func ArrayRoundedUp(p arithmetic.Problem, m arithmetic.OneMoreLine) string {
	return p.String() + " is " + g(m.Found)
}
