import type { Doubt } from "../../record/doubt.ts";
import { firstDifference } from "../../report/page-difference.ts";

const before = 20;
const after = 60;

/** Where the JSON of a record is not what it should be, byte for byte: the first difference, with what stands around it. */
export function jsonDoubts(text: string, expected: string): readonly Doubt[] {
  if (text === expected) return [];
  const index = firstDifference(expected, text);
  const line = expected.slice(0, index).split("\n").length;
  const [expects, has] = [expected, text].map((whole) => partAt(whole, index));
  return [
    { about: "page", place: `line ${line}`, says: `the record is written as "${expects}", the file has "${has}"` },
  ];
}

function partAt(text: string, index: number): string {
  const part = text.slice(Math.max(0, index - before), index + after).trim();
  return part === "" ? "(end)" : part.replace(/\s+/gu, " ");
}
