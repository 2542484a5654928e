package words

import (
	"modeler/arithmetic"
	"modeler/models/scene"
)

// ArrayBlocks is a product of three factors as blocks of rows. Sketch is set where
// there are too many to lay out.
type ArrayBlocks struct {
	Problem arithmetic.Problem
	Blocks  arithmetic.Blocks
	First   arithmetic.PairFactors
	Count   arithmetic.CountPairs
	Easier  arithmetic.EasierPair
	Sketch  bool
}

// blocksOf is "3 blocks, each with 5 rows of 2".
func blocksOf(b arithmetic.Blocks) string {
	if b.Blocks == 1 {
		return "1 block with " + rowsOf(b.Rows, b.Cols)
	}
	return Count(b.Blocks, "block") + ", each with " + rowsOf(b.Rows, b.Cols)
}

// ArrayBlockCount names how many blocks there are.
func ArrayBlockCount(n int64) string { return Count(n, "block") }

// pairIs is what two factors multiplied first come to: "3 blocks of 5 rows are 15
// rows".
func pairIs(b arithmetic.Blocks, pair arithmetic.Pair, product int64) Phrase {
	is := " are "
	all := In(scene.Moved, g(product))
	switch pair {
	case arithmetic.RowsInAll:
		if b.Blocks == 1 {
			is = " is "
		}
		return Say(Count(b.Blocks, "block")+" of "+Count(b.Rows, "row")+is, In(scene.Moved, Count(product, "row")))
	case arithmetic.InABlock:
		return Say(rowsAre(b.Rows, b.Cols), all, " in each block")
	}
	return Say("one row of every block is "+g(b.Blocks)+" × "+g(b.Cols)+", that is ", all)
}

// thenIs is the rest of the way: "15 rows of 2 are 30".
func thenIs(pair arithmetic.Pair, times, each, all int64) Phrase {
	product := In(scene.Result, g(all))
	is := " are "
	if times == 1 {
		is = " is "
	}
	switch pair {
	case arithmetic.RowsInAll:
		return Say(rowsAre(times, each), product)
	case arithmetic.InABlock:
		return Say(Count(times, "block")+" of "+g(each)+is, product)
	}
	return Say(g(times)+" times "+g(each)+" is ", product)
}

// said puts a capital in front and a stop behind.
func said(p Phrase) Phrase {
	out := append(Phrase{}, p...)
	out[0].Text = capital(out[0].Text)
	return Say(out, ".")
}

// Laid says how to lay out the blocks.
func (a ArrayBlocks) Laid() (title string, hands, ask Phrase, desc scene.Telling) {
	lay := "Lay out "
	if a.Sketch {
		lay = "Sketch "
	}
	desc = scene.Same(a.all() + ".")
	return "Lay out the blocks", Say(lay + blocksOf(a.Blocks) + "."), Say("What is the same in every block?"), desc
}

func (a ArrayBlocks) all() string { return a.Problem.Left.String() + ": " + blocksOf(a.Blocks) }

// Paired says how to multiply the two factors that come first.
func (a ArrayBlocks) Paired() (title string, hands, ask Phrase, desc scene.Telling) {
	m := a.First
	found := said(pairIs(a.Blocks, m.Pair, m.Product))
	title = g(m.First) + " × " + g(m.Second) + " first"
	hands = Say("Work from left to right. ", found)
	ask = Say("How many rows are there in all the blocks?")
	if m.Pair == arithmetic.InABlock {
		hands, ask = Say("Brackets first. ", found), Say("How many are in one block?")
	}
	shown := a.all() + ". " + found.String()
	return title, hands, ask, scene.Telling{Shown: shown, Hidden: shown}
}

// PairName names what two factors come to, under the blocks.
func (a ArrayBlocks) PairName(pair arithmetic.Pair, first, second, product int64) string {
	fact := g(first) + " × " + g(second) + " = " + g(product)
	switch pair {
	case arithmetic.RowsInAll:
		return fact + " rows"
	case arithmetic.InABlock:
		return fact + " in each block"
	}
	return fact + " in one row of all blocks"
}

// Counted says how to multiply by the third factor.
func (a ArrayBlocks) Counted() (title string, hands, ask Phrase, desc scene.Telling) {
	m := a.Count
	title = g(m.Times) + " × " + g(m.Each)
	return title, said(thenIs(m.Pair, m.Times, m.Each, m.Product)), Say("How many are there in all?"), a.Story()
}

// Easy says how to do the same in an order that makes tens.
func (a ArrayBlocks) Easy() (title string, hands, ask Phrase, desc scene.Telling) {
	m := a.Easier
	title = "Or " + g(m.First) + " × " + g(m.Second) + " first"
	way := Say(said(pairIs(a.Blocks, m.Pair, m.Easy)), " ", said(thenIs(m.Pair, m.Times, m.Easy, m.Product)))
	hands = Say("Look for an easier order: "+g(m.First)+" × "+g(m.Second)+" makes tens. ", way)
	desc = a.Story()
	desc.Shown += " It is easier with " + g(m.First) + " × " + g(m.Second) + " first: " + way.String()
	desc.Hidden += " Is there an easier order?"
	return title, hands, Say("Which two numbers make tens?"), desc
}

// Story describes the whole story.
func (a ArrayBlocks) Story() scene.Telling {
	shown := a.all() + ". " + said(pairIs(a.Blocks, a.First.Pair, a.First.Product)).String() + " " +
		said(thenIs(a.Count.Pair, a.Count.Times, a.Count.Each, a.Count.Product)).String()
	return scene.Telling{Shown: shown, Hidden: a.all() + ". How many are there in all?"}
}
