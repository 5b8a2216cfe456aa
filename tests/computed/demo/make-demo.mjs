/**
 * Writes the tables of data-demo, each as another spreadsheet would save it, and those of data-demo/history, all in one
 * way. Plain Node, seeded: the same bytes each run.
 *
 *   node tests/computed/demo/make-demo.mjs [folder, by default data-demo]
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { calibrations } from "./demo-calibrations.mjs";
import { candidates } from "./demo-candidates.mjs";
import { controllerLimits } from "./demo-controller-limits.mjs";
import { historyWorkbooks } from "./demo-history.mjs";
import { instruments, outputs } from "./demo-instruments.mjs";
import { loopChecks } from "./demo-loop-checks.mjs";
import { standards } from "./demo-standards.mjs";
import { trips } from "./demo-trips.mjs";
import { faultyLoops, takeFaultyReadings } from "./faulty-loops.mjs";
import { plantedLoops } from "./planted-loops.mjs";
import { takeReadings } from "./take-readings.mjs";

const folder = process.argv[2] ?? fileURLToPath(new URL("../../../data-demo", import.meta.url));
const numericColumns = ["point", "reference", "signal", "counts", "value", "signal_at_card"];

save("instruments", `\ufeff${delimited(instruments, ",", "\n")}`, "utf8");
save("outputs", delimited(outputs, "\t", "\n"), "utf8");
save("standards", delimited(standards, ",", "\n"), "utf8");
save("calibrations", delimited(calibrations, ";", "\r\n"), "latin1");
const readings = [
  ...plantedLoops.flatMap(takeReadings).map((reading) => ({ ...reading, signal_at_card: "" })),
  ...faultyLoops.flatMap(takeFaultyReadings),
];
save("readings", delimited(readings.map(withDecimalComma), ";", "\r\n"), "utf8");
save("trips", delimited(trips, "\t", "\r\n"), "utf8");
save("loop_checks", delimited(loopChecks, "\t", "\n"), "utf8");
save("controller_limits", delimited(controllerLimits, ";", "\n"), "utf8");
save("candidates", delimited(candidates, ",", "\r\n"), "utf8");
for (const { folder: below, tables } of historyWorkbooks) {
  for (const [table, rows] of Object.entries(tables)) save(`${below}/${table}`, delimited(rows, ",", "\n"), "utf8");
}

function save(table, text, encoding) {
  const bytes = Buffer.from(text, encoding);
  if (bytes.toString(encoding) !== text) throw new Error(`${table}: a character has no place in ${encoding}`);
  const path = join(folder, `${table}.csv`);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes);
}

function delimited(rows, delimiter, lineEnd) {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const lines = rows.map((row) => columns.map((column) => quoted(row[column] ?? "", delimiter)).join(delimiter));
  return [columns.join(delimiter), ...lines, ""].join(lineEnd);
}

function quoted(text, delimiter) {
  return text.includes(delimiter) || text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
}

function withDecimalComma(row) {
  return Object.fromEntries(
    Object.entries(row).map(([column, text]) => [
      column,
      numericColumns.includes(column) ? text.replace(".", ",") : text,
    ]),
  );
}
