package main

import (
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
)

// work reads a room file and sets the room out. The result holds all findings,
// those of the reading included; when one is an error nothing more is done.
func work(in input) setout.Result {
	room, found := roomfile.Read(in.text)
	if room == nil || finding.Errors(found) > 0 {
		return setout.Result{Room: room, Findings: found}
	}
	res := setout.SetOut(room)
	res.Findings = finding.Sort(append(found, res.Findings...))
	return res
}
