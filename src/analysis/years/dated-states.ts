/** One calibration of a loop, with what is known of each of its phases; a phase that was not measured is null. */
export type DatedRecord<Phase> = {
  /** As in `dayNumber`. */
  day: number;
  adjustment: string | null;
  asFound: Phase | null;
  asLeft: Phase | null;
};

/** What one phase says of the loop on a day. */
export type DatedState<Phase> = { day: number; phase: Phase };

/**
 * Whether a calibration changed the loop, so that its error afterwards is no longer the one from before.
 *
 * @param record with what it says of an adjustment, and its phases
 * @returns true for a re-teach, re-scale, repair or replacement; also where nothing is said and the loop was read once
 *   more as left, for a loop that nobody touched is not read twice
 * Source: ILAC-G24:2022 / OIML D 10, 6.3: adjustments break the record of drift; what counts as silence is own choice.
 * @example isAdjusted({ adjustment: "none", asLeft: null }) // false
 */
export function isAdjusted({ adjustment, asLeft }: Pick<DatedRecord<unknown>, "adjustment" | "asLeft">): boolean {
  return adjustment === null ? asLeft !== null : adjustment !== "none";
}

/**
 * The state in which a calibration left the loop.
 *
 * @param record with its phases
 * @returns the as-left phase, or the as-found one where nothing was adjusted; null where it was adjusted and not read again
 * Source: own choice, as `isAdjusted`.
 * @example leftState({ adjustment: "none", asFound: "a", asLeft: null }) // "a"
 */
export function leftState<Phase>(record: Omit<DatedRecord<Phase>, "day">): Phase | null {
  return isAdjusted(record) ? record.asLeft : (record.asFound ?? record.asLeft);
}

/**
 * The states since the last adjustment, one for each record: the as-left of the adjustment, then as found each time.
 *
 * @param records of one loop, oldest first
 * @returns states in the order of the records; a phase that was not measured is passed over
 * Source: ILAC-G24:2022 / OIML D 10, 6.3.
 * @example statesSinceAdjustment([{ day: 0, adjustment: "re-teach", asFound: "a", asLeft: "b" },
 *   { day: 365, adjustment: "none", asFound: "c", asLeft: null }]).map(({ phase }) => phase) // ["b", "c"]
 */
export function statesSinceAdjustment<Phase>(records: readonly DatedRecord<Phase>[]): readonly DatedState<Phase>[] {
  const last = records.findLastIndex(isAdjusted);
  return records.slice(Math.max(last, 0)).flatMap((record, index) => {
    const phase = index === 0 ? leftState(record) : (record.asFound ?? record.asLeft);
    return phase === null ? [] : [{ day: record.day, phase }];
  });
}
