import { expect, test } from "vitest";
import { typingError } from "../../../src/verdict/causes/typing-causes.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const typingCauses = [typingError];

test("typing error: the finding names the reading, both numbers and the slip, and corrects nothing", () => {
  const [finding] = findingsOf(
    typingCauses,
    planted({ sheet: (readings) => readings.with(4, { ...readings[4]!, signal: 10 * readings[4]!.signal! }) }),
  );
  expect(finding).toMatchObject({ id: "typing-error", stage: "readings" });
  expect(finding?.says).toContain("(rising, cycle 1) lies far out; signal 10.");
  expect(finding?.says).toContain("decimal mark moved");
  expect(finding?.separatedBy).toContain("correct nothing by guess");
});

test("a clean sheet has none", () => {
  expect(idsOf(typingCauses, planted(nothingWrong))).toEqual([]);
});
