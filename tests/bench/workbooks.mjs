// Workbooks to be timed: one calibration of the demo plant, and many copies of it.
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const calibration = "C-2026-015";
const tag = "LT-310";
const demo = new URL("../../data-demo/", import.meta.url);

/** The demo's tables with the rows of one calibration only; each file keeps its encoding, for only ASCII is looked at. */
export function oneCalibration(folder) {
  mkdirSync(folder, { recursive: true });
  for (const name of tables()) writeFileSync(join(folder, name), Buffer.from(rowsOf(name).join(""), "latin1"));
  return folder;
}

/** So many loops, each with the same readings under a tag and a number of its own. */
export function manyCalibrations(folder, count) {
  mkdirSync(folder, { recursive: true });
  for (const name of tables()) {
    const [header, ...rows] = rowsOf(name);
    const numbers = name === "standards.csv" ? [0] : Array.from({ length: count }, (_, number) => number);
    const copies = numbers.flatMap((number) =>
      rows.map((row) => row.replaceAll(tag, `${tag}-${number}`).replaceAll(calibration, `${calibration}-${number}`)),
    );
    const kept = name === "standards.csv" ? rows : copies;
    writeFileSync(join(folder, name), Buffer.from([header, ...kept].join(""), "latin1"));
  }
  return folder;
}

/** The whole demo plant, in a folder of its own. */
export function wholeDemo(folder) {
  cpSync(demo, folder, { recursive: true });
  return folder;
}

/** The readings of a workbook as one plain table with decimal points, for a program that knows nothing of workbooks. */
export function flatReadings(folder, path) {
  const [header, ...rows] = readFileSync(join(folder, "readings.csv"), "latin1").trim().split("\n");
  const names = header.replace(/^\W+/u, "").trim().split(";");
  const lines = rows.map((row) => {
    const cells = row.replaceAll(",", ".").trim().split(";");
    const cell = (name) => cells[names.indexOf(name)];
    return ["calibration", "phase", "cycle", "direction", "reference", "signal"].map(cell).join(",");
  });
  writeFileSync(path, ["calibration,phase,cycle,direction,reference_mm,signal_mA", ...lines, ""].join("\n"));
  return path;
}

function tables() {
  return readdirSync(demo).filter((name) => name.endsWith(".csv"));
}

function rowsOf(name) {
  const [header, ...rows] = readFileSync(new URL(name, demo))
    .toString("latin1")
    .split(/(?<=\n)/u);
  if (name === "standards.csv") return [header, ...rows];
  return [
    header,
    ...rows.filter(
      (row) => row.startsWith(`${tag},`) || row.startsWith(`${tag}\t`) || row.startsWith(`${calibration};`),
    ),
  ];
}
