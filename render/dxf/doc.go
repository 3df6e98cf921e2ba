// Package dxf writes drawings as one DXF file (AC1015) in true size.
//
// In and out: drawings and where each goes in model space in; bytes out. Every
// element becomes a basic entity on its named layer; dimensions are DIMENSION
// entities whose pictures are their own blocks, so that readers which know
// only lines and text still show everything.
//
// Units and axes: the file's unit is the inch or the millimetre
// ($INSUNITS); x right, y up. Text heights, line types and ticks are sized for
// the scale of their view.
//
// Errors: a text or number that no reader could read back.
//
// Limits: white areas, which hide what is behind them on paper, are left out;
// characters outside ASCII are written as \U+XXXX where no sign of the same
// meaning exists.
//
// Source: DXF reference (HEADER, TABLES, BLOCKS, ENTITIES, OBJECTS group
// codes, editions 2015 to 2024). Built on the interfaces, tables and basic
// entities of github.com/yofu/dxf; header, blocks, dimension styles, objects,
// TEXT, DIMENSION and HATCH are our own.
package dxf
