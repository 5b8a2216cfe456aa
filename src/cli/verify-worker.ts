import { parentPort, workerData } from "node:worker_threads";
import type { Target } from "../jobs/records/find-targets.ts";
import { type Verification, verifierOf } from "../jobs/signing/verify-targets.ts";
import { nodeDisk } from "./node-disk.ts";
import { nodeFilingDisk } from "./node-filing-disk.ts";

/** A thread of `verify`: verifies the files that it is sent, one after the other, and answers in that order. */
const verify = verifierOf({ disk: nodeDisk, filing: nodeFilingDisk(() => undefined) }, workerData as Verification);
let last: Promise<void> = Promise.resolve();

parentPort?.on("message", (group: readonly Target[]) => {
  last = last.then(async () => parentPort?.postMessage(await verify(group)));
});
