import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { columnName } from "../../model/column-name.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeNumber, unitOf } from "./evidence/line-words.ts";
import type { ExchangedRows, WildOfStage } from "./evidence/set-aside.ts";

// Readings that all others contradict and that would otherwise condemn the sensor.

/** Two rows whose numbers fit when they change places. */
export const rowsExchanged: Cause = {
  id: "rows-exchanged",
  title: "rows exchanged: two readings noted in each other's row",
  place: "readings",
  separatedBy: "look at the sheet or the meter's memory, or read both points again; correct nothing by guess",
  remedy: {
    cures: "readings",
    does: "compare the two rows with the sheet and read both points again; correct nothing by guess",
  },
  detect: (evidence) => evidence.exchanged.map((pair) => exchangedSighting(evidence, pair)),
};

function exchangedSighting(evidence: CauseEvidence, { first, second, axis, before, after }: ExchangedRows): Sighting {
  const [one, other] = [placeWords(evidence, first), placeWords(evidence, second)];
  return {
    says: `The ${columnName(axis)} of two readings lies far out, and fits when the two change places: ${one} and ${other}. This is consistent with two rows exchanged.`,
    evidence: [
      { name: "error as noted, at least", value: before, unit: "% of span" },
      { name: "error when exchanged, at most", value: after, unit: "% of span" },
    ],
    rivals: ["wild-reading"],
  };
}

/** One reading far out, while its repeats and its neighbours agree. */
export const wildReading: Cause = {
  id: "wild-reading",
  title: "wild reading among others that agree",
  place: "readings",
  separatedBy: "read that point again, three times",
  remedy: { cures: "readings", does: "read that point again, three times, before anything is adjusted or replaced" },
  detect: (evidence) => evidence.wild.map((one) => wildSighting(evidence, one)),
};

function wildSighting(evidence: CauseEvidence, { index, axis, deviation }: WildOfStage): Sighting {
  return {
    says: `The ${columnName(axis)} of one reading lies far from what all others say: ${placeWords(evidence, index)}. This is consistent with one wild reading: an echo, a knock, a number noted wrong. What is said of the loop below leaves it out.`,
    evidence: [{ name: "distance from what the others say", value: deviation, unit: "% of span" }],
    rivals: ["typing-error", "target-lost-fault", "reference-moved"],
  };
}

function placeWords({ readings, loop, instrument }: CauseEvidence, index: number): string {
  const staged = readings.find((reading) => reading.index === index);
  const place = placeNumber(inUnitOf(loop, "reference", staged?.percent.reference ?? 0));
  return `${place} ${unitOf({ instrument }, "reference")} (${staged?.direction}, cycle ${staged?.cycle})`;
}
