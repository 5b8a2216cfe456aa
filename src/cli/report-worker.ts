import { parentPort } from "node:worker_threads";
import { type CaseToReport, casesInTurn, withoutRecord } from "../jobs/records/report-case.ts";
import { nodeDisk } from "./node-disk.ts";

/** A thread of `report`: makes the records that it is sent, and answers in their order. */
const report = casesInTurn(nodeDisk);

parentPort?.on("message", (one: CaseToReport) => {
  report(one).then((reported) => parentPort?.postMessage(withoutRecord(reported)));
});
