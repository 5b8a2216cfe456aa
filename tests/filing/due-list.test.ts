import { expect, test } from "vitest";
import { dueList } from "../../src/filing/due-list.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import { entry } from "./sample-entries.ts";

test("what is overdue or due within so many days stands by its day; what has no date is not there", () => {
  const used = { standards: [{ standard: "BAR-1", certificate: "B", dueOn: "2026-12-01" }] };
  const register = makeRegister(
    {
      entries: [
        entry({ tag: "late", nextDue: "2026-10-01" }),
        entry({ tag: "soon", nextDue: "2026-12-25" }, used),
        entry({ tag: "later", nextDue: "2026-12-26" }),
        entry({ tag: "never" }),
      ],
      decisions: [],
    },
    "2026-11-25",
    30,
  );
  const { loops, standards } = dueList(register, 30);
  expect(loops.map(({ tag, due }) => [tag, due.days])).toEqual([
    ["late", -55],
    ["soon", 30],
  ]);
  expect(standards.map(({ standard, days }) => [standard, days])).toEqual([["BAR-1", 6]]);
  expect(dueList(register, 5).standards).toEqual([]);
});
