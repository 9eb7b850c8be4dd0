// Package browsertest opens the page in a real browser and holds it against the native answers. It is a module of its own,
// so that what drives the browser is in no importer's module graph.
package browsertest
