import type { ReadingsCheck } from "./check-context.ts";

/** A record holds and draws each of its readings: with more, nobody could read it. */
export const mostReadings = 5000;

/** No calibration has more readings than a record holds; where one has, none of them is looked at any further. */
export const readingCount: ReadingsCheck = ({ name, tooMany }, { report }) => {
  if (name === undefined || tooMany === undefined) return;
  const values = { readings: tooMany.count, most: mostReadings };
  report("readings", tooMany.beyond, "model/too-many-readings", { column: "calibration", values });
};
