import { expect, test } from "vitest";
import { judgeSheet } from "../../../src/sheet/state/judge-sheet.ts";
import { soFar } from "../../../src/sheet/state/so-far.ts";
import { sheetOf, today, typed, wholeRun } from "../sample-sheet.ts";

const fine = { errorDistance: 0.1, part: 0.2, isOutside: false };
const outside = { errorDistance: 3, part: 6, isOutside: true };

test("never a pass before the evidence is complete", async () => {
  const word = (says: readonly (typeof fine)[]) =>
    soFar({ phase: "as_found", filled: says.length, of: 10, says, record: undefined }).word;
  expect(word([])).toBe("nothing read yet");
  expect(word([fine, fine])).toBe("in tolerance so far");
  expect(word([fine, outside])).toBe("out of tolerance at 1 reading");
  const data = await sheetOf();
  const { record } = judgeSheet(data, typed(data, [["as_found/1/rising/50", "signal", "12.01"]]), today);
  const one = soFar({ phase: "as_found", filled: 1, of: 10, says: [fine], record });
  expect(one.word).toBe("in tolerance so far");
  expect(one.missing.join(" ")).toContain("1 test point was read, 5 are asked for");
});

test("the word of the record where it is complete", async () => {
  const data = await sheetOf();
  const { record } = judgeSheet(data, wholeRun(data), today);
  expect(soFar({ phase: "as_found", filled: 10, of: 10, says: [fine], record })).toMatchObject({
    word: "pass",
    isBad: false,
    missing: [],
  });
});
