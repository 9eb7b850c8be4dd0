package series

import (
	"bufio"
	"io"
	"unicode/utf8"
)

// decoded returns the reader's text as UTF-8 without its byte order mark.
func decoded(r io.Reader, e Encoding) (io.Reader, error) {
	in := bufio.NewReaderSize(r, 4096)
	start, _ := in.Peek(3) // a fault of the reader comes back with the first row
	mark, size := byteOrderMark(start)
	if e == 0 {
		e = UTF8
	}
	if mark != 0 && mark != e {
		return nil, LineError{Line: 1, Err: wrap(ErrHeader, "the file is "+mark.String()+", not "+e.String())}
	}
	if _, err := in.Discard(size); err != nil {
		return nil, err
	}
	if e == UTF8 {
		return in, nil
	}
	return &decoder{in: in, encoding: e}, nil
}

// byteOrderMark returns the encoding whose mark the text begins with, and the length of the mark.
func byteOrderMark(start []byte) (Encoding, int) {
	switch {
	case len(start) >= 3 && start[0] == 0xef && start[1] == 0xbb && start[2] == 0xbf:
		return UTF8, 3
	case len(start) >= 2 && start[0] == 0xff && start[1] == 0xfe:
		return UTF16LittleEndian, 2
	case len(start) >= 2 && start[0] == 0xfe && start[1] == 0xff:
		return UTF16BigEndian, 2
	}
	return 0, 0
}

// decoder turns Latin-1 or UTF-16 into UTF-8 as it is read.
type decoder struct {
	in       *bufio.Reader
	encoding Encoding
	err      error
}

// Read fills p with whole characters as far as they fit.
func (d *decoder) Read(p []byte) (n int, err error) {
	for len(p)-n >= utf8.UTFMax && d.err == nil {
		var c rune
		if c, d.err = d.next(); d.err == nil {
			n += utf8.EncodeRune(p[n:], c)
		}
	}
	if n == 0 && d.err == nil {
		return 0, io.ErrShortBuffer
	}
	if n > 0 {
		return n, nil
	}
	return 0, d.err
}

func (d *decoder) next() (rune, error) {
	if d.encoding == Latin1 {
		c, err := d.in.ReadByte()
		return rune(c), err
	}
	high, err := d.unit()
	if err != nil || high < 0xd800 || high > 0xdfff {
		return high, err
	}
	low, err := d.unit() // a character beyond 65,535 is a pair
	if high > 0xdbff || low < 0xdc00 || low > 0xdfff {
		return utf8.RuneError, err
	}
	return (high-0xd800)<<10 + (low - 0xdc00) + 0x10000, err
}

// unit reads one unit of UTF-16; half a unit at the end is a fault.
func (d *decoder) unit() (rune, error) {
	a, err := d.in.ReadByte()
	if err != nil {
		return 0, err
	}
	b, err := d.in.ReadByte()
	if err != nil {
		return 0, io.ErrUnexpectedEOF
	}
	if d.encoding == UTF16LittleEndian {
		a, b = b, a
	}
	return rune(a)<<8 | rune(b), nil
}
