/**
 * Draws each cause 200 times, asks what the readings are consistent with, and writes the table of confusions.
 * Seeded: the same table on every machine.
 *
 *   node tests/computed/faults/confusion.mjs [draws a cause, by default 200] [file, by default confusion.md beside this]
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const drawsEach = Number(process.argv[2] ?? 200);
const target = process.argv[3] ?? fileURLToPath(new URL("./confusion.md", import.meta.url));

const folder = mkdtempSync(join(tmpdir(), "spanwright-faults-"));
const bundle = join(folder, "faults.cjs");
await build({
  stdin: {
    contents: 'export { classifyDraw, drawnCauses } from "./classify-draw.ts";',
    resolveDir: fileURLToPath(new URL(".", import.meta.url)),
    loader: "ts",
  },
  bundle: true,
  format: "cjs",
  platform: "node",
  outfile: bundle,
});
const { classifyDraw, drawnCauses } = await import(pathToFileURL(bundle).href);
rmSync(folder, { recursive: true });

const reasons = [
  "units-mixed-up: a value that is 1000 times too small fills a few steps of its display only.",
  "shunt-or-gain-off: on a signal from zero, its true zero is its low end, so that a gain is a wrong constant at the high end (high-constant-wrong, full-scale-count-wrong) as well.",
  "current-limited: a current that stops and a distance that stops (obstruction-in-beam, on a reverse-acting loop blind-zone) leave the same readings. A simulated 20 mA or supply and burden tell, and with them every draw is named.",
  "voltage-output-overloaded: on a signal from zero, an overloaded output and an end taught wrong have the same line; measure without the card.",
  "target-lost-held: a target that is lost nearly always looks like an obstruction; one that is lost once only is left as a note.",
  "air-temperature, axis-tilted: the face of the sensor, an end of the range and the true zero of the signal may lie within the uncertainty of one another.",
  "weak-target: the scatter stays under a quarter of the tolerance in the draws that are named target-lost-fault alone.",
  "switch-point-off: where both shifted together, the sensor's own shift (datum-shifted) is found beside it, as it should be.",
  "other-channel: the values of another loop may follow this one's by chance.",
  "typing-error: the last digit is lost when the mark moves.",
  "warm-up-or-drift: a drift that carries the signal below 3.6 mA looks like a fault signal there.",
];

const lines = drawnCauses.map((cause) => {
  const draws = Array.from({ length: drawsEach }, (_, number) => classifyDraw(cause, number));
  const count = (test) => draws.filter(test).length;
  return [
    cause,
    percent(count(({ outcome }) => outcome === "found")),
    percent(count(({ isAlone }) => isAlone)),
    percent(count(({ outcome }) => outcome === "rival")),
    percent(count(({ outcome }) => outcome === "missed")),
    others(draws, cause),
  ];
});
const healthy = Array.from({ length: drawsEach }, (_, number) => classifyDraw("healthy", number));
const alarms = healthy.filter(({ ids }) => ids.length > 0);

writeFileSync(
  target,
  [
    `# What ${drawsEach} draws of each cause are taken for`,
    "",
    "Made by `node tests/computed/faults/confusion.mjs`; seeded. Found: a finding names the cause. Alone: and no finding names",
    "another. Rival: another finding lists it among what is not excluded. Last column: causes that other findings name, and in",
    "brackets the variant of the draws in which the cause was not found.",
    "",
    ...table(["cause", "found %", "alone %", "rival %", "missed %", "other causes found"], lines),
    "",
    `Healthy loops with 0.3 % noise: ${alarms.length} of ${drawsEach} draws with a finding${alarms.length > 0 ? ` (${others(alarms, "healthy")})` : ""}.`,
    "",
    "## Why some cannot be told apart",
    "",
    ...reasons.map((reason) => `- ${reason}`),
    "",
  ].join("\n"),
);

function percent(count) {
  return String(Math.round((1000 * count) / drawsEach) / 10);
}

function others(draws, cause) {
  const counts = new Map();
  for (const { ids: found } of draws) {
    for (const other of new Set(found)) if (other !== cause) counts.set(other, (counts.get(other) ?? 0) + 1);
    if (found.length === 0) counts.set("none", (counts.get("none") ?? 0) + 1);
  }
  const named = [...counts]
    .sort((left, right) => right[1] - left[1])
    .slice(0, 4)
    .map(([other, count]) => `${other}: ${percent(count)}`);
  const missed = [...new Set(draws.filter(({ outcome }) => outcome !== "found").map(({ variant }) => variant))].filter(
    Boolean,
  );
  return named.join(", ") + (cause !== "healthy" && missed.length > 0 ? ` (${missed.join("; ")})` : "");
}

/** A table whose columns are as wide as their widest cell, as a formatter would leave it. */
function table(titles, cells) {
  const all = [titles, ...cells].map((row) => row.map(String));
  const widths = titles.map((_, column) => Math.max(3, ...all.map((row) => [...row[column]].length)));
  const line = (row) =>
    `| ${row.map((cell, column) => cell + " ".repeat(widths[column] - [...cell].length)).join(" | ")} |`;
  return [line(all[0]), line(widths.map((width) => "-".repeat(width))), ...all.slice(1).map(line)];
}
