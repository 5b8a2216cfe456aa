import { describe, expect, test } from "vitest";
import { dueCalendar } from "../../src/filing/due-calendar.ts";
import { dueList } from "../../src/filing/due-list.ts";
import type { FiledLine } from "../../src/filing/ledger-line.ts";
import { indexEntry } from "../../src/filing/make-index-entry.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { indexRow } from "../../src/report/columns/index-columns.tsx";
import { summaryColumns } from "../../src/report/columns/summary-columns.ts";
import { renderIndex } from "../../src/report/index-page.tsx";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { namedRows } from "../../src/report/table/column.ts";
import { howMany } from "../how-many.ts";
import { inFolder } from "../jobs/memory-disk.ts";
import { reportedFrom } from "../jobs/reported-records.ts";

// A record has one word. Loops at random, two hundred with all cases: few points or enough, right or wrong at any stage, outputs tried
// again or not, safety loops restored or not. Everything that speaks of the record has to say the same.

/** Of a word that differs in one loop of fifty, 120 loops show one in 91 runs of 100. */
const loops = howMany(120, 200);
const seed = 20261126;

/** Numbers from 0 to 1 by a linear congruence (Numerical Recipes, 2nd ed., 7.1: a = 1664525, c = 1013904223, m = 2³²). */
function numbersFrom(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

type Tables = Record<"instruments" | "calibrations" | "readings" | "outputs" | "trips" | "loop_checks", string[]>;

function randomTables(): Tables {
  const random = numbersFrom(seed);
  const one = <Item>(...items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const tables: Tables = {
    instruments: [
      "tag,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit,tolerance,tolerance_basis,counts_lower,counts_upper,value_lower,value_upper,value_unit,criticality,interval_months,interval_agreed_by",
    ],
    calibrations: ["calibration,tag,performed_on,performed_by,adjustment"],
    readings: ["calibration,phase,cycle,direction,reference,signal,counts,value"],
    outputs: ["tag,output,set_point,set_point_tolerance"],
    trips: ["calibration,phase,output,direction,cycle,reference"],
    loop_checks: ["calibration,item,result"],
  };
  for (let number = 1; number <= loops; number += 1) {
    const [tag, calibration] = [`LT-${number}`, `C-${number}`];
    const isSafety = random() < 0.2;
    const due = random() < 0.8 ? "12,Ada Specimen" : ",";
    tables.instruments.push(
      `${tag},0,1000,mm,4,20,mA,0.5,percent of span,0,27648,0,10,m,${isSafety ? "safety" : "general"},${due}`,
    );
    const phases = one(["as_found"], ["as_found", "as_left"], ["as_found", "as_left"]);
    const adjustment = phases.length === 1 ? "none" : one("re-teach", "re-teach", "re-scale", "none");
    tables.calibrations.push(`${calibration},${tag},2026-03-04,Ines Example,${adjustment}`);
    const depth = one(1, 2, 3);
    for (const phase of phases) {
      const points = one(
        [0, 250, 500, 750, 1000],
        [0, 250, 500, 750, 1000],
        [100, 300, 500, 700, 900],
        [0, 500],
        [500],
      );
      const [sensor, card, scaling] = [one(0, 0, 1, 8), one(0, 0, 0, 9), one(0, 0, 0, -7)];
      for (const cycle of [1, 2]) {
        for (const reference of points) {
          const at = reference + sensor + random();
          const cells = [
            (4 + (16 * at) / 1000).toFixed(4),
            depth > 1 ? Math.round((27648 * (at + card)) / 1000) : "",
            depth > 2 ? ((at + card + scaling) / 100).toFixed(4) : "",
          ];
          tables.readings.push(`${calibration},${phase},${cycle},rising,${reference},${cells.join(",")}`);
        }
      }
    }
    if (random() < 0.4) {
      tables.outputs.push(`${tag},Q1,400,5`);
      for (const phase of one(["as_found"], phases)) {
        const off = one(0, 0, 20);
        for (const cycle of [1, 2, 3]) {
          tables.trips.push(`${calibration},${phase},Q1,approach,${cycle},${400 + off + cycle / 10}`);
          tables.trips.push(`${calibration},${phase},Q1,recede,${cycle},${410 + off + cycle / 10}`);
        }
      }
    }
    if (random() < 0.3) tables.loop_checks.push(`${calibration},shield,${one("pass", "pass", "fail")}`);
    if (isSafety && random() < 0.6) tables.loop_checks.push(`${calibration},restored,${one("pass", "pass", "fail")}`);
  }
  return tables;
}

const texts = Object.fromEntries(
  Object.entries(randomTables()).map(([name, rows]) => [`${name}.csv`, `${rows.join("\n")}\n`]),
);
const { files, records } = await reportedFrom(inFolder("book", texts), "book");
const textOf = (html: string) =>
  html
    .replace(/<(script|style)[\s\S]*?<\/\1>/gu, "")
    .replace(/<[^>]+>/gu, " ")
    .replaceAll("&quot;", '"')
    .replace(/\s+/gu, " ");

function everywhere(record: SealedRecord) {
  const { tag } = record.instrument;
  const { calibration } = record.calibration;
  const line = { number: 1, path: `${tag}/page.html`, fileSha256: "0".repeat(64) } as FiledLine;
  const register = makeRegister({ entries: [indexEntry(line, record)], decisions: [] }, "2026-06-01", 30);
  return {
    overall: record.overall!,
    index: renderIndex([indexRow(record, "page.html")]).page,
    page: textOf(files.get(`out/${tag}/${calibration}.html`) ?? ""),
    json: JSON.parse(files.get(`out/${tag}/${calibration}.json`) ?? "{}"),
    label: renderLabels([record], { isSheet: false, skipped: 0 }),
    console: namedRows(summaryColumns, [{ record, page: "" }])[1]?.map(String) ?? [],
    row: register.rows[0]!,
    calendar: dueCalendar(dueList(register, 400), "2026-06-01T00:00:00Z"),
  };
}

describe("page, JSON, label, console, index, register and calendar have one word", () => {
  test("the loops are of every kind", () => {
    expect(records).toHaveLength(loops);
    const words = new Set(records.map(({ overall }) => overall?.word));
    expect([...words].sort()).toEqual(["fail", "not complete", "pass"]);
    expect(records.filter(({ overall }) => overall?.word === "pass").length).toBeGreaterThan(loops / 10);
    expect(records.some(({ overall }) => overall?.word === "fail" && !overall.complete)).toBe(true);
    const subjects = records.flatMap(({ overall }) => overall?.missing.map(({ about }) => about) ?? []);
    for (const subject of ["points", "ends", "as-found points", "output", "restored", "loop check", "adjustment"]) {
      expect(subjects).toContain(subject);
    }
  });

  test.each(records.map((record) => [record.instrument.tag, record] as const))("of %s", (_, record) => {
    const { overall, index, page, json, label, console, row, calendar } = everywhere(record);
    const says = overall.complete || overall.word === "not complete" ? overall.word : `${overall.word}, not complete`;
    const isPass = overall.word === "pass";
    expect(json.overall).toEqual(overall);
    expect(console).toContain(says);
    expect(textOf(index.slice(index.indexOf("<tbody>")))).toContain(`${says} Draft`);
    const first = page.match(/Result (Pass|Fail|Conditional \w+|Not complete|Cannot be decided)/iu)?.[1]?.toLowerCase();
    if (!overall.complete) expect(first, "the first word of the page").toBe(overall.word);
    expect(row.overall).toBe(overall.word);
    expect(/not complete/iu.test(page), "the page says that it is not complete").toBe(!overall.complete);
    const untold = overall.missing.filter(({ says }) => !page.includes(says)).map(({ says }) => says);
    expect(untold, "reasons that the page does not say").toEqual([]);
    expect(/not complete/iu.test(label), "the label says that it is not complete").toBe(!overall.complete);
    const why = calendar.replaceAll("\r\n ", "").replaceAll("\\", "");
    if (!isPass) for (const { says: one } of overall.missing) expect(why).toContain(one);
    expect(label.includes(isPass ? ": pass" : `: ${overall.word.toUpperCase()}`)).toBe(true);
    expect(label.includes("state failed"), "the label is dark").toBe(!isPass);
    const states = { pass: ["not due", "no date"], "not complete": ["not complete"], fail: ["not in tolerance"] };
    expect(states[overall.word as keyof typeof states]).toContain(row.due.state);
    expect(calendar.includes("BEGIN:VTODO")).toBe(!isPass);
    expect(calendar.includes("BEGIN:VEVENT")).toBe(record.nextDue !== undefined);
    expect(record.nextDue === undefined).toBe(!(isPass && record.instrument.intervalAgreedBy !== undefined));
  });
});
