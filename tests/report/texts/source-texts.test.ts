import { expect, test } from "vitest";
import { sourceWords } from "../../../src/report/texts/source-texts.ts";

test("'from memory' becomes a mark, wherever it stands", () => {
  expect(sourceWords("IEC 61298-2:2008 terms, from memory")).toBe("IEC 61298-2:2008 terms*");
  expect(sourceWords("a standard; the 20 % from memory")).toBe("a standard; the 20 %*");
  expect(sourceWords("outputs table")).toBe("outputs table");
});
