import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { CaseReporter, CaseToReport, ReportedCase } from "../jobs/records/report-case.ts";
import { threadsFor } from "./threads-for.ts";

/** Built beside the command; from the sources everything is done one by one. */
const workerFile = fileURLToPath(new URL("./report-worker.js", import.meta.url));

/** Of fewer records less is held than it takes to compile what the build had compiled. */
const fewestForLowMemory = 100;

/** This thread has time: what it read of their rows it lets go of before it would by itself. */
const recordsBetweenLettingGo = 500;

/** How many threads make so many records; nothing where they are better made one by one. */
export async function reportThreads(records: number, asked: number | undefined): Promise<CaseReporter | undefined> {
  const threads = threadsFor(records, asked);
  if (threads <= 1 || !existsSync(workerFile)) return undefined;
  // What one thread never needs is not loaded for it.
  const { keepMemoryLow, letGo, onThreads, workerThread } = await import("./threads.ts");
  if (records >= fewestForLowMemory) keepMemoryLow();
  letGo();
  return async function* (cases) {
    let done = 0;
    for await (const reported of onThreads<CaseToReport, ReportedCase>(
      () => workerThread(workerFile),
      threads,
      cases,
    )) {
      yield reported;
      done += 1;
      if (done % recordsBetweenLettingGo === 0) letGo();
    }
  };
}
