import { availableParallelism } from "node:os";
import type { ProblemList } from "../problems/problem-list.ts";

/** With fewer records, threads would take longer to start than they save. */
export const fewestForThreads = 50;

/** More would take memory and bring nothing. */
const mostThreads = 64;

/** The option as a number; what is no count is a problem. */
export function threadsAsked(read: string | undefined, problems: ProblemList): number | undefined {
  if (read === undefined) return undefined;
  const count = Number(read.trim() || Number.NaN);
  if (Number.isInteger(count) && count >= 1 && count <= mostThreads) return count;
  const values = { option: "--workers", accepted: `a whole number from 1 to ${mostThreads}` };
  problems.add("options/not-understood", { file: "command line" }, { read, values });
  return undefined;
}

/** How many threads so much work is worth; one where it is better done here. */
export function threadsFor(tasks: number, asked: number | undefined): number {
  return Math.min(tasks, asked ?? (tasks < fewestForThreads ? 1 : availableParallelism()));
}
