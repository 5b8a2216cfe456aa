import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { readDelimited } from "../../../src/workbook/files/read-delimited.ts";
import { exampleOptions } from "../../../src/workbook/look/example-options.ts";

const of = (text: string) =>
  exampleOptions(
    readDelimited({ name: "r.csv", bytes: new TextEncoder().encode(text) }, "readings", new ProblemList()),
  );

test.each([
  ["reference (mm),signal (mA)\n199.8,4.01\n1100.2,12\n2000.3,20.02\n", "200:2000mm", "4:20mA", false],
  ["reference,signal\n0.5 m,9.98\n8 m,0.03\n", "0.5:8m", "10:0V", false],
  ["point (in),reference,signal (V)\n10,9.99,1.01\n90,90.02,5.01\n", "10:90in", "1:5V", false],
  ["reference,signal\n-50,0.02\n50,19.9\n", "-50:50mm", "0:20mA", true],
])("%j suggests %s and %s", (text, range, signal, isUnitGuessed) => {
  expect(of(text)).toEqual({ range, signal, isUnitGuessed });
});

test("without two references there is no example", () => {
  expect(of("reference,signal\n200,4\n")).toBeUndefined();
});
