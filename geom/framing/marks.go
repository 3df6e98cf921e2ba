package framing

import (
	"cmp"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/piece"
)

// alike is what pieces with one mark share.
type alike struct {
	name    string
	profile piece.Profile
	length  geom.Length
	ends    string
}

// mark gives every member its mark. New pieces are the wall's name and a
// running number, in the order of the roles; equal ones share it. What is
// taken out is R and a number that runs through the room, left to right in
// each wall; before is how many there are in the walls before this one. What
// stays is the wall's name, a point, and the stud's number (t and b for the
// stubs at its top and bottom), or a letter and a number for what is no stud.
func (b *builder) mark(before int) {
	numbers := map[alike]int{}
	stay := map[string]int{}
	for i := range b.w.Members {
		m := &b.w.Members[i]
		switch m.State {
		case piece.New:
			a := alike{m.Name, m.Profile, m.Length, m.Ends}
			if numbers[a] == 0 {
				numbers[a] = len(numbers) + 1
			}
			m.Mark = piece.Mark(b.prefix() + itoa(numbers[a]))
		case piece.Existing:
			m.Mark = piece.Mark(b.w.Name + "." + b.staying(m, stay))
		}
	}
	for n, i := range b.goes() {
		b.w.Members[i].Mark = piece.Mark("R" + itoa(before+n+1))
	}
}

// staying is the mark of a piece that stays, without the wall's name.
func (b *builder) staying(m *Member, count map[string]int) string {
	if m.StudNo > 0 {
		switch m.Role {
		case CrippleBelow:
			return itoa(m.StudNo) + "b"
		case CrippleAbove:
			return itoa(m.StudNo) + "t"
		}
		return itoa(m.StudNo)
	}
	letter := "c"
	switch m.Role {
	case BottomPlate, TopPlate:
		letter = "p"
	case Sill:
		letter = "s"
	case DoorHeader:
		letter = "h"
	}
	count[letter]++
	return letter + itoa(count[letter])
}

// prefix is what the marks of new pieces begin with: the wall's name, with a
// hyphen where a number after it could be read as another mark. R stands for
// what is removed, F for boards, J, K, L, M and N for the wall angle, cross
// tees, lights, main tees and border panels, and P onwards for the rows of a
// ceiling.
func (b *builder) prefix() string {
	name := b.w.Name
	letters := strings.IndexFunc(name, func(r rune) bool {
		return (r < 'A' || r > 'Z') && (r < 'a' || r > 'z')
	}) < 0
	upper := strings.ToUpper(name)
	first := upper[:min(1, len(upper))]
	row := strings.Trim(upper, first) == "" && (first >= "P" || strings.Contains("FJKLMN", first))
	if !letters || name == "" || row {
		return name + "-"
	}
	return name
}

// goes returns the members that are taken out, left to right.
func (b *builder) goes() []int {
	var list []int
	for i := range b.w.Members {
		if b.w.Members[i].State == piece.Removed {
			list = append(list, i)
		}
	}
	slices.SortStableFunc(list, func(i, j int) int {
		m, n := &b.w.Members[i], &b.w.Members[j]
		return cmp.Or(cmp.Compare(m.Box.Min.X, n.Box.Min.X), cmp.Compare(m.Box.Min.Y, n.Box.Min.Y))
	})
	return list
}

// removed counts the members that are taken out.
func (b *builder) removed() int { return len(b.goes()) }
