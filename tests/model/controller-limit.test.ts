import { expect, test } from "vitest";
import { checked, smallestWorkbook } from "../workbook/smallest-workbook.ts";

const read = (limits: string) =>
  checked({ ...smallestWorkbook, "controller_limits.csv": `tag,limit,value,acts,delay,dead_band\n${limits}` });

test("a limit is read with its delay and dead band", async () => {
  const { workbook, sentences } = await read("LT-1,high alarm,80,above,2 s,1\n");
  expect(sentences).toEqual([]);
  expect(workbook.controllerLimits[0]?.row).toEqual({
    ...{ tag: "LT-1", limit: "high alarm", value: 80, acts: "above", delay: 2, deadBand: 1 },
  });
});

test("an unknown tag, a limit twice, and a side that is none are told together", async () => {
  const { codes } = await read(
    "LT-9,high,80,above,,\nLT-1,high,80,above,,\nLT-1,high,80,above,,\nLT-1,low,20,under,,\n",
  );
  expect(codes.toSorted()).toEqual(["model/key-twice", "model/tag-unknown", "tables/cell-not-choice"]);
});
