import type { Range } from "../../model/range.ts";
import { dayNumber } from "./day-number.ts";

/** What a record of a tag says of which loop it is of, and when. */
export type LoopRecord = Range & {
  calibration: string;
  performedOn: string | null;
  distanceUnit: string;
  /** Serial number of the sensor. */
  serial: string | null;
  adjustment: string | null;
  /** The part of the loop whose errors it holds; null where it does not say. */
  pointsOf: "sensor" | "controller" | null;
};

/** The same with its day, for whoever counts days. */
export type Dated<Record> = Record & { performedOn: string; day: number };

/**
 * Those records of a tag that are of one loop, in the order of time, and which are not.
 *
 * A record of another range or unit is another loop, one that read the loop only as far as the sensor tells of another
 * error than one that read the controller, another serial number without a replacement is another sensor, and one without
 * a day has no place in time: none is taken, all are told.
 *
 * @param all records of one tag, any order; those of one day in the order in which they were made
 * @returns records by day, all of the range and unit of the last one; the others in words
 * Source: own choice: an error in percent of another span, or at another end, says nothing of this one; a serial number
 *   that is not stated tells nothing.
 * @example recordsOfOneLoop([]) // { records: [], leftOut: [] }
 */
export function recordsOfOneLoop<Record extends LoopRecord>(
  all: readonly Record[],
): { records: readonly Dated<Record>[]; leftOut: readonly string[] } {
  const dated = all
    .flatMap((record) => {
      const { performedOn } = record;
      return performedOn === null ? [] : [{ ...record, performedOn, day: dayNumber(performedOn) }];
    })
    .sort((one, other) => one.day - other.day);
  const last = dated.at(-1);
  const whyOther = (record: LoopRecord) => (last === undefined ? undefined : differenceOf(record, last));
  const changed = dated.findLastIndex((record, index) => {
    const before = dated[index - 1];
    return before !== undefined && !isSameSensor(before, record);
  });
  const first = Math.max(dated.findLastIndex((record) => whyOther(record) !== undefined) + 1, changed);
  return {
    records: dated.slice(first),
    leftOut: [
      ...all
        .filter(({ performedOn }) => performedOn === null)
        .map(({ calibration }) => `${calibration}: its day is not stated`),
      ...dated.slice(0, first).map((record, index) => {
        const isOfOtherSensor = index < changed && "of another serial number, and no replacement was written down";
        return `${record.calibration}: ${whyOther(record) ?? (isOfOtherSensor || "from before a record that was left out")}`;
      }),
    ],
  };
}

function differenceOf(record: LoopRecord, last: LoopRecord): string | undefined {
  if (!isSameRange(record, last)) return "of another range or unit";
  if (record.pointsOf === last.pointsOf) return undefined;
  if (record.pointsOf === null) return "it does not say which part of the loop its errors are of";
  return record.pointsOf === "sensor" ? "read at the sensor alone" : "read at the controller, the last one was not";
}

function isSameRange(one: LoopRecord, other: LoopRecord): boolean {
  return (
    one.distanceUnit === other.distanceUnit &&
    one.rangeLower === other.rangeLower &&
    one.rangeUpper === other.rangeUpper
  );
}

/** A replacement that was written down breaks the line of drift by itself. */
function isSameSensor(before: LoopRecord, now: LoopRecord): boolean {
  if (before.serial === null || now.serial === null || before.serial === now.serial) return true;
  return before.adjustment === "replace" || now.adjustment === "replace";
}
