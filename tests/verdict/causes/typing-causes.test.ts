import { expect, test } from "vitest";
import { typingCauses } from "../../../src/verdict/causes/typing-causes.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

test("row 33: the finding names the reading, both numbers and the slip, and corrects nothing", () => {
  const [finding] = typingCauses(
    planted({ sheet: (readings) => readings.with(4, { ...readings[4]!, signal: 10 * readings[4]!.signal! }) }),
  );
  expect(finding).toMatchObject({ row: 33, stage: "readings" });
  expect(finding?.says).toContain("(rising, cycle 1) lies far out; signal 10.");
  expect(finding?.says).toContain("decimal mark moved");
  expect(finding?.separatedBy).toContain("correct nothing by guess");
});

test("a clean sheet has none", () => {
  expect(rowsOf(typingCauses, planted(nothingWrong))).toEqual([]);
});
