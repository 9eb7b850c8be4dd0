package cite

// documents is the bibliography, by Source; the first is that of the zero Source. A document that holds no figure used in
// this module has no place in it. Titles not seen in print are described, in lower case.
var documents = bibliography(
	physicsDocuments[:], canningDocuments[:], brineDocuments[:], smokeDocuments[:], yieldDocuments[:], coldchainDocuments[:], heatDocuments[:],
)

// bibliography joins the parts, in order.
func bibliography(parts ...[]Document) []Document {
	all := []Document{{}}
	for _, part := range parts {
		all = append(all, part...)
	}
	return all
}
