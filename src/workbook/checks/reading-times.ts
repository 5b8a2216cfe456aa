import { phaseInWords, phases } from "../../model/calibration-words.ts";
import { readingTimes } from "../../model/reading-times.ts";
import type { DraftRow } from "../table-row.ts";
import type { CheckContext, ReadingsCheck } from "./check-context.ts";

/** A calibration may take several days; so many of them beside the day of the work are asked about. Own choice. */
const mostDays = 2;
const millisecondsPerDay = 86_400_000;

/** The times of readings go on through the rows of a phase, and lie near the days of the work. */
export const timesOfReadings: ReadingsCheck = ({ calibrations, readings }, context) => {
  const used = readings.filter(({ row }) => row.rejected === undefined);
  for (const phase of phases) {
    const own = used.filter(({ row }) => row.phase === phase);
    const backwardsAt = readingTimes(own.map(({ row }) => row.time))?.backwardsAt;
    const draft = backwardsAt === undefined ? undefined : own[backwardsAt];
    if (draft === undefined) continue;
    const values = { phase: phaseInWords[phase], before: own[(backwardsAt ?? 0) - 1]?.row.time ?? "" };
    context.report("readings", draft, "model/times-backwards", { column: "time", values });
  }
  const [calibration] = calibrations;
  if (calibration !== undefined) checkDays(used, calibration, context);
};

/** Told once, at the first reading of another day. */
function checkDays(
  readings: readonly DraftRow<"readings">[],
  { row: { receivedOn, performedOn } }: DraftRow<"calibrations">,
  { report }: CheckContext,
): void {
  if (performedOn === undefined) return;
  const [from, to] = [receivedOn ?? performedOn, performedOn].map((day) => Date.parse(`${day}T00:00Z`));
  const far = readings.find(({ row: { time = "" } }) => {
    const [day] = /^\d{4}-\d{2}-\d{2}/u.exec(time) ?? [];
    const at = day === undefined ? Number.NaN : Date.parse(`${day}T00:00Z`);
    const margin = mostDays * millisecondsPerDay;
    return at < Math.min(from as number, to as number) - margin || at > (to as number) + margin;
  });
  if (far === undefined) return;
  report("readings", far, "model/time-of-another-day", { column: "time", values: { performedOn } });
}
