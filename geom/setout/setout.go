package setout

import (
	"roomwright/geom/ceiling"
	"roomwright/geom/check"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// SetOut computes everything that is to be built in the room. A survey that
// does not hold together ends it there, since every place would be wrong; after
// that all builders and checks run, so that all their findings come at once.
func SetOut(r *room.Room) Result {
	res := Result{Room: r}
	plan, found := survey.Solve(r)
	res.Plan = plan
	if finding.Errors(found) > 0 {
		res.Findings = finding.Sort(found)
		return res
	}
	add := func(more []finding.Finding) { found = append(found, more...) }

	for i := range r.Walls {
		wall, more := framing.Build(r, i, plan)
		res.Walls = append(res.Walls, wall)
		add(more)
	}
	if r.Ceiling != nil {
		built, more := ceiling.Build(r, plan)
		res.Ceiling = built
		add(more)
	}
	rows, more := lining.Build(r, plan, offers(r, plan, res.Walls, res.Ceiling))
	res.Boards = rows
	add(more)
	add(check.Check(r, res.Walls, res.Boards, res.Ceiling))

	for i := range res.Walls {
		for j := range res.Walls[i].Members {
			res.Pieces = append(res.Pieces, res.Walls[i].Members[j].Piece)
		}
	}
	if res.Ceiling != nil {
		res.Pieces = append(res.Pieces, res.Ceiling.Pieces...)
	}
	for i := range res.Boards {
		for j := range res.Boards[i].Sheets {
			res.Pieces = append(res.Pieces, res.Boards[i].Sheets[j].Piece)
		}
	}
	res.Findings = finding.Sort(found)
	return res
}
