package portable

// Worked out by tables_test.go.

const (
	quarterHigh   = 1.5707963267341256 // π/2 in three words
	quarterMiddle = 6.077100506303966e-11
	quarterLow    = 2.0222662487959506e-21
	halfPiLow     = 6.123233995736766e-17 // what math.Pi/2 leaves
)

// quarterTurns are the digits of 2/π after 64 zeros.
var quarterTurns = [20]uint64{
	0,
	0xa2f9836e4e441529,
	0xfc2757d1f534ddc0,
	0xdb6295993c439041,
	0xfe5163abdebbc561,
	0xb7246e3a424dd2e0,
	0x06492eea09d1921c,
	0xfe1deb1cb129a73e,
	0xe88235f52ebb4484,
	0xe99c7026b45f7e41,
	0x3991d639835339f4,
	0x9c845f8bbdf9283b,
	0x1ff897ffde05980f,
	0xef2f118b5a0a6d1f,
	0x6d367ecf27cb09b7,
	0x4f463f669e5fea2d,
	0x7527bac7ebe5f17b,
	0x3d0739f78a5292ea,
	0x6bfb5fb11f8d5d08,
	0x56033046fc7b6bab,
}
