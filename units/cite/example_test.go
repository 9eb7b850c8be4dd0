package cite_test

import (
	"errors"
	"fmt"

	"example.org/lakelarder/units/cite"
)

func ExampleCitation() {
	c := cite.Citation{Source: cite.USDAGuide5Rev1994, Where: "Fish, table 1", Basis: cite.Read}
	fmt.Println(c.Check(), c.Unverified())
	// Output: <nil> false
}

func ExampleCitation_String() {
	fmt.Println(cite.Citation{Source: cite.USDAGuide5Rev1994, Where: "Fish, table 1", Basis: cite.Read})
	fmt.Println(cite.Citation{Source: cite.AFDOModelCode1991, Where: "cooling", Basis: cite.Recalled})
	fmt.Println(cite.Citation{Where: "height of a lid", Basis: cite.Practice})
	fmt.Println(cite.Citation{Source: cite.IAPWSR797, Where: "region 4", Basis: cite.Computed})
	fmt.Println(cite.Citation{Source: cite.UnofficialConsumerCharts, Where: "8,001-10,000 ft", Basis: cite.Read})
	// Output:
	// USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 1994), Fish, table 1 (read)
	// AFDO, model code for smoked fish (1991), cooling (recalled: check the document before relying on it)
	// height of a lid (common practice of the trade, no published source)
	// IAPWS, R7-97, Industrial Formulation 1997 (IF97) for the properties of water and steam (2012), region 4 (computed)
	// unofficial, consumer altitude charts (a jar leaflet and household pages, makers not named), 8,001-10,000 ft (read in an unofficial source)
}

func ExampleCitation_Unverified() {
	for _, b := range []cite.Basis{cite.Read, cite.Recalled, cite.Practice, cite.Computed} {
		fmt.Println(b, cite.Citation{Source: cite.FDAHazardsGuide4, Where: "table A-3", Basis: b}.Unverified())
	}
	// Output:
	// read false
	// recalled true
	// practice true
	// computed false
}

func ExampleCitation_Check() {
	var incomplete cite.IncompleteError
	err := cite.Citation{Source: cite.AFDOModelCode1991, Where: "cooling", Basis: cite.Read}.Check()
	fmt.Println(errors.As(err, &incomplete), incomplete.Reason)
	fmt.Println(cite.Citation{Where: "cooling", Basis: cite.Recalled}.Check())
	// Output:
	// true nothing of this document was read
	// citation "cooling (recalled: check the document before relying on it)" is incomplete: a recalled figure needs a source
}

func ExampleCitation_IsZero() {
	var c cite.Citation
	fmt.Println(c.IsZero(), c)
	// Output: true no citation
}

func ExampleIncompleteError_Error() {
	fmt.Println(cite.Citation{Source: cite.PNW450, Basis: cite.Read}.Check())
	// Output: citation "Pacific Northwest Extension, Canning Smoked Fish at Home, PNW 450 (read)" is incomplete: a read figure needs a place
}

func ExampleBasis() {
	var b cite.Basis
	err := b.UnmarshalText([]byte("recalled"))
	text, _ := b.MarshalText()
	fmt.Println(b, string(text), err)
	fmt.Println(b.UnmarshalText([]byte("certain")) != nil, b.String())
	// Output:
	// recalled recalled <nil>
	// true recalled
}

func ExampleParseBasis() {
	b, err := cite.ParseBasis("computed")
	fmt.Println(b == cite.Computed, err)
	// Output: true <nil>
}

func ExampleSource() {
	s := cite.MichiganRegulation569
	text, err := s.MarshalText()
	fmt.Println(string(text), err)
	var back cite.Source
	fmt.Println(back.UnmarshalText(text), back == s)
	fmt.Println(back.Key())
	fmt.Println(back.String())
	// Output:
	// MichiganRegulation569 <nil>
	// <nil> true
	// MichiganRegulation569
	// State of Michigan, Michigan Administrative Code, Regulation 569, Smoked Fish (R 285.569)
}

func ExampleSource_Document() {
	d := cite.BirginGentil2009.Document()
	fmt.Println(d.Title)
	fmt.Println(d.Kind, d.Year, d.HowRead)
	// Output:
	// New and improved results for packing identical unitary radius circles
	// study 2009 text copy of table 1
}

func ExampleParseSource() {
	s, err := cite.ParseSource("PNW450")
	fmt.Println(s == cite.PNW450, err)
	_, err = cite.ParseSource("pnw 450")
	fmt.Println(err)
	// Output:
	// true <nil>
	// unknown source "pnw 450"
}

func ExampleSources() {
	unread := map[cite.Kind]bool{}
	for _, s := range cite.Sources() {
		if s.Document().HowRead == cite.FromMemory {
			unread[s.Document().Kind] = true
		}
	}
	fmt.Println(cite.Sources()[0].Key(), unread[cite.KindSoftware], unread[cite.KindStudy])
	// Output: NISTSP811 false true
}

func ExampleDocument_String() {
	fmt.Println(cite.Poysky1997.Document())
	// Output: Poysky et al., Listeria on hot-smoked salmon steaks (Journal of Food Protection 60:649-654, 1997)
}

func ExampleCaution() {
	fmt.Println(cite.Caution{
		Text:     "have the dial gauge tested every year",
		Citation: cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "Pressure canners, p. 1-20", Basis: cite.Read},
	})
	// Output: have the dial gauge tested every year (USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 2015), Pressure canners, p. 1-20 (read))
}
