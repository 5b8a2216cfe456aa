// What drawing costs without everything else: vega, the charts of one record, one file.
// usage: node floor.mjs DRAWINGS.json OUT
import { readFileSync, writeFileSync } from "node:fs";
import * as vega from "vega";

const [, , drawingsFile, out] = process.argv;
const { specifications, drawings } = JSON.parse(readFileSync(drawingsFile, "utf8"));
const runtimes = specifications.map((specification) => vega.parse(specification));
const pictures = [];
for (const { specification, size, signals, data } of drawings) {
  const view = new vega.View(runtimes[specification], { renderer: "none" });
  view.width(size.width).height(size.height);
  for (const [name, value] of Object.entries(signals)) view.signal(name, value);
  for (const [name, rows] of Object.entries(data)) view.data(name, rows);
  pictures.push(await view.toSVG());
  view.finalize();
}
writeFileSync(out, pictures.join("\n"));
