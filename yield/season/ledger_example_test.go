package season_test

import (
	"encoding/json"
	"fmt"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

// spring is an invented ledger: five fish, of which three were canned and two frozen. Two jars did not seal.
func spring() season.Ledger {
	start, _ := season.ParseDay("2026-04-06")
	entries, _ := season.ParseEntries([]byte(`day,event,batch,from,taken,count,product,round,audit,after
2026-04-06,kept,C1,,,5,,15 kg,,
2026-04-07,canned,P1,C1,3,18,pints,,met,
2026-04-07,frozen,F1,C1,2,8,bags,,,
2026-04-08,sealed,P1,,,16,,,,
2026-04-08,failed,P1,,,2,,,,
2026-04-08,reprocessed,P2,P1,2,2,pints,,met,20 h
2026-04-09,sealed,P2,,,2,,,,
2026-04-26,eaten,P1,,,4,,,,
2026-04-26,eaten,F1,,,2,,,,
`))
	bags := inJars
	bags.Time = 60 * season.Week / 7
	return season.Ledger{
		Rule:     season.Rule{Shape: season.Everything, Anglers: 1, Daily: 5, Possession: 10},
		Unsealed: season.UntilThrownOut, Start: start, Fresh: onIce, Entries: entries,
		Products: []season.Product{{Name: "pints", Keeps: inJars, Quality: true}, {Name: "bags", Keeps: bags, Quality: true}},
	}
}

// What is held, and what to eat first?
func ExampleAudit() {
	l := spring()
	on, _ := season.ParseDay("2026-05-03")
	s, err := season.Audit(l, on)
	fmt.Println(s.Verdict, "held:", s.Held.All, "of", s.Limits.All, "fish", err)
	for _, f := range s.EatFirst {
		fmt.Println(f.Count, f.Product, f.Batch, "until", f.Until)
	}
	// Output:
	// met held: 4 of 10 fish <nil>
	// 6 bags F1 until 2026-06-05
	// 12 pints P1 until 2027-04-06
	// 2 pints P2 until 2027-04-07
}

// More is entered as eaten than there was.
func ExampleState() {
	l := spring()
	on, _ := season.ParseDay("2026-05-03")
	l.Entries = append(l.Entries, season.Entry{Day: on, Event: season.Eaten, Batch: "F1", Count: 7})
	s, _ := season.Audit(l, on)
	fmt.Println(s.Verdict)
	fmt.Println(s.Findings[0])
	fmt.Println(s.Aside[0].Batch, s.Aside[0].Count, s.Aside[0].Why)
	// Output:
	// cannot tell
	// eaten of F1 on 2026-05-03: 7 stated, at most 6 wanted, over by 1
	// F1 6 not proven
}

// What is left of the year, planned again from what is there.
func ExampleState_YearFrom() {
	on, _ := season.ParseDay("2026-05-03") // the last day of week 3
	s, _ := season.Audit(spring(), on)
	y := twoDays()
	y.Weekly = 2 * units.Kilogram
	rest, err := s.YearFrom(y)
	fmt.Println(rest.Weeks, "weeks,", len(rest.Trips), "trips,", rest.Start.Used, "fish kept so far", err)
	for _, h := range rest.Start.Holdings {
		fmt.Println(h.Fish, "fish until week", h.Last, units.Text(h.Each, units.Kilogram, 2), "of each")
	}
	plan, _ := season.Keep(rest)
	fmt.Println(plan)
	_, err = season.State{Rule: y.Rule, Start: s.Start, Day: on + 1}.YearFrom(y)
	fmt.Println(err)
	// Output:
	// 16 weeks, 2 trips, 5 fish kept so far <nil>
	// 2 fish until week 3 2.25 kg of each
	// 2 fish until week 47 3.50 kg of each
	// feasible: 7 fish kept, at most 8 held
	// day of the state, the last of a week of the year, 2026-05-04 is out of range: expected 2026-05-03 to 2026-05-10
}

// Where have the plan and the year parted?
func ExampleState_Parted() {
	plan, _ := season.Keep(twoDays())
	on, _ := season.ParseDay("2026-04-19") // two weeks are over
	s, _ := season.Audit(spring(), on)
	for _, p := range s.Parted(plan) {
		fmt.Println("week", p.Week, "planned", p.Planned.Kept, "kept and", p.Planned.Eaten, "eaten, were", p.Past.Kept, "and", p.Past.Eaten)
	}
	// Output:
	// week 0 planned 5 kept and 3 kg eaten, were 5 and 0 g
	// week 1 planned 5 kept and 3 kg eaten, were 0 and 0 g
}

// How many jars are still to be made for the 49 weeks that are left?
func ExampleState_ToMake() {
	on, _ := season.ParseDay("2026-04-26")
	s, _ := season.Audit(spring(), on)
	h, want := family()
	h.Weeks -= 3
	l, _ := season.Size(h, want)
	all, err := s.ToMake(l)
	fmt.Println(all[0].Wanted, "wanted,", all[0].Have, "there,", all[0].More, "to make in", all[0].Loads, "loads", err)
	// Output: 71 wanted, 14 there, 57 to make in 7 loads <nil>
}

func ExampleParseEntries() {
	entries, err := season.ParseEntries([]byte("day,event,batch,count,round\n2026-07-14,kept,C1,3,8.5 kg\n2026-07-15,eaten,C1,1,\n"))
	fmt.Println(len(entries), entries[0].Round, entries[1].Event, err)
	_, err = season.ParseEntries([]byte("day,event,batch,count\n14.7.2026,eaten,C1,1\n"))
	fmt.Println(err)
	// Output:
	// 2 8.5 kg eaten <nil>
	// day (line 2, column 1): cannot read "14.7.2026" as a date: expected a day of the calendar, year first, such as 2026-07-14
}

func ExampleParseDay() {
	d, err := season.ParseDay("2026-07-14")
	fmt.Println(d, d+30, err)
	_, err = season.ParseDay("2026-02-29")
	fmt.Println(err)
	// Output:
	// 2026-07-14 2026-08-13 <nil>
	// cannot read "2026-02-29" as a date: expected a day of the calendar, year first, such as 2026-07-14
}

func ExampleDay() {
	var e season.Entry
	err := json.Unmarshal([]byte(`{"day": "2026-07-14", "event": "eaten", "batch": "P1", "count": 2}`), &e)
	fmt.Println(e.Day, e.Event, e.Count, e.Batch, err)
	// Output: 2026-07-14 eaten 2 P1 <nil>
}

func ExampleEntry() {
	var e season.Entry
	err := json.Unmarshal([]byte(`{"day": "2026-07-14", "event": "eaten", "batch": "P1"}`), &e)
	fmt.Println(err)
	// Output: count (line 1, column 1): it is required and missing
}

func ExampleLedger() {
	text, _ := json.Marshal(spring())
	var back season.Ledger
	err := json.Unmarshal(text, &back)
	fmt.Println(len(back.Entries), back.Unsealed, err)
	// Output: 9 until thrown out <nil>
}

func ExampleStart() {
	y := twoDays()
	y.Start = season.Start{Used: 5, Holdings: []season.Holding{{Caught: -3, Last: 40, Fish: 4, Preserved: true, Each: 2500 * units.Gram}}}
	plan, err := season.Keep(y)
	fmt.Println(plan.Kept, plan.Weeks[0].Held.All, "held in week 0", err)
	text, _ := json.Marshal(y.Start)
	fmt.Println(string(text))
	// Output:
	// [5 2 1 1 3 3] 9 held in week 0 <nil>
	// {"holdings":[{"caught":-3,"last":40,"fish":4,"preserved":true,"each":"2.5 kg"}],"used":5}
}

func ExampleEvent() {
	text, err := season.GivenAway.MarshalText()
	var back season.Event
	fmt.Println(string(text), err)
	err = back.UnmarshalText(text)
	fmt.Println(back, err)
	// Output:
	// given away <nil>
	// given away <nil>
}

func ExampleCounting() {
	text, err := season.UntilThrownOut.MarshalText()
	var back season.Counting
	fmt.Println(string(text), err)
	err = back.UnmarshalText(text)
	fmt.Println(back, err)
	// Output:
	// until thrown out <nil>
	// until thrown out <nil>
}

func ExampleWhy() {
	text, err := season.NotChecked.MarshalText()
	var back season.Why
	fmt.Println(string(text), err)
	err = back.UnmarshalText(text)
	fmt.Println(back, err)
	// Output:
	// seal not checked <nil>
	// seal not checked <nil>
}

func ExampleParseEvent() {
	e, err := season.ParseEvent("given away")
	fmt.Println(e, err)
	// Output: given away <nil>
}

func ExampleParseCounting() {
	c, err := season.ParseCounting("until failed")
	fmt.Println(c, err)
	// Output: until failed <nil>
}

func ExampleParseWhy() {
	w, err := season.ParseWhy("did not seal")
	fmt.Println(w, err)
	// Output: did not seal <nil>
}
