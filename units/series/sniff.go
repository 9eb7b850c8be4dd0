package series

import (
	"fmt"
	"strings"
)

// Question is something that the file does not say. Choices are what may be answered, as Answer takes it, each
// with what it means in this file; where there are none, any text of the kind will do.
type Question struct {
	Ask     Ask
	Text    string
	Choices []Choice
}

// Choice is one possible answer.
type Choice struct {
	Answer string
	Means  string
}

// Evidence is why a field of the proposal is as it is.
type Evidence struct {
	Field string
	Why   string
}

// Proposal is a Format for a file as far as its lines say it, why, and what stays open. Headings are the columns
// found, with a first value where there is no heading.
type Proposal struct {
	Format    Format
	Evidence  []Evidence
	Questions []Question
	Headings  []Heading
}

// longestHead bounds what Sniff looks at.
const longestHead = 256 << 10

// Sniff proposes how to read a file for the quantity of T, given its first lines, and its last ones where the
// head does not hold the whole: cut at line ends. What is stated in the Format given is taken as it is; what the
// file says is proposed with its evidence; what it does not say, or says in two ways, is a Question, and nothing
// is guessed. Questions come one after the other where one hangs on the answer of another: state the answer (see
// Answer) and sniff again until none is left.
//
// A file that cannot be read whatever is answered is an error: a LineError for a line, otherwise ErrNotText,
// ErrHeader, ErrUnit or ErrEmpty. More than 256 KiB is ErrTooLong.
func Sniff[T Value](head []byte, stated Format) (Proposal, error) {
	if len(head) > longestHead {
		return Proposal{}, wrap(ErrTooLong, "give the first and the last lines only, up to 256 KiB")
	}
	stated.Open = nil
	s := &sniffer{kind: kindOf[T](), stated: stated, format: stated}
	if err := s.decode(head); err != nil {
		return Proposal{}, err
	}
	if err := s.layout(); err != nil {
		return Proposal{}, err
	}
	s.names()
	if err := s.times(); err != nil {
		return Proposal{}, err
	}
	if err := s.values(plausibleFor[T]()); err != nil {
		return Proposal{}, err
	}
	s.sensors()
	if err := dryRun[T](s); err != nil {
		return Proposal{}, err
	}
	s.format.Open = nil
	for _, q := range s.questions {
		s.format.Open = append(s.format.Open, q.Ask)
	}
	return Proposal{Format: s.format, Evidence: s.evidence, Questions: s.questions, Headings: s.headings()}, nil
}

// sniffer gathers what is known of a file.
type sniffer struct {
	kind      kind
	stated    Format
	format    Format
	evidence  []Evidence
	questions []Question

	text  string
	lines []string
	sheet *sheet
	cols  []column

	headings0  int   // headings of the file, spare separators counted
	candidates []int // columns that may be the wanted one, where it is asked
}

func (s *sniffer) because(field, format string, args ...any) {
	s.evidence = append(s.evidence, Evidence{Field: field, Why: fmt.Sprintf(format, args...)})
}

func (s *sniffer) ask(kind Ask, choices []Choice, format string, args ...any) {
	s.questions = append(s.questions, Question{Ask: kind, Text: fmt.Sprintf(format, args...), Choices: choices})
}

func (s *sniffer) asks(kind Ask) bool {
	for _, q := range s.questions {
		if q.Ask == kind {
			return true
		}
	}
	return false
}

// headings are the columns as a person may be shown them.
func (s *sniffer) headings() []Heading {
	var all []Heading
	for i, c := range s.cols {
		all = append(all, Heading{Number: i + 1, Name: c.name})
	}
	return all
}

// heading names a column for the Format.
func (s *sniffer) heading(i int) Heading { return Heading{Number: i + 1, Name: s.cols[i].name} }

// decode finds the encoding and cuts the text into lines.
func (s *sniffer) decode(head []byte) error {
	mark, _ := byteOrderMark(head)
	e := s.stated.Encoding
	switch {
	case e != 0:
	case mark != 0:
		e = mark
		s.because("Encoding", "the byte order mark of %v", mark)
	default:
		e = encodingOf(head)
		if e != UTF8 {
			s.because("Encoding", "no UTF-8, but %v", e)
		}
	}
	if e == UTF16LittleEndian || e == UTF16BigEndian {
		head = head[:len(head)/2*2]
	}
	text, err := decodedText(head, e)
	if err != nil {
		return err
	}
	s.format.Encoding, s.text = e, text
	s.lines = strings.Split(strings.TrimSuffix(text, "\n"), "\n")
	for i, line := range s.lines {
		line = strings.TrimSuffix(line, "\r")
		s.lines[i] = line
		if len(line) > longestLine-2 {
			return LineError{Line: i + 1, Text: short(line), Err: ErrTooLong}
		}
		for k := 0; k < len(line); k++ {
			if line[k] < ' ' && line[k] != '\t' {
				return LineError{Line: i + 1, Text: short(line), Err: wrap(ErrNotText, "a control character")}
			}
		}
	}
	if strings.TrimSpace(text) == "" {
		return LineError{Line: 1, Err: wrap(ErrEmpty, "the file is empty")}
	}
	return nil
}
