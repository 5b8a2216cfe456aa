import type { Check } from "./check-context.ts";

/** A record holds and draws each of its readings: with more, nobody could read it. */
export const mostReadings = 5000;

/** No calibration has more readings than a record holds; where one has, none of them is looked at any further. */
export const readingCount: Check = ({ readingsByCalibration, report, leaveOut }) => {
  for (const [name, drafts] of readingsByCalibration) {
    const beyond = drafts[mostReadings];
    if (name === undefined || beyond === undefined) continue;
    const values = { readings: drafts.length, most: mostReadings };
    report("readings", beyond, "model/too-many-readings", { column: "calibration", values });
    for (const draft of drafts) leaveOut(draft);
  }
};
