import { expect, test } from "vitest";
import { checked, smallestWorkbook, withFile, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const trips = "calibration,phase,output,direction,reference\n";

test("a calibration that names no known tag is told once, at its row", async () => {
  expect(await told(withText("calibrations.csv", "LT-1", "LT-2"))).toEqual(["model/tag-unknown calibrations:2:tag"]);
});

test("every unknown standard is told by its name", async () => {
  const { problems } = await checked(withText("calibrations.csv", "GB-1", "GB-1;X;Y"));
  expect(problems.map(({ code, read }) => [code, read])).toEqual([
    ["model/standard-unknown", "X"],
    ["model/standard-unknown", "Y"],
  ]);
  expect(await told(withText("calibrations.csv", "GB-1", "X"), true)).toEqual([]);
});

test("without the optional table no name of it is known", async () => {
  const texts = { ...smallestWorkbook, "standards.csv": "standard,certificate,calibrated_on,due_on\n" };
  expect(await told(texts)).toEqual(["model/standard-unknown calibrations:2:standards"]);
});

test("an output of another tag is not this one's", async () => {
  const texts = {
    ...withFile("outputs.csv", "tag,output,set_point\nLT-1,Q1,50\n"),
    "trips.csv": `${trips}C-1,as_found,Q2,recede,50\n`,
  };
  expect(await told(texts)).toEqual(["model/output-unknown trips:2:output"]);
});

test("rows of an unknown calibration are told once a name, left out, and stop everything: they could be anyone's", async () => {
  const texts = withFile(
    "readings.csv",
    `${smallestWorkbook["readings.csv"]}C-l,as_found,rising,0,4\nC-l,as_found,rising,9,5\nC-7,as_found,rising,9,5\n`,
  );
  const { workbook, cases } = await checked(texts);
  expect(await told(texts)).toEqual([
    "model/calibration-unknown readings:7:calibration",
    "model/calibration-unknown readings:9:calibration",
  ]);
  expect(workbook.readings).toHaveLength(5);
  expect(cases).toEqual([]);
});

test("an output of an unknown tag stops everything as well", async () => {
  const { codes, cases } = await checked(withFile("outputs.csv", "tag,output,set_point\nLT-l,Q1,50\n"));
  expect(codes).toEqual(["model/tag-unknown"]);
  expect(cases).toEqual([]);
});

test("a table that could not be read makes no name unknown", async () => {
  expect(await told(withFile("instruments.csv", new Uint8Array([0xe9, 0x81])))).toEqual([
    "tables/encoding instruments",
  ]);
  expect(await told(withFile("standards.csv", new Uint8Array([0xe9, 0x81])))).toEqual(["tables/encoding standards"]);
  expect(await told(withText("standards.csv", "standard,", "name,"))).toEqual([
    "tables/column-unknown standards:1:name",
    "tables/column-missing standards:1",
  ]);
});

test("a row with a bad cell still lends its name", async () => {
  expect(await told(withText("calibrations.csv", "2026-03-04", "today"))).toEqual([
    "tables/cell-not-date calibrations:2:performed_on",
  ]);
});

test("every unknown tag of a candidate is told by its name, and a candidate without tags is for every loop", async () => {
  const { problems } = await checked(withFile("candidates.csv", "candidate,tags\nA,LT-1;LT-8;LT-9\nB,\n"));
  expect(problems.map(({ code, place, read }) => [code, place.line, place.column, read])).toEqual([
    ["model/tag-unknown", 2, "tags", "LT-8"],
    ["model/tag-unknown", 2, "tags", "LT-9"],
  ]);
});
