package canner

import "example.org/lakelarder/units"

// A circleRow is one row of the published table: the ratio with its sixteen decimals, and what is known about it.
type circleRow struct {
	ratio      units.Ratio // in 1e-16, four digits more than a Ratio has
	optimality Optimality
}

// circles are 1 to 40 equal circles in a circle: Birgin and Gentil 2009, table 1, reference column. Proven are 1 to
// 14 and 19. Six need as much room as seven, eighteen as much as nineteen.
var circles = [...]circleRow{
	{1_0000_0000_0000_0000, Proven},    // 1
	{2_0000_0000_0000_0000, Proven},    // 2
	{2_1547_0053_8379_2515, Proven},    // 3
	{2_4142_1356_2373_0949, Proven},    // 4
	{2_7013_0161_6704_0798, Proven},    // 5
	{3_0000_0000_0000_0000, Proven},    // 6
	{3_0000_0000_0000_0000, Proven},    // 7
	{3_3047_6487_0962_4866, Proven},    // 8
	{3_6131_2592_9752_7532, Proven},    // 9
	{3_8130_2563_1398_1246, Proven},    // 10
	{3_9238_0440_0163_0872, Proven},    // 11
	{4_0296_0193_0116_1836, Proven},    // 12
	{4_2360_6797_7499_7898, Proven},    // 13
	{4_3284_2855_4860_8370, Proven},    // 14
	{4_5213_5696_4706_1647, BestKnown}, // 15
	{4_6154_2559_4873_1944, BestKnown}, // 16
	{4_7920_3374_8310_5788, BestKnown}, // 17
	{4_8637_0330_5156_2728, BestKnown}, // 18
	{4_8637_0330_5156_2728, Proven},    // 19
	{5_1223_2073_6991_5285, BestKnown}, // 20
	{5_2523_1747_5010_2424, BestKnown}, // 21
	{5_4397_1895_9072_2137, BestKnown}, // 22
	{5_5452_0422_2574_8581, BestKnown}, // 23
	{5_6516_6109_1765_4369, BestKnown}, // 24
	{5_7528_2433_0857_1154, BestKnown}, // 25
	{5_8281_7653_6942_9497, BestKnown}, // 26
	{5_9063_9784_7394_1550, BestKnown}, // 27
	{6_0149_3809_7371_5125, BestKnown}, // 28
	{6_1385_9790_3978_1455, BestKnown}, // 29
	{6_1977_4107_0879_2258, BestKnown}, // 30
	{6_2915_0262_2129_1814, BestKnown}, // 31
	{6_4294_6297_0950_1132, BestKnown}, // 32
	{6_4867_0312_3560_4333, BestKnown}, // 33
	{6_6109_5709_0001_0031, BestKnown}, // 34
	{6_6971_7109_1790_2438, BestKnown}, // 35
	{6_7467_5379_3424_1752, BestKnown}, // 36
	{6_7587_7048_3143_6337, BestKnown}, // 37
	{6_9618_8696_5228_1488, BestKnown}, // 38
	{7_0578_8416_2624_0045, BestKnown}, // 39
	{7_1238_4643_5943_1246, BestKnown}, // 40
}
