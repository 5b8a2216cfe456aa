import { expect, test } from "vitest";
import type { TagLine } from "../../src/filing/ledger-line.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import { lifeOf, presentTag, underPresentTags } from "../../src/filing/tag-lives.ts";
import { entry } from "./sample-entries.ts";

const words = { by: "A. Example", reason: "new tags", previous: "0".repeat(64) };
const said = (number: number, day: string, change: object): TagLine =>
  ({ number, at: `${day}T10:00:00.000+01:00`, tag: "LT-1", ...words, ...change }) as TagLine;
const renamed = said(1000, "2026-06-01", { action: "renamed", to: "LT-1001" });
const due = { nextDue: "2026-05-01" };

test("a loop has one history under its new name, and a later loop of the old name has its own", () => {
  const before = entry({ performedOn: "2026-01-01" });
  const filedLate = { ...entry({ performedOn: "2026-05-30" }), number: 1001 };
  const another = { ...entry({ performedOn: "2026-07-01" }), number: 1002 };
  const tags = underPresentTags([before, filedLate, another], [renamed]).map(({ summary }) => summary.tag);
  expect(tags).toEqual(["LT-1001", "LT-1001", "LT-1"]);
  expect(underPresentTags([before], [renamed])).toMatchObject([{ filedAs: "LT-1" }]);
});

test("names are followed one after the other, and back", () => {
  const again = said(1001, "2026-06-02", { tag: "LT-1001", action: "renamed", to: "LT-1" });
  const third = said(1002, "2026-06-03", { action: "renamed", to: "LT-3" });
  const placed = { tag: "LT-1", number: 1, performedOn: null };
  expect(presentTag(placed, [renamed, again])).toBe("LT-1");
  expect(presentTag(placed, [renamed, again, third])).toBe("LT-3");
});

test("two tags that are one loop have one history, also where both sites counted their records alike", () => {
  const here = entry({ tag: "LT-1", calibration: "C-1", performedOn: "2026-01-01" });
  const there = entry({ tag: "B-LT-1", calibration: "C-1", performedOn: "2026-02-01", ...due });
  const merged = said(1000, "2026-06-01", { tag: "B-LT-1", action: "renamed", to: "LT-1" });
  const entries = underPresentTags([here, there], [merged]);
  const { rows } = makeRegister({ entries, decisions: [], tagLines: [merged] }, "2026-06-02", 30);
  expect(rows).toMatchObject([{ tag: "LT-1", records: 2, performedOn: "2026-02-01", due: { state: "overdue" } }]);
});

test("a loop out of use is not overdue, nor is its standard; work after that day brings it back", () => {
  const retired = said(1000, "2026-06-01", { action: "retired" });
  const standards = [{ standard: "METER-3", certificate: "K-1", dueOn: "2026-01-01" }];
  const last = entry(due, { standards });
  const register = makeRegister({ entries: [last], decisions: [], tagLines: [retired] }, "2026-06-02", 30);
  expect(register.rows).toMatchObject([{ due: { state: "out of use", on: null, why: "since 2026-06-01: new tags" } }]);
  expect(register.standards).toEqual([]);
  expect(lifeOf(entry({ performedOn: "2026-06-02" }), [retired])).toEqual({});
});

test("a loop that was moved is at its new place until a later record says where it is", () => {
  const moved = said(1000, "2026-06-01", { action: "relocated", place: "hall 4" });
  const rowOf = (performedOn: string) =>
    makeRegister(
      { entries: [entry({ performedOn }, { location: "hall 1" })], decisions: [], tagLines: [moved] },
      "2026-06-02",
      30,
    ).rows[0]?.location;
  expect([rowOf("2026-05-01"), rowOf("2026-06-02")]).toEqual(["hall 4", "hall 1"]);
});

test("a sensor put on another loop leaves its own out of use, and the other to be calibrated", () => {
  const moved = said(1000, "2026-06-01", { action: "transferred", to: "LT-2" });
  const entries = [entry(due), entry({ tag: "LT-2", nextDue: "2027-01-01" })];
  const { rows } = makeRegister({ entries, decisions: [], tagLines: [moved] }, "2026-06-02", 30);
  expect(rows.map(({ tag, due: { state } }) => [tag, state])).toEqual([
    ["LT-1", "out of use"],
    ["LT-2", "not complete"],
  ]);
});
