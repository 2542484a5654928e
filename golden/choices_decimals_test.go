package golden

var choicesOfDecimals = []choice{
	{"0.62", "hundredths-square number-line", "4.NF.C.6: 0.62 as 62/100; a square of 100: common practice, no source"},
	{"1.05", "hundredths-square number-line", "4.NF.C.6"},
	{"0.347", "place-value-table number-line", "5.NBT.A.3a: read and write decimals to thousandths"},
	{"347.392 in expanded form", "place-value-table", "5.NBT.A.3a"},
	{"value of the 4 in 0.347", "place-value-table", "5.NBT.A.1"},
	{"0.047 in words", "place-value-table", "5.NBT.A.3a"},
	{"compare 0.2 and 0.09", "hundredths-square number-line", "4.NF.C.7; 0.2 and 0.09: Progressions"},
	{"0.3 > 0.29", "hundredths-square number-line", "4.NF.C.7"},
	{"0.3 = 3/10", "hundredths-square number-line", "4.NF.C.6"},
	{"0.71 as a fraction", "hundredths-square", "National curriculum in England, Year 5: 0.71 = 71/100"},
	{"62/100 as a decimal", "hundredths-square", "4.NF.C.6"},
	{"3/4 as a decimal", "hundredths-square", "National curriculum in England, Year 4"},
	{"3/4 as a percent", "hundredths-square", "National curriculum in England, Year 5"},
	{"68¢ in coins", "coins", "2.MD.C.8"},
	{"2 dimes and 3 pennies", "coins", "2.MD.C.8: If you have 2 dimes and 3 pennies, how many cents do you have?"},
	{"change from $5 for $3.27", "coins number-line", "2.MD.C.8; counting up: common practice, no source"},
	{"$1.25 + $0.60", "coins number-line", "2.MD.C.8"},
}
