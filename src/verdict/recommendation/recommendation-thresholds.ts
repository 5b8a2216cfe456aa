import type { Instrument } from "../../model/instrument.ts";

/** The limits by which one recommendation is told from another; a column of the table instruments sets each. */
export type RecommendationThresholds = {
  adjustAt: number;
  reteachResidualMax: number;
  reteachScatterMax: number;
  replaceScatterFrom: number;
  replaceResidualFrom: number;
  driftGrowthMax: number;
  stageShareFrom: number;
};

/** A limit as it is printed: what it limits, its value, and who set it. */
export type StatedThreshold = {
  name: keyof RecommendationThresholds;
  /** Column of the table instruments that sets it. */
  column: string;
  about: string;
  value: number;
  unit: "% of tolerance" | "times";
  from: "instruments table" | "default, own choice";
};

/** Own choice, all of them; a tolerance is ±, so that scatter counts by two standard deviations, which 95 % keep to. */
export const usualThresholds: Readonly<RecommendationThresholds> = Object.freeze({
  /** Nothing is adjusted while it passes. */
  adjustAt: 100,
  /** What a re-teach leaves should have as much again in hand for the drift until the next calibration. */
  reteachResidualMax: 50,
  reteachScatterMax: 25,
  /** Beyond it one reading in twenty is outside however well it is taught. */
  replaceScatterFrom: 100,
  replaceResidualFrom: 100,
  driftGrowthMax: 2,
  /** As for a cause: `matteringPartOfTolerance`. */
  stageShareFrom: 50,
});

type Meaning = Pick<StatedThreshold, "column" | "about">;

const meanings: Readonly<Record<keyof RecommendationThresholds, Meaning>> = Object.freeze({
  adjustAt: { column: "adjust_at", about: "worst error from which adjusting is asked for though it passes" },
  reteachResidualMax: {
    column: "reteach_residual_max",
    about: "most that the best zero and span may leave for a re-teach to hold for long",
  },
  reteachScatterMax: {
    column: "reteach_scatter_max",
    about: "most that two standard deviations of repeated readings may be for a re-teach to hold for long",
  },
  replaceScatterFrom: {
    column: "replace_scatter_from",
    about:
      "two standard deviations of repeated readings, at least, beyond which replacing is advised once the target is proved",
  },
  replaceResidualFrom: {
    column: "replace_residual_from",
    about: "what the best zero and span leave, beyond which replacing is advised",
  },
  driftGrowthMax: {
    column: "drift_growth_max",
    about: "times as fast as before that a drift may run and be taught away once more",
  },
  stageShareFrom: { column: "stage_share_from", about: "error of one stage of the loop from which it is at fault" },
});

/**
 * The limits that hold for an instrument, each with where it comes from.
 *
 * @param instrument a checked row; an empty cell takes the default
 * @returns one a limit, always in the same order; percent of the tolerance, or times
 * Source: own choice, as above.
 * @example thresholdsOf({ adjustAt: 80 })[0] // { name: "adjustAt", value: 80, from: "instruments table", … }
 */
export function thresholdsOf(instrument: Partial<Pick<Instrument, keyof RecommendationThresholds>>): StatedThreshold[] {
  return (Object.keys(usualThresholds) as (keyof RecommendationThresholds)[]).map((name) => ({
    name,
    ...meanings[name],
    value: instrument[name] ?? usualThresholds[name],
    unit: name === "driftGrowthMax" ? "times" : "% of tolerance",
    from: instrument[name] === undefined ? "default, own choice" : "instruments table",
  }));
}

/**
 * The same as numbers.
 *
 * @param stated of `thresholdsOf`
 * @returns value by name
 * Source: as above.
 * @example thresholdValues(thresholdsOf({})).adjustAt // 100
 */
export function thresholdValues(stated: readonly StatedThreshold[]): RecommendationThresholds {
  return Object.fromEntries(stated.map(({ name, value }) => [name, value])) as RecommendationThresholds;
}
