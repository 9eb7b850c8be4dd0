package pressure

// coefficients are n1 to n10 of region 4, numbered as printed.
type coefficients [11]float64

// region4 is IAPWS R7-97(2012), table 34. A slip in a late digit hides from the official check values, which print nine
// digits: see the tests.
var region4 = coefficients{
	1:  0.116_705_214_527_67e+4,
	2:  -0.724_213_167_032_06e+6,
	3:  -0.170_738_469_400_92e+2,
	4:  0.120_208_247_024_70e+5,
	5:  -0.323_255_503_223_33e+7,
	6:  0.149_151_086_135_30e+2,
	7:  -0.482_326_573_615_91e+4,
	8:  0.405_113_405_420_57e+6,
	9:  -0.238_555_575_678_49e+0,
	10: 0.650_175_348_447_98e+3,
}
