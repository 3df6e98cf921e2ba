// Package drawing is a drawing as data: a closed list of elements in true
// size, each with its layer and pen. It knows no trade and no file format.
//
// In and out: views make Drawings; sheets place them on paper; DXF takes them
// as they are. Nothing here is a function or a current state; elements keep
// the order in which they are to be drawn.
//
// Units and axes: points are real lengths, x right, y up, in the axes that the
// view states. Pens, cap heights and dash patterns are sizes on paper; Scale
// says what one paper length is in the drawing. A drawing at scale 1:1 is
// paper itself.
//
// Errors: none; empty and zero elements have empty bounds.
//
// Source: pen series and layer names as in the US National CAD Standard
// (layer groups as published; own minor groups where none was found, in the
// allowed form).
package drawing
