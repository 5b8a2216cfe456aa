import { expect, test } from "vitest";
import type { DecidedLine } from "../../src/filing/ledger-line.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import { clopperPearson } from "../../src/numeric/clopper-pearson.ts";
import { entry, phaseInShort } from "./sample-entries.ts";

const on = "2026-11-25";
const registerOf = (entries: Parameters<typeof makeRegister>[0]["entries"], decisions: DecidedLine[] = []) =>
  makeRegister({ entries, decisions }, on, 30);

test("a tag has one row, from its last record; the rows stand by tag", () => {
  const { rows, records } = registerOf([
    entry({ tag: "LT-2", performedOn: "2026-02-01" }),
    entry({ tag: "LT-1", performedOn: "2026-03-01", calibration: "new", asFound: phaseInShort("fail", 0.9) }),
    entry({ tag: "LT-1", performedOn: "2025-03-01", calibration: "old" }),
  ]);
  expect(records).toBe(3);
  expect(rows.map(({ tag, calibration, records }) => [tag, calibration, records])).toEqual([
    ["LT-1", "new", 2],
    ["LT-2", rows[1]!.calibration, 1],
  ]);
  expect(rows[0]).toMatchObject({ asFound: "fail", asLeft: null, worstAsFound: { errorPercentSpan: 0.9 } });
});

test("a standard stands once, by the certificate that runs longest, with the tags whose last record used it", () => {
  const used = (certificate: string, dueOn: string) => ({ standards: [{ standard: "BAR-1", certificate, dueOn }] });
  const { standards } = registerOf([
    entry({ tag: "LT-1" }, used("old", "2026-06-30")),
    entry({ tag: "LT-2" }, used("new", "2027-06-30")),
    entry({ tag: "LT-3" }, { standards: [{ standard: "METER-1", certificate: "M", dueOn: "2026-11-24" }] }),
  ]);
  expect(standards).toEqual([
    { standard: "METER-1", certificate: "M", dueOn: "2026-11-24", isOverdue: true, tags: 1 },
    { standard: "BAR-1", certificate: "new", dueOn: "2027-06-30", isOverdue: false, tags: 2 },
  ]);
});

test("a loop found out of tolerance is open until its record or the ledger says what was decided", () => {
  const failed = (calibration: string, more = {}) =>
    entry({ calibration, asFound: phaseInShort("fail") }, { fileSha256: calibration, ...more });
  const decision = { tag: "LT-1", calibration: "by ledger", fileSha256: "by ledger" } as DecidedLine;
  const { openFindings } = registerOf(
    [failed("by record", { impactDecision: "none" }), failed("by ledger"), failed("open"), entry({})],
    [decision],
  );
  expect(openFindings.map(({ calibration }) => calibration)).toEqual(["open"]);
});

test("what was decided of a revision does not close the finding of the one after it", () => {
  const failed = (revision: number) =>
    entry({ calibration: "C-1", revision, asFound: phaseInShort("fail") }, { fileSha256: `page ${revision}` });
  const decision = { tag: "LT-1", calibration: "C-1", revision: 1, fileSha256: "page 1" } as DecidedLine;
  expect(registerOf([failed(1)], [decision]).openFindings).toEqual([]);
  expect(registerOf([failed(1), failed(2)], [decision]).openFindings).toMatchObject([{ revision: 2 }]);
});

test("the rate of a year counts loops as found, each calibration once, without those that could not be judged", () => {
  const found = (performedOn: string, statement: "pass" | "conditional pass" | "conditional fail") =>
    entry({ performedOn, asFound: phaseInShort(statement) });
  const { years } = registerOf([
    found("2025-01-01", "pass"),
    found("2025-12-31", "conditional fail"),
    found("2026-01-01", "conditional pass"),
    entry({ performedOn: "2026-01-01", asFound: { ...phaseInShort("pass"), statement: null } }),
    entry({ performedOn: null }),
  ]);
  expect(years).toEqual([
    { year: 2025, inTolerance: 1, of: 2, interval: clopperPearson(1, 2) },
    { year: 2026, inTolerance: 1, of: 1, interval: clopperPearson(1, 1) },
  ]);
});
