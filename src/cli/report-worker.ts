import { parentPort } from "node:worker_threads";
import { type CaseToReport, reportCase } from "../jobs/records/report-case.ts";
import { nodeDisk } from "./node-disk.ts";

/** A thread of `report`: makes the records that it is sent, one after the other, and answers in that order. */
let last: Promise<void> = Promise.resolve();

parentPort?.on("message", (one: CaseToReport) => {
  last = last.then(async () => parentPort?.postMessage(await reportCase(nodeDisk, one)));
});
