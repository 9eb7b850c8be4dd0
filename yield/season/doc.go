// Package season plans a year's supply: how many jars and packages people eat, how many fish and canner loads that
// takes, what it costs, and whether the year can be held at all under the limits that the caller states.
//
// Size counts what a larder needs. Keep walks through the year week by week and keeps fish on each trip so that as
// much as possible is eaten, nothing passes its keeping time and no limit is passed in any week. When the year cannot
// be held it says so: infeasible, short so many weeks, the first of them, and the most that can be eaten instead.
// Calendar says which weeks the canner runs, Steady what could be eaten every week, Costs what a jar and a meal come
// to.
//
// Audit takes a Ledger of what happened, entry by entry, to the State of a day: what is held by the rule, what is
// left of each batch and until when it keeps, what to eat first, and what the entries contradict. State.YearFrom
// plans the rest of the year from there, Parted says where plan and year went apart, ToMake what is still to be made.
// A jar is food only when the audit of its load is a pass and its seal was checked.
//
// What is computed is a plan and no judgement: it says whether it is proven that nothing lets more be eaten, and how
// many fish the limits allow that it lets go.
//
// Daily and possession limits are arguments and never data: they change by water and by year, and what counts as
// possessed or preserved is for the local rules to say. Read them every season; every plan says so.
//
// A week is the smallest step of a plan, a day that of a ledger. Whether fish was cold enough within one is for
// package coldchain to say, and keeping times come from there or from the caller, each with its Citation. All
// planning is in round mass, whole fish as caught.
package season
