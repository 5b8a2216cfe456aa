import type { ProblemList } from "../problems/problem-list.ts";
import type { Console } from "./console.ts";
import { nodeDisk } from "./node-disk.ts";
import { nodeFilingDisk } from "./node-filing-disk.ts";

/** The records that a command line means by files, folders and patterns. */
export async function meantRecords(
  given: readonly string[],
  problems: ProblemList,
  console: Console,
): Promise<readonly string[]> {
  const { recordPaths } = await import("../jobs/records/record-paths.ts");
  return recordPaths({ disk: nodeDisk, filing: nodeFilingDisk(console.complain) }, given, problems);
}
