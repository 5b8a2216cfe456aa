import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { checkContext } from "../../../src/workbook/checks/check-context.ts";
import { readTables } from "../../../src/workbook/read-tables.ts";
import type { DraftRow, DraftTables } from "../../../src/workbook/table-row.ts";
import { filesOf, smallestWorkbook, type Texts } from "../smallest-workbook.ts";

const none = {
  standards: [],
  readings: [],
  outputs: [],
  trips: [],
  loop_checks: [],
  controller_limits: [],
  candidates: [],
  calibrations: [],
};
const draft = (tag: string, line: number): DraftRow<"instruments"> => ({
  row: { tag },
  file: "i.csv",
  line,
  cells: { tag },
});

async function context(texts: Texts, instruments: readonly DraftRow<"instruments">[] = []) {
  const problems = new ProblemList();
  const stopped = new Set<DraftRow>();
  const tables = await readTables(filesOf(texts), problems);
  const drafts: DraftTables = { ...none, instruments };
  return {
    problems,
    stopped,
    ...checkContext({ tables, drafts, stopped, today: "2026-11-25", firstLook: false, problems }),
  };
}

test("of two rows of one name the first is found", async () => {
  const { instrumentByTag } = await context({}, [draft("LT-1", 2), draft("LT-1", 3)]);
  expect(instrumentByTag.get("LT-1")?.line).toBe(2);
});

test("a table that need not be there is known to be empty; one that must be, or could not be read, is not known", async () => {
  const missing = await context({});
  expect([missing.isKnown("outputs"), missing.isKnown("instruments")]).toEqual([true, false]);
  const there = await context({ ...smallestWorkbook, "outputs.csv": "tag,set_point\nLT-1,5\n", "trips.csv": "" });
  expect([there.isKnown("instruments"), there.isKnown("outputs"), there.isKnown("trips")]).toEqual([
    true,
    false,
    false,
  ]);
});

test("a stop leaves its row out, a warning does not; both say what they belong to", async () => {
  const row = draft("LT-1", 2);
  const { report, problems, stopped } = await context({}, [row]);
  report("instruments", row, "model/few-points", { values: { points: 1, phase: "as found" } });
  expect(stopped.has(row)).toBe(false);
  report("instruments", row, "model/signal-flat", { column: "tag" });
  expect(stopped.has(row)).toBe(true);
  report("instruments", row, "model/tag-unknown", { belongsTo: "everything", read: "x" });
  expect(problems.all.map(({ read, belongsTo, place }) => [place.column, read, belongsTo])).toEqual([
    [undefined, undefined, { tag: "LT-1" }],
    ["tag", "LT-1", { tag: "LT-1" }],
    [undefined, "x", undefined],
  ]);
});
