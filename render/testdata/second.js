// Reads a DXF file with a second independent reader, and prints what it found
// as JSON: entities by type, layers, and what dimensions measure.
const fs = require("fs");
const DxfParser = require("dxf-parser");
const Parser = DxfParser.default || DxfParser;
const doc = new Parser().parseSync(fs.readFileSync(process.argv[2], "utf8"));
const counts = {};
for (const e of doc.entities) {
  counts[e.type] = (counts[e.type] || 0) + 1;
}
console.log(JSON.stringify({
  units: doc.header["$INSUNITS"],
  counts: counts,
  layers: Object.keys(doc.tables.layer.layers).sort(),
  blocks: Object.keys(doc.blocks).length,
  dimensions: doc.entities.filter((e) => e.type === "DIMENSION").map((e) => ({
    measured: e.actualMeasurement,
    figure: e.text,
    pictured: doc.blocks[e.block].entities.filter((x) => x.type === "TEXT").map((x) => x.text),
  })),
}));
