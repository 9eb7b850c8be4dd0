// Package parasites holds fish that is to be eaten raw or barely cooked against the published rules of cold and heat
// against parasites. Start with Check, for a plan by the freezer's thermometer, or Audit, for a record of the core.
//
// Rules are all that is published: the strictest decide, milder ones are named, and figures too weak for raw fish are
// shown as refused. Carriers says which fish are known to carry what. Freezing kills parasites only: no bacteria, no
// toxin.
package parasites
