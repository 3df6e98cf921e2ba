package rules

// NailedJoint is a joint of a stud wall that is nailed.
type NailedJoint int

// The joints round an opening, in the order in which they are nailed.
const (
	NailHeaderPlies NailedJoint = iota // ply to ply, with a filler between
	NailPlateToStud
	NailStudToStud
	NailHeaderEnd
	NailSillEnd
	NailSillToCripple
	NailHeaderToCripple
	NailFlatHeader
	NailPacking
	NailPlateToFloor
	NailDoubleTop
)

// Nailing is one joint: its nails, and where they are from. The nails of the
// table are: 16d common 3-1/2 x 0.162 in, 10d common 3 x 0.148, 8d common
// 2-1/2 x 0.131 (IBC Table 2304.10.1, reprint by an engineering office).
type Nailing struct {
	Where, Nails, Source string
}

// Nailed returns how j is nailed. Local codes decide.
func Nailed(j NailedJoint) Nailing {
	switch j {
	case NailHeaderPlies:
		return Nailing{
			"header ply to ply, through the filler",
			"16d common at 16 in on center along each edge, face nailed",
			"IRC Table R602.3(1), public transcription of key rows",
		}
	case NailPlateToStud:
		return Nailing{
			"plate to new stud, king, jack or cripple",
			"2-16d common end nailed, or 4-8d common toe nailed",
			"IRC Table R602.3(1), public transcription of key rows",
		}
	case NailStudToStud:
		return Nailing{
			"king to jack",
			"16d common at 24 in on center, face nailed; not at braced panels",
			"IRC Table R602.3(1) on a city permit drawing (columns separated in the copy read)",
		}
	case NailHeaderEnd:
		return Nailing{
			"king to header end",
			"3-16d common end nailed",
			"IRC R602.7.5 for the joint; the number of nails from memory",
		}
	case NailSillEnd:
		return Nailing{
			"rough sill end to king or jack",
			"2-16d common end nailed",
			Habit,
		}
	case NailSillToCripple:
		return Nailing{
			"rough sill to the cripple or stub under it",
			"2-16d common down through the sill",
			Habit,
		}
	case NailHeaderToCripple:
		return Nailing{
			"cripple or stub to the header under it",
			"4-8d common toe nailed",
			Habit,
		}
	case NailFlatHeader:
		return Nailing{
			"flat header to the jacks under it",
			"2-16d common down into each",
			Habit,
		}
	case NailPacking:
		return Nailing{
			"packing between a king and the stud beside it",
			"16d common at 24 in on center, face nailed, as stud to stud",
			"IRC Table R602.3(1) on a city permit drawing (columns separated in the copy read); for packing common practice, no source",
		}
	}
	return nailedPlate(j)
}

// nailedPlate returns how the plates of a wall to be built are nailed.
func nailedPlate(j NailedJoint) Nailing {
	switch j {
	case NailPlateToFloor:
		return Nailing{
			"bottom plate to the joist or blocking under it",
			"16d common at 16 in on center, face nailed",
			"IRC Table R602.3(1), public transcription of key rows",
		}
	case NailDoubleTop:
		return Nailing{
			"upper top plate to the lower one",
			"16d common at 16 in on center, face nailed; laps 24 in or more with 8-16d at each side",
			"IRC Table R602.3(1), public transcription of key rows",
		}
	}
	return Nailing{}
}

// NailPointSource is why nails as long as a header is thick are driven at an angle.
const NailPointSource = "derived: a 16d common nail is 3-1/2 in long (IBC Table 2304.10.1, reprint)"
