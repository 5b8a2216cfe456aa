import { expect, test } from "vitest";
import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import { demoRecord } from "../report/demo-records.ts";
import { fullWorkbook, judged } from "../workbook/full-workbook.ts";

const recordOf = async (limits: string, instrument = (row: string) => row) => {
  const texts = {
    ...fullWorkbook,
    "instruments.csv": instrument(fullWorkbook["instruments.csv"]),
    "controller_limits.csv": `tag,limit,value,acts\n${limits}\n`,
  };
  const { cases, sentences } = await judged(texts);
  const [found] = cases;
  if (found === undefined) throw new Error(sentences.join("\n"));
  const digests = new Map(found.files.map(({ name }) => [name, { sha256: "0".repeat(64), byteLength: 1 }]));
  return assembleRecord(found, { softwareVersion: "0.0.0", digests, warnings: [] });
};

test("a loop found 1 % of span high acts 18 mm early as found, and where it is meant as left", async () => {
  const { controllerLimits } = await recordOf("LT-1,high alarm,75,above\nLT-1,low trip,25,below");
  expect(controllerLimits?.map(({ limit, meant, direction }) => [limit, meant, direction])).toEqual([
    ["high alarm", 1550, "recede"],
    ["low trip", 650, "approach"],
  ]);
  for (const { meant, found } of controllerLimits ?? []) {
    const [asFound, asLeft] = found;
    // 1 % of 1800 mm; the readings scatter by 0.03 % of it.
    expect(Math.abs((asFound?.actedAt ?? 0) - (meant - 18))).toBeLessThan(1);
    expect(Math.abs((asLeft?.actedAt ?? 0) - meant)).toBeLessThan(1);
    expect(asFound?.expandedUncertainty).toBeGreaterThan(0);
  }
});

test("a limit beyond the test points is not determined, and why", async () => {
  const { controllerLimits } = await recordOf("LT-1,overfull,130,above");
  expect(controllerLimits?.[0]?.found[0]).toMatchObject({
    actedAt: null,
    notDetermined: "no two test points lie on either side of it",
  });
});

test("above a level that falls with the distance is an approach", () => {
  const limits = demoRecord("LT-702").controllerLimits ?? [];
  expect(limits.map(({ direction }) => direction)).toEqual(["approach", "approach"]);
  // 90 % of fill, 0 at 8 m and 100 at 0.4 m.
  expect(Math.abs((limits[0]?.meant ?? 0) - (8 - 0.9 * 7.6))).toBeLessThan(1e-12);
});

test("a loop without limits has no such part", () => {
  expect(demoRecord("ZT-201").controllerLimits).toBeUndefined();
});
