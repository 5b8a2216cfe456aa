import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import type { CaseReporter, CaseToReport, ReportedCase } from "../jobs/records/report-case.ts";
import type { ProblemList } from "../problems/problem-list.ts";

/** With fewer records, threads would take longer to start than they save. */
const fewestForThreads = 50;
/** So many records wait for each thread, or for those before them: enough that none stands idle, few in memory. */
const ahead = 3;

/** Built beside the command; from the sources everything is done one by one. */
const workerFile = fileURLToPath(new URL("./report-worker.js", import.meta.url));

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

/** How many threads make so many records; nothing where they are better made one by one. */
export function reportThreads(records: number, asked: number | undefined): CaseReporter | undefined {
  const threads = Math.min(records, asked ?? (records < fewestForThreads ? 1 : availableParallelism()));
  return threads > 1 && existsSync(workerFile) ? onThreads(() => workerThread(workerFile), threads) : undefined;
}

/** Makes records elsewhere; they come back in the order in which they were sent. */
export type Thread = { report: (one: CaseToReport) => Promise<ReportedCase>; end: () => Promise<unknown> };

/** Hands the cases round, and gives the results in the order of the cases, whichever thread is faster. */
export function onThreads(newThread: () => Thread, count: number): CaseReporter {
  return async function* (cases) {
    const threads = Array.from({ length: count }, newThread);
    const pending: Promise<ReportedCase>[] = [];
    try {
      let sent = 0;
      for await (const one of cases) {
        const reported = (threads[sent % count] as Thread).report(one);
        // Told when it is its turn.
        reported.catch(() => undefined);
        pending.push(reported);
        sent += 1;
        if (pending.length >= ahead * count) yield await (pending.shift() as Promise<ReportedCase>);
      }
      for (const reported of pending) yield await reported;
    } finally {
      await Promise.all(threads.map(({ end }) => end()));
    }
  };
}

function workerThread(file: string): Thread {
  const worker = new Worker(file);
  const waiting: { done: (reported: ReportedCase) => void; failed: (fault: unknown) => void }[] = [];
  worker.on("message", (reported: ReportedCase) => waiting.shift()?.done(reported));
  worker.on("error", (fault) => {
    for (const { failed } of waiting.splice(0)) failed(fault);
  });
  return {
    report: (one) =>
      new Promise((done, failed) => {
        waiting.push({ done, failed });
        worker.postMessage(one);
      }),
    end: () => worker.terminate(),
  };
}
