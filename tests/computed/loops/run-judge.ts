import { writeFileSync } from "node:fs";
import { forecastsOf } from "./forecasts.ts";
import { type Judged, judge } from "./judge.ts";
import { judgedPage } from "./judged-page.ts";
import { scoreOf } from "./score.ts";

/** Judges the first so many seeds, prints the page and writes it; or tells all about one seed. */
const [option, value] = process.argv.slice(2);
const print = (text: string) => process.stdout.write(`${text}\n`);

if (option === "--seed") {
  const [one] = await judge([Number(value)]);
  if (one !== undefined) print(tellOne(one));
} else {
  const loops = option === "--loops" ? Number(value) : 2000;
  const judged = await judge(Array.from({ length: loops }, (_, seed) => seed));
  const score = scoreOf(judged, await forecastsOf(judged));
  const heading = { date: new Date().toISOString().slice(0, 10), first: 0, last: loops - 1 };
  const page = judgedPage(judged, score, heading);
  print(page);
  if (option === undefined) writeFileSync("docs/advice-judged.md", page);
}

function tellOne({ made, record, ...said }: Judged): string {
  const { loop, truth } = made.asFound;
  const readings = record?.phases.asFound?.readings ?? [];
  const { design, plan, ...state } = loop;
  return [
    `seed ${made.seed}, ${made.family}: ${made.faults.map(({ kind, size }) => `${kind.id} ${size ?? ""}`).join(" + ")}`,
    ...Object.entries({ design, plan, ...state, truth }).map(([name, part]) => `${name}: ${JSON.stringify(part)}`),
    `acceptable advice: ${made.advice.join(", ")}`,
    ...readings.map(({ cycle, direction, reference, signal, signalAtCard, counts, value: shown, errorPercentSpan }) =>
      [cycle, direction, reference, signal, signalAtCard, counts, shown, errorPercentSpan?.toFixed(3)].join("\t"),
    ),
    JSON.stringify(said, null, 1),
    JSON.stringify(record?.causes?.asFound, null, 1),
    JSON.stringify(record?.recommendation?.asFound, null, 1),
  ].join("\n");
}
