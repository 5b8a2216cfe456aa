/** How far the staircase goes at a step; factors without unit, months. */
export type StaircaseSettings = {
  /** Found within this part of the tolerance the interval is extended. */
  extendWithin: number;
  extendBy: number;
  shortenBy: number;
  /** Found in tolerance, but inside the guard band. */
  conditionalBy: number;
  leastMonths: number;
  mostMonths: number;
};

/** Own choice, printed beside each proposal. */
export const staircaseDefaults: Readonly<StaircaseSettings> = Object.freeze({
  extendWithin: 0.8,
  extendBy: 1.25,
  shortenBy: 0.7,
  conditionalBy: 0.85,
  leastMonths: 1,
  mostMonths: 60,
});

/** How a loop was found last. */
export type FoundState = "in tolerance" | "conditionally in tolerance" | "out of tolerance";

export type StaircaseProposal = {
  step: "extend" | "keep" | "shorten";
  factor: number;
  /** Interval times factor, not yet rounded down and held between the caps. */
  product: number;
  months: number;
  cap: "least" | "most" | null;
};

/**
 * The next interval by ILAC-G24 method 1, the staircase: longer where the loop was found well inside its tolerance,
 * shorter where it was found outside.
 *
 * @param intervalMonths now in force, above 0
 * @param found how the loop was found at the end of it
 * @param partOfTolerance that the worst test point used up, 1 on the limit; null where it has no tolerance
 * @param settings factors and caps; extendBy at least 1, the others above 0 and at most 1, caps in whole months
 * @returns whole months, rounded down and held between the caps
 * Source: ILAC-G24:2022 / OIML D 10, method 1 (automatic adjustment); factors and caps are own choice.
 * @example staircaseInterval(12, "in tolerance", 0.5, staircaseDefaults).months // 15
 */
export function staircaseInterval(
  intervalMonths: number,
  found: FoundState,
  partOfTolerance: number | null,
  settings: StaircaseSettings,
): StaircaseProposal {
  const factor = factorOf(found, partOfTolerance, settings);
  const product = intervalMonths * factor;
  const { leastMonths, mostMonths } = settings;
  // A product such as 100 × 0.29 is stored a little under the whole number that it is.
  const whole = Math.floor(product + 1e-9);
  const cap = whole < leastMonths ? "least" : whole > mostMonths ? "most" : null;
  return {
    step: factor > 1 ? "extend" : factor < 1 ? "shorten" : "keep",
    factor,
    product,
    months: Math.min(Math.max(whole, leastMonths), mostMonths),
    cap,
  };
}

function factorOf(found: FoundState, partOfTolerance: number | null, settings: StaircaseSettings): number {
  if (found === "out of tolerance") return settings.shortenBy;
  if (found === "conditionally in tolerance") return settings.conditionalBy;
  return partOfTolerance !== null && partOfTolerance <= settings.extendWithin ? settings.extendBy : 1;
}
