import { appendFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { daysBetween } from "../../src/analysis/years/day-number.ts";
import type { FleetRow } from "../../src/fleet/fleet-columns.ts";
import { yearFile } from "../../src/fleet/year-file.ts";
import { askedOfDuckDb } from "../fleet/asked-of-duckdb.ts";
import { madeUpRows } from "../fleet/made-up-rows.ts";
import { howMany } from "../how-many.ts";
import { blocksOf } from "./console-blocks.ts";
import { root } from "./page-runner.ts";

// The queries of docs/fleet.md, as they stand there, over thousands of made-up rows, 50,000 with all cases, in yearly files; what they should answer is
// computed here from the rows themselves, without a file and without an engine. Doubles are compared exactly: the file
// keeps them as they are, and the one division is of the same whole numbers.

const rows = madeUpRows(howMany(15_000, 50_000));
const today = "2026-11-25";
const queries = new Map(
  blocksOf(readFileSync(join(root, "docs/fleet.md"), "utf8"))
    .filter(({ language }) => language === "sql")
    .map(({ name, lines }) => [name, lines.join("\n")]),
);
const folder = mkdtempSync(join(tmpdir(), "spanwright-fleet-"));
let answers: ReadonlyMap<string, readonly object[]>;

beforeAll(async () => {
  mkdirSync(join(folder, "fleet"));
  for (const [year, ofYear] of grouped(rows, ({ performed_on }) => performed_on?.slice(0, 4) ?? "no-day")) {
    const path = join(folder, "fleet", `calibrations-${year}.parquet`);
    for await (const part of yearFile(ofYear, "0".repeat(64))) appendFileSync(path, part);
  }
  const given = await askedOfDuckDb(folder, [...queries.values()]);
  answers = new Map([...queries.keys()].map((name, place) => [name, given[place] ?? []]));
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true }));

test("the page has these questions, and the day that is asked for", () => {
  expect([...queries.keys()]).toEqual(["today", "due", "rate", "drift", "standards"]);
  expect(queries.get("today")).toContain(`DATE '${today}'`);
});

test("what is due", () => {
  const due = rows
    .filter(({ is_last }) => is_last)
    .map(({ tag, location, next_due_on }) => ({ tag, location, next_due_on }))
    .filter(({ next_due_on }) => next_due_on !== null && daysBetween(today, next_due_on) <= 30)
    .map((row) => ({ ...row, days: String(daysBetween(today, row.next_due_on as string)) }))
    .sort(by(({ next_due_on, tag }) => [next_due_on, tag]));
  expect(due.length).toBeGreaterThan(100);
  expect(answers.get("due")).toEqual(due);
});

test("rate in tolerance by kind of sensor and year", () => {
  const counted = rows.filter((row) => row.is_current && row.as_found_statement !== null && row.performed_on !== null);
  const groups = grouped(counted, ({ principle, performed_on }) => `${principle ?? "~"} ${performed_on?.slice(0, 4)}`);
  const rates = [...groups].sort(by(([key]) => [key])).map(([key, ofGroup]) => {
    const [principle, year] = key.split(" ");
    const isIn = ({ as_found_statement: word }: FleetRow) => word === "pass" || word === "conditional pass";
    const [inTolerance, of] = [ofGroup.filter(isIn).length, ofGroup.length];
    return {
      ...{ principle: principle === "~" ? null : principle, year },
      ...{ in_tolerance: String(inTolerance), of: String(of), rate: inTolerance / of },
    };
  });
  expect(rates).toHaveLength(50);
  expect(answers.get("rate")).toEqual(rates);
});

test("loops that drift", () => {
  const drifting = rows
    .filter((row) => row.is_last && row.drift_is_early === false)
    .filter(({ drift_percent_span_per_year: drift }) => drift !== null && Math.abs(drift) >= 0.1)
    .map(({ tag, principle, drift_percent_span_per_year, forecast_on, forecast_limit }) => ({
      ...{ tag, principle, drift_percent_span_per_year, forecast_on, forecast_limit },
    }))
    .sort(by((row) => [-Math.abs(row.drift_percent_span_per_year as number), row.tag]));
  expect(drifting.length).toBeGreaterThan(100);
  expect(answers.get("drift")).toEqual(drifting);
});

test("standards overdue when they were used", () => {
  const uses = rows
    .filter(({ is_current }) => is_current)
    .flatMap(({ standards, tag, performed_on }) => (standards ?? []).map((used) => ({ ...used, tag, performed_on })))
    .filter(({ due_on, performed_on }) => performed_on !== null && due_on < performed_on);
  const groups = grouped(uses, ({ standard, certificate, due_on }) => [standard, certificate, due_on].join("\n"));
  const overdue = [...groups.values()].map((ofGroup) => {
    const { standard, certificate, due_on } = ofGroup[0] as (typeof uses)[number];
    const days = ofGroup.map(({ performed_on }) => performed_on).sort();
    const loops = new Set(ofGroup.map(({ tag }) => tag)).size;
    return {
      ...{ standard, certificate, due_on },
      ...{ records: String(ofGroup.length), loops: String(loops), last_used_on: days.at(-1) },
    };
  });
  expect(overdue.length).toBeGreaterThan(100);
  expect(answers.get("standards")).toEqual(
    overdue.sort(by(({ due_on, standard, certificate }) => [due_on, standard, certificate])),
  );
});

/** By the first of the keys that differs; text by its code units, as DuckDB's order of plain letters. */
function by<Row>(keysOf: (row: Row) => readonly (string | number | null)[]): (one: Row, other: Row) => number {
  return (one, other) => {
    const others = keysOf(other);
    for (const [place, key] of keysOf(one).entries()) {
      const second = others[place] as typeof key;
      if (key !== second) return (key as string) < (second as string) ? -1 : 1;
    }
    return 0;
  };
}

function grouped<Row>(all: readonly Row[], keyOf: (row: Row) => string): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of all) {
    const group = groups.get(keyOf(row));
    if (group === undefined) groups.set(keyOf(row), [row]);
    else group.push(row);
  }
  return groups;
}
