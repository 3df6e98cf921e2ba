package roomfile

// Key is one key of the room file, as it is explained.
type Key struct {
	Name  string // `<wall>` stands for the name of a wall
	Form  string // what may follow it
	Means string
	Need  string // "needed", "asked", "default", or "" for a key that may be left out
	Lone  bool   // a lone value in place of the map stands for this key
	Read  bool   // false for a key of the language that this edition does not read
}

// Section is a map of the room file and its keys.
type Section struct {
	Name string // "a wall"
	Word string // "wall", by which it is asked for
	Keys []Key
}

// Sections lists every map of the room file with its keys, from the tables
// that the reader itself works with: the room file first, then its parts in
// the order of the file.
func Sections() []Section {
	door, window := existingSection("door"), existingSection("window")
	return []Section{
		shown(roomSection()),
		shown(surveySection()),
		shown(wallSection()),
		shown(liningSection()),
		shown(serviceSection()),
		shown(door),
		shown(window),
		shown(frameSection()),
		shown(bearingSection()),
		shown(studsSection()),
		shown(aboveSection()),
		shown(joistsSection()),
		shown(obstacleSection()),
		shown(openingSection()),
		shown(headerSection()),
		shown(jacksSection()),
		shown(linerSection()),
		shown(casingSection()),
		shown(glazingSection()),
		shown(boardSection()),
		shown(ceilingSection()),
		shown(gridSection()),
		shown(mainsSection()),
		shown(hangersSection()),
		shown(edgeSection()),
		shown(panelSection()),
		shown(lightSection()),
		shown(drawingSection()),
	}
}

// shown turns a section of the reader into one to show.
func shown[T any](s section[T]) Section {
	out := Section{Name: s.name, Word: s.word}
	for _, k := range s.keys {
		need := map[need]string{needed: "needed", asked: "asked", defaulted: "default"}[k.need]
		out.Keys = append(out.Keys, Key{Name: k.name, Form: k.form, Means: k.means, Need: need, Lone: k.star, Read: k.read != nil})
	}
	return out
}

// isKey reports whether some section has a key of the name.
func isKey(name string) bool {
	name = ownSpelling(name)
	for _, s := range Sections() {
		for _, k := range s.Keys {
			if k.Name == name {
				return true
			}
		}
	}
	return false
}
