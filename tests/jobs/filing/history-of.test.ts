import { expect, test } from "vitest";
import { historyOf } from "../../../src/jobs/filing/history-of.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { frozen } from "../../charts/frozen.ts";
import { sampleRecord } from "../../filing/sample-pages.ts";

const recordOn = (performedOn: string | undefined, description?: string) => {
  const record = sampleRecord({ calibration: `C-${performedOn}`, performedOn });
  return sealRecord({ ...record, instrument: { ...record.instrument, ...(description && { description }) } });
};

test("what the loop is comes from the latest record, whatever the order they are given in", () => {
  const history = historyOf(frozen([recordOn("2025-01-07", "new words"), recordOn("2024-01-07", "old words")]));
  expect(history?.description).toBe("new words");
  expect(history?.overTheYears.records.map(({ performedOn }) => performedOn)).toEqual(["2024-01-07", "2025-01-07"]);
});

test("records without a day are left out and told; without any day there is no history", () => {
  const history = historyOf([recordOn(undefined), recordOn("2025-01-07")]);
  expect(history?.overTheYears.leftOut).toEqual(["C-undefined: its day is not stated"]);
  expect(historyOf([recordOn(undefined)])).toBeUndefined();
  expect(historyOf([])).toBeUndefined();
});
