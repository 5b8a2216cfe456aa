import { expect, test } from "vitest";
import { isOverloadStated } from "../../../../src/verdict/causes/evidence/stated-load.ts";

test("a card below the least load of a voltage output overloads it; a current, and what is not stated, do not tell", () => {
  const row = { signalUnit: "V", loadMin: 2000, cardResistance: 500 } as const;
  expect(isOverloadStated(row)).toBe(true);
  expect(isOverloadStated({ ...row, cardResistance: 2000 })).toBe(false);
  expect(isOverloadStated({ ...row, signalUnit: "mA" })).toBe(false);
  expect(isOverloadStated({ ...row, loadMin: undefined })).toBe(false);
  expect(isOverloadStated({ ...row, cardResistance: undefined })).toBe(false);
});
