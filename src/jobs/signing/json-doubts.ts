import type { Doubt } from "../../record/doubt.ts";
import { recordJson } from "../records/write-record.ts";

const longestLine = 100;

/** Where the JSON of a record is not written as it is always written, in every version: the first line that differs. */
export function jsonDoubts(text: string, record: object): readonly Doubt[] {
  const expected = recordJson(record);
  if (text === expected) return [];
  const [wanted, given] = [expected.split("\n"), text.split("\n")];
  const index = wanted.findIndex((line, number) => line !== given[number]);
  const line = index === -1 ? wanted.length : index;
  const [expects, has] = [wanted[line], given[line]].map(shortened);
  const says = `the record is written as "${expects}", the file has "${has}"`;
  return [{ about: "page", place: `line ${line + 1}`, says }];
}

function shortened(line: string | undefined): string {
  const text = line?.trim() ?? "(end)";
  return text.length > longestLine ? `${text.slice(0, longestLine)}…` : text;
}
