import { expect, test } from "vitest";
import { smallestWorkbook, type Texts } from "../smallest-workbook.ts";
import { told } from "./told.ts";

function withStates(stated: string, ...trips: readonly string[]): Texts {
  return {
    ...smallestWorkbook,
    "outputs.csv": `tag,output,set_point,set_point_tolerance,function\nLT-1,Q1,50,1,${stated}\n`,
    "trips.csv": `calibration,phase,output,direction,cycle,reference,state\n${trips.map((trip) => `C-1,as_found,Q1,${trip}\n`).join("")}`,
  };
}

const open = ["approach,1,50,on", "recede,1,52,off", "approach,2,50,on", "recede,2,52,off", "approach,3,50,on"];
const closed = open.map((trip) => (trip.endsWith("on") ? trip.replace("on", "off") : trip.replace("off", "on")));

test("states that agree with each other and with the row, or that nobody noted, are right", async () => {
  expect(await told(withStates("NO", ...open))).toEqual([]);
  expect(await told(withStates("NC", ...closed))).toEqual([]);
  expect(await told(withStates("", ...open))).toEqual([]);
  expect(await told(withStates("NC", ...open.map((trip) => trip.replace(/o[nf]+$/u, ""))))).toEqual([]);
});

test("an output that acts the other way round than its row says is told once a phase", async () => {
  expect(await told(withStates("NC", ...open))).toEqual(["model/function-contradicted trips:2:state"]);
  expect(await told(withStates("NO", ...closed))).toEqual(["model/function-contradicted trips:2:state"]);
});

test("the fewer states that contradict the others are told, whatever the row says", async () => {
  const turned = [...open.slice(0, 4), "approach,3,50,off", "recede,3,52,on"];
  for (const stated of ["NO", "NC", ""]) {
    expect(await told(withStates(stated, ...turned))).toEqual([
      "model/states-contradicted trips:6:state",
      "model/states-contradicted trips:7:state",
    ]);
  }
});

test("a run that chatters is told by its first trip", async () => {
  expect(await told(withStates("NO", ...open, "approach,3,50.1,off", "approach,3,50.2,on"))).toEqual([]);
});
