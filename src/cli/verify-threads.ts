import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Target } from "../jobs/records/find-targets.ts";
import type { TargetVerifier, Verification, VerifiedTarget } from "../jobs/signing/verify-targets.ts";
import { onThreads, threadsFor, workerThread } from "./threads.ts";

/** Built beside the command; from the sources everything is done one by one. */
const workerFile = fileURLToPath(new URL("./verify-worker.js", import.meta.url));

/** How many threads verify so many records; nothing where they are better verified one by one. */
export function verifyThreads(records: number, asked: number | undefined): TargetVerifier | undefined {
  const threads = threadsFor(records, asked);
  if (threads <= 1 || !existsSync(workerFile)) return undefined;
  return (groups, verification: Verification) =>
    onThreads<readonly Target[], readonly VerifiedTarget[]>(
      () => workerThread(workerFile, verification),
      threads,
      groups,
    );
}
