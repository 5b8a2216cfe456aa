import { expect, test } from "vitest";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { indexColumns, indexRow, indexStates } from "../../../src/report/columns/index-columns.tsx";
import { demoRecord } from "../demo-records.ts";

const row = indexRow(sealRecord(demoRecord("LT-310")), "LT-310/C-2026-015.html");

test("a row keeps what an index prints, and not the record", () => {
  expect(row).toMatchObject({ tag: "LT-310", calibration: "C-2026-015", performedOn: "2026-03-17", overall: "pass" });
  expect(row.signing).toBe("Draft, not signed");
  expect(row.summary).toMatchObject({
    "as found": "fail",
    "as left": "pass",
    "worst error, % of span": "+0.95 → +0.16",
  });
});

test("errors are sorted by the size of the one that holds now", () => {
  const worst = indexColumns.find(({ heading }) => heading === "Worst error");
  expect(worst?.sortBy?.(row)).toBe(0.16);
});

test("the states begin with the gravest", () => {
  expect(indexStates[0]).toBe("fail");
  expect(indexStates.at(-1)).toBe("pass");
});
