// Package coldchain follows fish from the water to the cold store: how long it was how warm, held against the limits
// that have been published for that. Start with Audit.
//
// Audit counts the hours that a temperature record spent in each band of the FDA's table A-2, of its short rules for
// ready-to-eat fish and of the kitchen's two-hour rule, and says of each what was used, what is left and when it was
// passed. Where sources disagree the stricter is the default and the other is named; where the record has a gap, the
// answer is that one cannot tell. Watch is the same for a live probe, with the time each rule has left. Limits and
// FindLimit show the limits themselves. CheckLanding looks at what came before the ice, and HistamineFigures at what is
// published of histamine in salmon and trout.
//
// Nothing impossible is believed: what a broken probe shows is a gap, and a core that does what no fish does, that warms in
// nobody knows what, or that nobody saw for hours is CannotTell. Terms say what the fish is for and where it lay, and so
// which limits govern: those that do not are shown with their shares and say why. All that is not stated is the strictest.
//
// It is the first page of a chapter: ice counts the ice, freezing the time until fish is frozen through, parasites
// holds fish eaten raw against the rules of cold, keeping says how long it keeps, spoilage counts days on ice, growth
// has the models behind the limits.
//
// The published table says nothing of 41.5 °F, between a band that ends at 41 °F and one that begins at 42 °F. Here the
// stricter band begins where the milder one ends: 41 °F is the last temperature of the milder, and 41.5 °F has the
// stricter limit. Follow local codes and the advice of the extension service.
package coldchain
