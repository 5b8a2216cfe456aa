import { expect, test } from "vitest";
import { rebuildWithinLimit } from "../../../src/jobs/records/rebuild-within-limit.ts";
import { recordJson } from "../../../src/jobs/records/write-record.ts";
import { figureDoubts } from "../../../src/jobs/signing/figure-doubts.ts";
import { recordVerifier } from "../../../src/jobs/signing/verify-record.ts";
import { sealOf } from "../../../src/proof/seal-record.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { recordFrom, softwareVersion } from "../reported-records.ts";

const record = await recordFrom(smallestWorkbook, { decision: { monteCarlo: "250000" } });
const draws = 250_000 * (record.phases.asFound?.points.length ?? 0);

test("budgets are drawn again where a record may ask for so many draws, and compared", () => {
  const rebuilt = rebuildWithinLimit(record, draws);
  expect(rebuilt).not.toHaveProperty("note");
  expect(JSON.stringify("made" in rebuilt && rebuilt.made)).toBe(JSON.stringify(record));
});

test("else everything but the drawn figures is compared, and that is said", () => {
  const rebuilt = rebuildWithinLimit(record, draws - 1);
  expect(rebuilt).toMatchObject({
    note: `its budgets were not drawn again, the rest was made again: that takes ${draws / 1e6} million draws, and a record is given ${(draws - 1) / 1e6} million at most`,
  });
  if ("doubts" in rebuilt) throw new TypeError("it is rebuilt");
  expect(JSON.stringify(rebuilt.made)).toBe(JSON.stringify(rebuilt.found));
  expect(JSON.stringify(rebuilt.found)).not.toContain("monteCarlo");
});

test("a record that asks for ten million draws of each budget is verified at once, its other figures compared", async () => {
  const hostile = { ...structuredClone(await recordFrom()), monteCarloDraws: 10_000_000 };
  const sealed = { ...hostile, seal: sealOf(hostile) };
  expect(figureDoubts(sealed).note).toContain("50 million draws");
  const verifying = recordVerifier()(recordJson(sealed), "a.json", { softwareVersion, signers: undefined });
  expect(await verifying.next()).toMatchObject({ done: true, value: expect.stringContaining("not drawn again") });
  const zero = sealed.phases.asFound?.zeroError;
  if (!zero) throw new TypeError("it has a zero error");
  zero.percentSpan += 1;
  expect(figureDoubts(sealed).doubts).toMatchObject([{ place: "phases.asFound.zeroError.percentSpan" }]);
});
