import type { ProblemList } from "../../problems/problem-list.ts";
import { type DecimalMark, decimalMarks } from "../../units/read-number.ts";

/** The mark of `--decimal-mark`, as it was typed; nothing where it was not, or cannot be read, which is a problem. */
export function readDecimalMark(read: string | undefined, problems: ProblemList): DecimalMark | undefined {
  const mark = decimalMarks.find((known) => known === read?.trim().toLowerCase());
  if (read !== undefined && mark === undefined) {
    const values = { option: "--decimal-mark", accepted: decimalMarks.join(", ") };
    problems.add("options/not-understood", { file: "command line" }, { read, values });
  }
  return mark;
}
