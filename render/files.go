package render

import (
	"fmt"
	"path/filepath"
	"strings"
	"unicode"

	"roomwright/layouts"
	"roomwright/render/dxf"
	"roomwright/render/svg"
)

// File is one file of a set.
type File struct {
	Name  string
	Bytes []byte
}

// Files writes a set: one SVG file a sheet, then one DXF file. With plain, the
// accent colour of the sheets is black.
func Files(set layouts.Set, plain bool) ([]File, error) {
	var out []File
	wide := len(fmt.Sprint(len(set.Sheets)))
	for i, s := range set.Sheets {
		b, err := svg.Write(s, plain)
		if err != nil {
			return nil, fmt.Errorf("sheet %d, %s: %w", i+1, s.Title, err)
		}
		out = append(out, File{Name: fmt.Sprintf("%0*d-%s.svg", max(wide, 2), i+1, safe(s.ID, "sheet")), Bytes: b})
	}
	views := make([]dxf.View, len(set.Model))
	for i, p := range set.Model {
		views[i] = dxf.View{Drawing: p.Drawing, At: p.At}
	}
	b, err := dxf.Write(views, dxf.Options{Title: set.Title, Units: set.Units})
	if err != nil {
		return nil, err
	}
	base := filepath.Base(filepath.ToSlash(set.File))
	return append(out, File{Name: safe(strings.TrimSuffix(base, filepath.Ext(base)), "roomwright") + ".dxf", Bytes: b}), nil
}

// longest is how many characters of a user's name go into a file name.
const longest = 60

// safe returns a name as part of a file name on any system: lower case letters
// of a to z, digits and single hyphens; other is used when nothing is left.
// Names that some systems keep for devices get the other word in front.
func safe(name, other string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(name) {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			b.WriteRune(r)
			gap = false
			if b.Len() >= longest {
				break
			}
			continue
		}
		gap = gap || !unicode.IsMark(r)
	}
	s := b.String()
	if s == "" {
		return other
	}
	if device(s) {
		return other + "-" + s
	}
	return s
}

// device reports whether a name without extension is that of a device.
func device(s string) bool {
	switch s {
	case "con", "prn", "aux", "nul":
		return true
	}
	return len(s) == 4 && (strings.HasPrefix(s, "com") || strings.HasPrefix(s, "lpt")) && s[3] >= '0' && s[3] <= '9'
}
