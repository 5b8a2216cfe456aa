import { expect, test } from "vitest";
import { smallestWorkbook, type Texts, withFile } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const runs = (phase: string, ...trips: readonly string[]) => trips.map((trip) => `C-1,${phase},Q1,${trip}\n`).join("");

function withTrips(rows: string, setPoint = "50"): Texts {
  return {
    ...smallestWorkbook,
    "outputs.csv": `tag,output,set_point,set_point_tolerance\nLT-1,Q1,${setPoint},1\n`,
    "trips.csv": `calibration,phase,output,direction,reference\n${rows}`,
  };
}

test("three approaches and a recede are enough", async () => {
  expect(await told(withTrips(runs("as_found", "approach,50", "recede,52", "approach,50", "approach,51")))).toEqual([]);
});

test("an output that was tripped has a tolerance of its set point, or is told, once", async () => {
  const texts = withTrips(runs("as_found", "approach,50", "recede,52", "approach,50", "approach,51"));
  const unlimited = { ...texts, "outputs.csv": "tag,output,set_point\nLT-1,Q1,50\nLT-1,Q2,60\n" };
  expect(await told(unlimited)).toEqual(["model/set-point-unlimited outputs:2"]);
});

test("two approaches are told, for each phase by itself", async () => {
  const found = runs("as_found", "approach,50", "recede,52", "approach,50", "approach,51");
  const left = runs("as_left", "approach,50", "recede,52", "approach,50");
  expect(await told(withTrips(found + left))).toEqual(["model/few-approaches trips:6"]);
});

test("trips in one direction only are told, and without an approach nothing is said of their number", async () => {
  expect(await told(withTrips(runs("as_found", "recede,52", "recede,52")))).toEqual([
    "model/trips-one-direction trips:2:direction",
  ]);
  expect(await told(withTrips(runs("as_found", "approach,50")))).toEqual([
    "model/trips-one-direction trips:2:direction",
    "model/few-approaches trips:2",
  ]);
});

test("a set point at either end of the range is inside, beyond it is told", async () => {
  const setTo = (setPoint: string) => told(withFile("outputs.csv", `tag,output,set_point\nLT-1,Q1,${setPoint}\n`));
  expect(await setTo("0")).toEqual([]);
  expect(await setTo("100")).toEqual([]);
  expect(await setTo("100.1")).toEqual(["model/set-point-outside-range outputs:2:set_point"]);
  expect(await setTo("-0.1")).toEqual(["model/set-point-outside-range outputs:2:set_point"]);
});

test("of an output that is not there nothing more is said", async () => {
  const texts = withTrips("C-1,as_found,Q2,approach,50\n");
  expect(await told(texts)).toEqual(["model/output-unknown trips:2:output"]);
});
