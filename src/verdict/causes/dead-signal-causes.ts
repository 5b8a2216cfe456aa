import type { StagedReading } from "../../analysis/stages/staged-readings.ts";
import { median } from "../../numeric/median.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { placeNumber } from "./line-words.ts";
import { signalEnds } from "./signal-order.ts";
import { thresholds } from "./thresholds.ts";

/**
 * Rows 18 (at all points), 29 and 30: a signal that is the same whatever the distance is.
 *
 * No current or voltage: an open wire or no supply, which on a signal that begins at zero looks like its low end. Pinned
 * above the range, or collapsed to little: a current output on a voltage input, or the reverse. At a fault level all the
 * time: the target was never seen.
 *
 * @param evidence of a phase
 * @returns at most one finding
 * Source: own reckoning; NAMUR NE 43 for the fault levels.
 * @example deadSignalCauses(evidence)[0].row // 29
 */
export function deadSignalCauses(evidence: CauseEvidence): readonly Finding[] {
  const read = evidence.readings.filter(({ percent }) => percent.signal !== undefined);
  const row = isStill(read) ? rowOf(evidence, read) : undefined;
  return row === undefined ? [] : [findingOf(evidence, read, row)];
}

function isStill(read: readonly StagedReading[]): boolean {
  const signals = read.map(({ percent }) => percent.signal as number);
  const references = read.map(({ percent }) => percent.reference as number);
  if (read.length < 3 || rangeOf(references) < 4 * thresholds.stillRange) return false;
  return rangeOf(signals) < thresholds.stillRange;
}

function rangeOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

type Row = 18 | 29 | 30;

function rowOf({ instrument, loop }: CauseEvidence, read: readonly StagedReading[]): Row | undefined {
  const ends = signalEnds(instrument);
  const level = levelOf(read);
  const { low = ends.low, high = ends.high } = loop.faultLevels;
  const isCurrent = instrument.signalUnit === "mA";
  const nothing = isCurrent
    ? thresholds.noCurrentMilliamps
    : (thresholds.noVoltagePercent / 100) * (ends.high - ends.low);
  if (Math.abs(level) <= nothing) return 29;
  if (isCurrent && level >= high) return 18;
  const pinned = ends.high + (thresholds.pinnedAbovePercent / 100) * (ends.high - ends.low);
  if (level > pinned) return 30;
  const collapsed = ends.low > 0 ? low : (thresholds.stillRange / 100) * ends.high;
  return isCurrent && level < collapsed ? 30 : undefined;
}

function levelOf(read: readonly StagedReading[]): number {
  return median(read.map(({ reading }) => reading.signal as number));
}

function findingOf(evidence: CauseEvidence, read: readonly StagedReading[], row: Row): Finding {
  const { instrument } = evidence;
  const ends = signalEnds(instrument);
  const level = levelOf(read);
  const unit = instrument.signalUnit;
  const numbers: Evidence[] = [
    { name: "signal, whatever the distance", value: level, unit },
    { name: "it moved by", value: rangeOf(read.map(({ percent }) => percent.signal as number)), unit: "% of span" },
    { name: "readings", value: read.length, unit: "" },
  ];
  const isHidden = row === 29 && ends.low === 0;
  return {
    row,
    title: causeTitles[row] as string,
    stage: row === 18 ? "sensor" : "wiring",
    says:
      `The signal stays at ${placeNumber(Number(level.toPrecision(3)))} ${unit} at every distance. ${says[row]}` +
      (isHidden
        ? ` On a signal that begins at 0 ${unit} nothing in the controller tells a broken wire from its low end.`
        : ""),
    evidence: numbers,
    rivals: rivals[row].map(rivalName),
    separatedBy: separations[row],
  };
}

const says: Readonly<Record<Row, string>> = {
  18: "This is consistent with a sensor that never saw the target and reports a fault.",
  29: "This is consistent with an open wire or with no supply at the sensor.",
  30: "This is consistent with a current output on a voltage input, or a voltage output on a current input.",
};
const rivals: Readonly<Record<Row, readonly number[]>> = { 18: [30], 29: [30], 30: [29] };
const separations: Readonly<Record<Row, string>> = {
  18: "see whether the target indicator of the sensor is lit at three distances",
  29: "measure the supply at the sensor's terminals, then current and voltage of its output with the card disconnected",
  30: "read the output type on the sensor's label and in its settings, and the channel's configured type",
};
