import { expect, test } from "vitest";
import { filedRows } from "../../../src/jobs/filing/filed-rows.ts";

test("a row a page says what happened to it and where it lies", () => {
  const row = { tag: "LT-1", calibration: "C-1", revision: 2, outcome: "filed", path: "records/LT-1/p.html" } as const;
  expect(filedRows([row])).toEqual([
    ["tag", "calibration", "revision", "outcome", "page"],
    ["LT-1", "C-1", "2", "filed", "records/LT-1/p.html"],
  ]);
});
