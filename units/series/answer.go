package series

import (
	"strconv"
	"strings"
)

// Answer returns the Format of the proposal's questions with one of them answered, to be stated to Sniff once
// more, or to ReadCSV when it was the last. The answer is that of a Choice, or any text of its kind: a heading
// for AskColumn, a unit, a name of a zone. A question that was not asked, and an answer that is none, are
// errors; which answers fit the file is for Sniff and ReadCSV to say.
//
// Only what was stated and what is answered is in the Format returned before the last question, so that the next
// proposal rests on the file again.
func (p Proposal) Answer(stated Format, ask Ask, answer string) (Format, error) {
	asked := false
	for _, q := range p.Questions {
		asked = asked || q.Ask == ask
	}
	if !asked || answer == "" {
		return stated, FormatError{Field: ask.String(), Wants: "one of the questions asked, and an answer to it"}
	}
	var err error
	switch ask {
	case AskColumn:
		stated.Value = p.columnOf(answer)
	case AskUnit:
		stated.Unit = answer
	case AskDateOrder:
		stated.Order, err = ParseDateOrder(answer)
	case AskTime:
		stated.Time = nil
		for _, part := range strings.Split(answer, "+") {
			stated.Time = append(stated.Time, TimeColumn{Column: headingOf(part)})
		}
	case AskTimeUnit:
		stated.Time = append([]TimeColumn(nil), p.Format.Time...)
		for i := range stated.Time {
			if stated.Time[i].Unit == "" && stated.Time[i].Part == Elapsed {
				stated.Time[i].Unit = answer
			}
		}
	case AskSensor:
		stated.Only = Filter{Column: p.Format.Only.Column, Text: answer}
	case AskRepeats:
		stated.Repeats, err = ParseRepeats(answer)
	case AskZone:
		stated.Zone = answer
	case AskMissing:
		if number := strings.TrimPrefix(answer, keep); number != answer {
			stated.Kept = append(stated.Kept[:len(stated.Kept):len(stated.Kept)], number)
		} else {
			stated.Missing = append(stated.Missing[:len(stated.Missing):len(stated.Missing)], answer)
		}
	case AskDecimal:
		stated.Decimal, err = ParseDecimal(answer)
	}
	return stated, err
}

// columnOf takes the number of a choice, a heading of the file, or any other number.
func (p Proposal) columnOf(answer string) Heading {
	for _, q := range p.Questions {
		for _, c := range q.Choices {
			if q.Ask == AskColumn && c.Answer == answer {
				return headingOf(answer)
			}
		}
	}
	for _, h := range p.Headings {
		if h.Name == answer {
			return Heading{Name: answer}
		}
	}
	return headingOf(answer)
}

// headingOf takes a whole number for the number of a column, anything else for its heading.
func headingOf(answer string) Heading {
	if n, err := strconv.Atoi(answer); err == nil && n > 0 {
		return Heading{Number: n}
	}
	return Heading{Name: answer}
}
