import { expect, test } from "vitest";
import { checked, smallestWorkbook, withFile } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const instruments = smallestWorkbook["instruments.csv"];
const loop = instruments.split("\n")[1] ?? "";

test.each([
  ["instruments.csv", `${instruments}${loop}\n`, "instruments:3:tag"],
  [
    "standards.csv",
    `${smallestWorkbook["standards.csv"]}GB-1,K-8,2025-06-01,2027-06-01,1,mm\n`,
    "standards:3:standard",
  ],
  ["outputs.csv", "tag,output,set_point\nLT-1,Q1,50\nLT-1,Q2,50\nLT-1,Q1,60\n", "outputs:4:output"],
  ["candidates.csv", "candidate\nA\nB\nA\n", "candidates:4:candidate"],
])("a name that stands twice in %s is told at its second place", async (file, text, place) => {
  expect(await told(withFile(file, text))).toEqual([`model/key-twice ${place}`]);
});

test("outputs of two tags may be called alike", async () => {
  const texts = {
    ...withFile("instruments.csv", `${instruments}${loop.replace("LT-1", "LT-2")}\n`),
    "outputs.csv": "tag,output,set_point\nLT-1,Q1,50\nLT-2,Q1,50\n",
  };
  expect(await told(texts)).toEqual([]);
});

test.each(["lt-1", "LT -1", "LT\u00a0-1", "L\u200bT-1", "ＬＴ-1"])(
  "%j cannot be told from LT-1: both are told, and neither is filed",
  async (tag) => {
    const texts = withFile("instruments.csv", `${instruments}${loop.replace("LT-1", tag)}\n`);
    expect(await told(texts)).toEqual(["model/key-alike instruments:2:tag", "model/key-alike instruments:3:tag"]);
    expect((await checked(texts)).cases).toEqual([]);
  },
);

test("names of two tables, and of prototypes, do not meet", async () => {
  const texts = withFile("candidates.csv", "candidate\nLT-1\n__proto__\nconstructor\n");
  expect(await told(texts)).toEqual([]);
});
