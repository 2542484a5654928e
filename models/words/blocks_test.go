package words

import (
	"testing"

	"modeler/arithmetic"
)

func TestBlocksSayWhatToDo(t *testing.T) {
	say := func(_ string, hands, _ Phrase) string { return hands.String() }
	ask := func(_ string, _, ask Phrase) string { return ask.String() }
	for _, tc := range []struct{ got, want string }{
		{say(BlocksLayOut(arithmetic.LayOut{Number: 402, Counts: arithmetic.Counts{2, 0, 4}})), "Lay out 402: 4 hundreds, no tens and 2 ones."},
		{say(BlocksLayOut(arithmetic.LayOut{Nth: 1})), "Lay out no pieces for 0."},
		{say(BlocksTradeDown(arithmetic.TradeDown{From: 2, Have: 2, Need: 8}, 402, false)),
			"There are too few ones, and no tens to trade. Trade 1 hundred for 10 tens. It is still 402."},
		{say(BlocksTradeDown(arithmetic.TradeDown{From: 3, Have: 2, Need: 8}, 4_002, false)),
			"There are too few ones, and no hundreds or tens to trade. Trade 1 thousand for 10 hundreds. It is still 4,002."},
		{say(BlocksTradeDown(arithmetic.TradeDown{From: 1, Have: 2, Need: 8}, 402, true)), "Trade 1 ten for 10 ones. It is still 402."},
		{say(BlocksTradeDown(arithmetic.TradeDown{From: 1, Have: 5, Need: 8}, 425, false)),
			"There are too few ones. Trade 1 ten for 10 ones. It is still 425."},
		{say(BlocksTake(arithmetic.TakePlace{Power: 2, From: 3, Count: 2, Left: 1})), "Take away 2 hundreds from 3 hundreds. 1 hundred stays."},
		{say(BlocksTake(arithmetic.TakePlace{Power: 1, From: 4, Left: 4})), "There are no tens to take away. 4 tens stay."},
		{say(BlocksJoin(arithmetic.JoinPlace{Power: 1, First: 4, Second: 7, Carried: 1, Sum: 12})),
			"Push the tens together: 4 tens, 7 tens and the new ten make 12 tens."},
		{say(BlocksJoin(arithmetic.JoinPlace{First: 5, Second: 8, Sum: 13})), "Push the ones together: 5 ones and 8 ones make 13 ones."},
		{say(BlocksJoin(arithmetic.JoinPlace{Power: 2, Second: 3, Carried: 1, Sum: 4})),
			"Push the hundreds together: 3 hundreds and the new hundred make 4 hundreds."},
		{say(BlocksJoin(arithmetic.JoinPlace{Power: 1, Carried: 1, Sum: 1})), "Only the new ten lies in the tens."},
		{say(BlocksJoin(arithmetic.JoinPlace{Power: 1})), "There are no tens to join. The place stays empty."},
		{say(BlocksTradeUp(arithmetic.TradeUp{Left: 0})), "Trade 10 ones for 1 ten. No ones stay."},
		{say(BlocksCompare(arithmetic.ComparePlace{Power: 1, First: 1, Second: 7, Relation: arithmetic.Less}, true)),
			"Look at the tens: 1 ten is fewer than 7 tens. No need to look further."},
		{BlocksJoined(arithmetic.JoinPlace{Power: 1, Sum: 1}), "In the tens there is 1 ten in all."},
		{BlocksJoined(arithmetic.JoinPlace{Sum: 7}), "In the ones there are 7 ones in all."},
		{ask(BlocksCompare(arithmetic.ComparePlace{Power: 2, First: 3, Second: 3, Relation: arithmetic.Equal}, true)),
			"Which number has more hundreds, or are they the same?"},
		{BlocksWhy(arithmetic.WriteSign{First: 347, Second: 374, Relation: arithmetic.Less},
			arithmetic.ComparePlace{Power: 1, First: 4, Second: 7, Relation: arithmetic.Less}, 2).String(),
			"347 is less than 374: the hundreds are the same, and 4 tens are fewer than 7 tens."},
		{BlocksWhy(arithmetic.WriteSign{First: 102, Second: 98, Relation: arithmetic.Greater},
			arithmetic.ComparePlace{Power: 2, First: 1, Second: 0, Relation: arithmetic.Greater}, 2).String(),
			"102 is more than 98: 1 hundred is more than no hundreds."},
	} {
		if tc.got != tc.want {
			t.Errorf("got  %s\nwant %s", tc.got, tc.want)
		}
	}
}
