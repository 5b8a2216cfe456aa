import { expect, test } from "vitest";
import { dueState } from "../../src/filing/due-state.ts";
import { entry, phaseInShort } from "./sample-entries.ts";

const due = (nextDue: string) => dueState(entry({ nextDue }), "2026-11-25", 30);

test("a loop is overdue from the day after its date, and due soon from so many days before", () => {
  expect(due("2026-11-24")).toMatchObject({ state: "overdue", days: -1 });
  expect(due("2026-11-25")).toMatchObject({ state: "due soon", days: 0 });
  expect(due("2026-12-25")).toMatchObject({ state: "due soon", days: 30 });
  expect(due("2026-12-26")).toMatchObject({ state: "not due", days: 31 });
});

test("a loop that was not left in tolerance has no date, whatever its interval", () => {
  const failed = entry({ asFound: phaseInShort("fail"), asLeft: phaseInShort("conditional fail") });
  expect(dueState(failed, "2026-11-25", 30)).toMatchObject({ state: "not in tolerance", on: null });
});

test("a fail that is not complete says what is missing after it", () => {
  const overall = { word: "fail" as const, missing: ["3 test points were read, 5 are asked for"] };
  expect(dueState(entry({ asFound: phaseInShort("fail"), overall }), "2026-11-25", 30)).toMatchObject({
    state: "not in tolerance",
    why: "not left in tolerance; 3 test points were read, 5 are asked for",
  });
});

test("without an interval that somebody agreed to there is no date, and it is said why", () => {
  expect(dueState(entry({}), "2026-11-25", 30)).toMatchObject({
    state: "no date",
    why: "nobody agreed to an interval",
  });
  const agreed = entry({}, { intervalAgreedBy: "an owner" });
  expect(dueState(agreed, "2026-11-25", 30)).toMatchObject({ state: "no date", why: "no interval is stated" });
});
