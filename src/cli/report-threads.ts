import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { CaseReporter, CaseToReport, ReportedCase } from "../jobs/records/report-case.ts";
import { keepMemoryLow, letGo, onThreads, threadsFor, workerThread } from "./threads.ts";

/** Built beside the command; from the sources everything is done one by one. */
const workerFile = fileURLToPath(new URL("./report-worker.js", import.meta.url));

/** Of fewer records less is held than it takes to compile what the build had compiled. */
const fewestForLowMemory = 100;

/** How many threads make so many records; nothing where they are better made one by one. */
export function reportThreads(records: number, asked: number | undefined): CaseReporter | undefined {
  const threads = threadsFor(records, asked);
  if (threads <= 1 || !existsSync(workerFile)) return undefined;
  if (records >= fewestForLowMemory) keepMemoryLow();
  letGo();
  return (cases) => onThreads<CaseToReport, ReportedCase>(() => workerThread(workerFile), threads, cases);
}
