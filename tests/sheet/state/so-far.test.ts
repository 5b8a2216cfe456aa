import { expect, test } from "vitest";
import { judgeSheet } from "../../../src/sheet/state/judge-sheet.ts";
import { soFar } from "../../../src/sheet/state/so-far.ts";
import { sheetOf, today, typed, wholeRun } from "../sample-sheet.ts";

const fine = { errorDistance: 0.1, part: 0.2, isOutside: false };
const outside = { errorDistance: 3, part: 6, isOutside: true };

test("never a pass before the evidence is complete", async () => {
  const word = (says: readonly (typeof fine)[]) =>
    soFar({ phase: "as_found", filled: says.length, of: 10, says, record: undefined, isCurrent: true }).word;
  expect(word([])).toBe("nothing read yet");
  expect(word([fine, fine])).toBe("in tolerance so far");
  expect(word([fine, outside])).toBe("out of tolerance at 1 reading");
  const data = await sheetOf();
  const { record } = judgeSheet(data, typed(data, [["as_found/1/rising/50", "signal", "12.01"]]), today);
  const one = soFar({ phase: "as_found", filled: 1, of: 10, says: [fine], record, isCurrent: true });
  expect(one.word).toBe("in tolerance so far");
  expect(one.missing.join(" ")).toContain("1 test point was read, 5 are asked for");
});

test("the word of the record where it is complete", async () => {
  const data = await sheetOf();
  const { record } = judgeSheet(data, wholeRun(data), today);
  expect(soFar({ phase: "as_found", filled: 10, of: 10, says: [fine], record, isCurrent: true })).toMatchObject({
    word: "pass",
    isBad: false,
    missing: [],
  });
});

test("the word of a record that is not of what stands there now is not said", async () => {
  const data = await sheetOf();
  const { record } = judgeSheet(data, wholeRun(data), today);
  const known = { phase: "as_found", of: 10, record } as const;
  const ten = Array.from({ length: 10 }, () => fine);
  expect(soFar({ ...known, filled: 10, says: ten, isCurrent: false }).word).toBe("in tolerance so far");
  expect(soFar({ ...known, filled: 10, says: [...ten.slice(1), outside], isCurrent: false }).word).toBe(
    "out of tolerance at 1 reading",
  );
});

test("a reading that cannot be read is not in tolerance", () => {
  const known = { phase: "as_found", filled: 2, of: 10, says: [fine], record: undefined } as const;
  for (const isCurrent of [true, false]) expect(soFar({ ...known, isCurrent }).word).toBe("1 reading not judged");
});
