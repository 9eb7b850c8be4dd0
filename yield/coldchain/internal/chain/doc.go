// Package chain is what the packages of the cold chain share and nobody outside them needs: what a record of a
// temperature in fish must be (CheckRecord), the quanta and shares that its times are counted in, the calendar of the
// printed times and how a page is cited.
package chain
