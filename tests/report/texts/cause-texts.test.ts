import { expect, test } from "vitest";
import { causeOnFirstPage, causesOf, evidenceWords, numberWords } from "../../../src/report/texts/cause-texts.ts";
import { demoRecord } from "../demo-records.ts";

test("an error has its sign and its uncertainty, a plain number five digits and its unit", () => {
  expect(
    evidenceWords({ name: "error at 200 mm", value: 0.7921, unit: "% of span", standardUncertainty: 0.0213 }),
  ).toBe("+0.792 ± 0.021 % of span");
  expect(evidenceWords({ name: "signal", value: 16.03212, unit: "mA" })).toBe("16.032 mA");
  expect(evidenceWords({ name: "air", value: 31.16, unit: "°C" })).toBe("31.2 °C");
  expect(evidenceWords({ name: "readings there", value: 12, unit: "" })).toBe("12");
  expect(evidenceWords({ name: "mean error", value: -0.4612, unit: "steps" })).toBe("−0.46 steps");
});

test("a number without scatter is not given an uncertainty that only computing has", () => {
  expect(numberWords(0.98, 4e-17, false)).toBe("0.98");
  expect(numberWords(0, 0, true)).toBe("0.00");
  expect(numberWords(25.04, undefined, true)).toBe("+25.0");
});

test("the causes of a record stand in the order of the work", () => {
  expect(causesOf(demoRecord("LT-310")).map(({ title }) => title)).toEqual(["As found", "As left"]);
});

test("a cause is on the first page once: not where it is a reason of what to do, nor as found where as left shares it", () => {
  expect(causeOnFirstPage(demoRecord("LT-310"), "asFound")).toMatchObject({ others: 1 });
  expect(causeOnFirstPage(demoRecord("LT-318"), "asFound")).toBeUndefined();
  expect(causeOnFirstPage(demoRecord("ZT-407"), "asFound")).toBeUndefined();
  expect(causeOnFirstPage(demoRecord("ZT-407"), "asLeft")?.says).toMatch(/^Rising readings lie below/u);
  expect(causeOnFirstPage(demoRecord("ZT-201"), "asFound")).toBeUndefined();
});
