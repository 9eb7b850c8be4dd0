package answers

import (
	"bytes"
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units/series"
)

// File is a logger's file that was dropped, what was answered about it, in order, and whether the way it is read was
// confirmed. It is never part of an address.
type File struct {
	Name      string  `json:"name"`
	Data      []byte  `json:"data"`
	Replies   []Reply `json:"replies"`
	Confirmed bool    `json:"confirmed"`
}

// Reply is the answer to one question about a file.
type Reply struct {
	Ask    string `json:"ask"`
	Answer string `json:"answer"`
}

// Reading is the Ask that is answered by confirming how the file is read.
const Reading = "reading"

// record reads a dropped file. It is false while the file is not there, has open questions, cannot be read or is not
// confirmed; the answer then says which.
func record[T series.Value](w *writer, field string) (log series.Log[T], ok bool) {
	f, dropped := w.request.Files[field]
	if !dropped {
		return log, false
	}
	p, err := proposed[T](f)
	if err != nil {
		w.wrong(field, err)
		return log, false
	}
	for _, q := range p.Questions {
		ask := Ask{File: field, Ask: q.Ask.String(), Text: q.Text}
		for _, c := range q.Choices {
			ask.Choices = append(ask.Choices, Choice(c))
		}
		w.Asks = append(w.Asks, ask)
	}
	if len(p.Questions) > 0 {
		return log, false
	}
	if log, err = readWhole[T](f, p.Format); err != nil {
		w.wrong(field, err)
		return log, false
	}
	read := f.Name + " " + form.ReadAs(p.Format) + ": " + counted(log.Series.Len(), "reading") + " over " + text(w, log.Series.Span())
	if len(log.Rows) > 0 {
		read += fmt.Sprintf("; %d rows hold no reading, the first in line %d (%s)", len(log.Rows), log.Rows[0].Line, log.Rows[0].Why)
	}
	if !f.Confirmed {
		w.Asks = append(w.Asks, Ask{File: field, Ask: Reading, Text: read + ". Is that so?", Choices: []Choice{{Answer: "yes", Means: "it is read so"}}})
		return log, false
	}
	w.block("The record")
	w.line(read + ".")
	return log, true
}

// proposed is how a file is written, after what was answered.
func proposed[T series.Value](f File) (p series.Proposal, err error) {
	var stated series.Format
	head := form.Head(f.Data)
	if p, err = series.Sniff[T](head, stated); err != nil {
		return p, err
	}
	for _, reply := range f.Replies {
		ask, err := series.ParseAsk(reply.Ask)
		if err != nil {
			return p, err
		}
		if stated, err = p.Answer(stated, ask, reply.Answer); err != nil {
			return p, err
		}
		if p, err = series.Sniff[T](head, stated); err != nil {
			return p, err
		}
	}
	return p, nil
}

func readWhole[T series.Value](f File, format series.Format) (series.Log[T], error) {
	var location *time.Location
	if zone := format.Zone; zone != "" && zone[0] != '+' && zone[0] != '-' {
		var err error
		if location, err = time.LoadLocation(zone); err != nil {
			return series.Log[T]{}, errors.New("time zone " + zone + " is not known here: expected an offset such as +02:00")
		}
	}
	return series.ReadCSV[T](bytes.NewReader(f.Data), format, location)
}
