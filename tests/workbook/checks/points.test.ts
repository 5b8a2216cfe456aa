import { expect, test } from "vitest";
import { checked, smallestWorkbook, withFile, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const header = "calibration,phase,direction,reference,signal,point,rejected\n";
const rows = (phase: string, references: readonly number[], point = "", rejected = "") =>
  references.map((reference) => `C-1,${phase},rising,${reference},5,${point},${rejected}\n`).join("");

test("five points are enough, four are told, for each phase by itself", async () => {
  const four = rows("as_left", [0, 25, 50, 75]);
  const five = rows("as_found", [0, 25, 50, 75, 100]);
  expect(await told(withFile("readings.csv", header + five + four))).toEqual(["model/few-points readings:7"]);
  expect(await told(withFile("readings.csv", header + five))).toEqual([]);
});

test("named points within 2 % of span of each other are one place", async () => {
  const named = [0, 1, 2, 50, 100].map((at) => rows("as_found", [at], `${at}`)).join("");
  const { problems } = await checked(withFile("readings.csv", header + named));
  expect(problems).toMatchObject([{ code: "model/few-points", values: { points: 3, phase: "as found" } }]);
});

test("points that are five by their names and two by their references are two places", async () => {
  const filledDown = [0, 25, 50, 75, 100].map((at, index) => rows("as_found", [100 * (index % 2)], `${at}`)).join("");
  const { problems } = await checked(withFile("readings.csv", header + filledDown));
  const few = problems.filter(({ code }) => code === "model/few-points");
  expect(few).toMatchObject([{ values: { points: 2 } }]);
});

test("a rejected reading makes no point", async () => {
  const texts = withFile(
    "readings.csv",
    header + rows("as_found", [0, 25, 50, 75]) + rows("as_found", [100], "", "slipped"),
  );
  expect(await told(texts)).toEqual(["model/few-points readings:2"]);
});

test("readings that run together are refused with their lines, unless they name their points", async () => {
  const close = withFile("readings.csv", header + rows("as_found", [0, 1.5, 3, 25, 50, 75, 100]));
  const { problems } = await checked(close);
  expect(problems).toMatchObject([
    {
      code: "model/point-wide",
      values: { first: "0", last: "3", lines: "2, 3, 4" },
      belongsTo: { calibration: "C-1" },
    },
  ]);
  const named =
    header +
    rows("as_found", [0, 1.5, 3], "0") +
    [25, 50, 75, 100].map((at) => rows("as_found", [at], `${at}`)).join("");
  expect(await told(withFile("readings.csv", named))).toEqual([]);
});

test("of many lines the first twelve are named and the rest counted", async () => {
  const texts = withFile(
    "readings.csv",
    header +
      rows(
        "as_found",
        Array.from({ length: 15 }, (_, index) => index),
      ),
  );
  const [problem] = (await checked(texts)).problems;
  expect(problem?.values.lines).toBe("2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13 and 3 more");
});

test("without a range nothing is said about points", async () => {
  expect(await told(withText("instruments.csv", "LT-1,0,100", "LT-1,0,"))).toEqual([
    "tables/cell-missing instruments:2:range_upper",
  ]);
  expect(smallestWorkbook["readings.csv"]).toContain("as_found");
});
