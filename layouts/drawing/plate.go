package drawing

// Plate is one view together with what belongs beside it on a sheet.
type Plate struct {
	Drawing
	Subtitle string   // one line more about it, empty when none
	Notes    []string // one fact each, what figures are measured to first
	Legend   []Sample // only what is in the drawing
	Tables   []Table
	Unplaced int // marks for which there was no room at this scale
}

// Sample is one line of a legend: a swatch in paper lengths, 13 mm wide and
// centred on y = 0, drawn by the code that draws the thing itself.
type Sample struct {
	Words  string
	Swatch []Element
}

// Table is a list of rows under a heading.
type Table struct {
	Heading string
	Columns []Column
	Rows    [][]string
}

// Column is one column of a table.
type Column struct {
	Heading string
	Right   bool // flush right, for figures
	Bold    bool
}
