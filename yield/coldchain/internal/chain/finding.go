package chain

import "example.org/lakelarder/units/verdict"

// SayOnce adds a finding, unless another rule or another page found the same.
func SayOnce(all []verdict.Finding, f verdict.Finding) []verdict.Finding {
	for _, said := range all {
		said.Rule, said.Citation = f.Rule, f.Citation
		if said == f {
			return all
		}
	}
	return append(all, f)
}
