import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Target } from "../jobs/records/find-targets.ts";
import type { TargetVerifier, Verification, VerifiedTarget } from "../jobs/signing/verify-targets.ts";
import { threadsFor } from "./threads-for.ts";

/** Built beside the command; from the sources everything is done one by one. */
const workerFile = fileURLToPath(new URL("./verify-worker.js", import.meta.url));

/** How many threads verify so many records; nothing where they are better verified one by one. */
export async function verifyThreads(records: number, asked: number | undefined): Promise<TargetVerifier | undefined> {
  const threads = threadsFor(records, asked);
  if (threads <= 1 || !existsSync(workerFile)) return undefined;
  // What one thread never needs is not loaded for it.
  const { onThreads, workerThread } = await import("./threads.ts");
  return (groups, verification: Verification) =>
    onThreads<readonly Target[], readonly VerifiedTarget[]>(
      () => workerThread(workerFile, verification),
      threads,
      groups,
    );
}
