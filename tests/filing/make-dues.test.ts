import { expect, test } from "vitest";
import { makeDues } from "../../src/filing/make-dues.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import { entry } from "./sample-entries.ts";

const standard = { standard: "BAR-1", certificate: "B", dueOn: "2026-12-01" };
const filed = {
  entries: [
    entry({ tag: "soon", nextDue: "2026-12-25" }, { standards: [standard] }),
    entry(
      { tag: "late", nextDue: "2026-10-01" },
      { standards: [{ ...standard, certificate: "C", dueOn: "2027-12-01" }] },
    ),
    entry({ tag: "never" }, { location: "hall 3", description: "tank" }),
  ],
  decisions: [],
};

test("loops by their names with their days, and each standard by the certificate that runs longest", () => {
  const { on, rows, standards } = makeDues(filed, "2026-11-25", 30);
  expect(on).toBe("2026-11-25");
  expect(rows.map(({ tag, due }) => [tag, due.state, due.days])).toEqual([
    ["late", "overdue", -55],
    ["never", "no date", null],
    ["soon", "due soon", 30],
  ]);
  expect(rows[1]).toMatchObject({ location: "hall 3", description: "tank" });
  expect(standards).toEqual([{ standard: "BAR-1", certificate: "C", dueOn: "2027-12-01", isOverdue: false, tags: 2 }]);
});

test("the register says of them what this says", () => {
  const register = makeRegister(filed, "2026-11-25", 30);
  const dues = makeDues(filed, "2026-11-25", 30);
  expect(register.standards).toEqual(dues.standards);
  for (const [place, row] of dues.rows.entries()) expect(register.rows[place]).toMatchObject(row);
});
