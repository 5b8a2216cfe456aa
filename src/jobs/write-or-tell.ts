import type { ProblemList } from "../problems/problem-list.ts";
import { CannotWrite } from "./disk.ts";

/** Writes, and tells where the disk refuses; true where it is done. Any other fault is a bug and goes on. */
export async function writeOrTell(write: () => Promise<void>, file: string, problems: ProblemList): Promise<boolean> {
  try {
    await write();
    return true;
  } catch (fault) {
    if (!(fault instanceof CannotWrite)) throw fault;
    problems.add("options/cannot-write", { file }, { values: { why: fault.message } });
    return false;
  }
}
