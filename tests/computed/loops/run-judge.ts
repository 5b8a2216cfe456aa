import { writeFileSync } from "node:fs";
import { forecastsOf } from "./forecasts.ts";
import { isFound, type Judged, judge } from "./judge.ts";
import { judgedPage } from "./judged-page.ts";
import { scoreOf } from "./score.ts";

/** Judges the first so many seeds, prints the page and writes it; or lists what was not named, or tells all about one. */
const [option, value] = process.argv.slice(2);
const print = (text: string) => process.stdout.write(`${text}\n`);

if (option === "--seed") {
  const [one] = await judge([Number(value)]);
  if (one !== undefined) print(tellOne(one));
} else if (option === "--missed") {
  const judged = await judge(Array.from({ length: Number(value) }, (_, seed) => seed));
  for (const one of judged.filter(({ naming, made }) => made.family === "one fault" && !naming.every(isFound))) {
    print(lineOf(one));
  }
} else if (option === "--chances") {
  const judged = await judge(Array.from({ length: Number(value) }, (_, seed) => seed));
  for (const { seed, chance, passesTaughtAtEnds } of await forecastsOf(judged)) {
    if (chance === null || chance < 0.2 || chance > 0.8) continue;
    const faults = judged[seed]?.made.faults.map(({ kind }) => kind.id).join(" + ");
    print(`${seed}  ${chance.toFixed(2)}  ${passesTaughtAtEnds ? "passes" : "fails "}  ${faults}`);
  }
} else {
  const loops = option === "--loops" ? Number(value) : 2000;
  const judged = await judge(Array.from({ length: loops }, (_, seed) => seed));
  const score = scoreOf(judged, await forecastsOf(judged));
  const heading = { date: new Date().toISOString().slice(0, 10), first: 0, last: loops - 1 };
  const page = judgedPage(judged, score, heading);
  print(page);
  if (option === undefined) writeFileSync("docs/advice-judged.md", page);
}

function lineOf({ made, titles, codes, advice }: Judged): string {
  const faults = made.faults.map(({ kind, size }) => `${kind.id} ${size ?? ""}`).join(" + ");
  return `${made.seed}  ${faults}: ${titles.join("; ") || codes.join(" ") || "nothing"}; ${advice}`;
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
