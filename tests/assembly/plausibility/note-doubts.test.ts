import { expect, test } from "vitest";
import { fullWorkbook, judged, withCell } from "../../workbook/full-workbook.ts";

test("what the numbers say is told of a calibration that another problem stops, too", async () => {
  const spoiled = withCell("readings.csv", 3, "signal", "61.16");
  const late = fullWorkbook["calibrations.csv"].replace("2026-03-04", "soon");
  const { codes, cases } = await judged({ ...spoiled, "calibrations.csv": late });
  expect(codes).toContain("tables/cell-not-date");
  expect(cases).toEqual([]);
  const outputs = fullWorkbook["outputs.csv"].replace("LT-1", "LT-2");
  expect((await judged({ ...spoiled, "outputs.csv": outputs })).codes).toContain("plausible/reading-apart");
});

test("a calibration without its instrument is passed over", async () => {
  const { codes } = await judged({
    ...fullWorkbook,
    "instruments.csv": fullWorkbook["instruments.csv"].replace("LT-1", "LT-9"),
  });
  expect(codes).toContain("model/tag-unknown");
});

test("the tolerance of an instrument that no calibration names is told", async () => {
  const more = "LT-2,0,100,mm,4,20,mA,30,percent of span,,,\n";
  const { codes, problems } = await judged({
    ...fullWorkbook,
    "instruments.csv": fullWorkbook["instruments.csv"] + more,
  });
  expect(codes).toEqual(["plausible/tolerance-refused"]);
  expect(problems[0]?.belongsTo).toEqual({ tag: "LT-2" });
});
