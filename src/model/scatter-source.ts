const betweenCycles = "differences between cycles";
const notMeasured = `${betweenCycles}, not measured: taken as large as`;
const notShown = `${betweenCycles}, not shown: taken as`;

/** How what cycles differ by was had: measured; or taken from the scatter, as one cycle or several that agree leave it open. */
export type CyclesKnown = "measured" | "not measured" | "not shown";

/** The scatter whose size is taken and, where cycles agree, how many: it is taken over the root of their number. */
export type TakenLike = { scatter: string; agreeing?: number | undefined };

/**
 * How a budget names what cycles differ by: as it was measured, or as it is taken where it was not, or not shown.
 *
 * @param cycles that the mean is of
 * @param taken what stands for the differences; left out where they were measured
 * @returns the source of that line of a budget
 * Source: own choice.
 * @example cyclesSource(2, { scatter: "the repeatability", agreeing: 2 }) // "differences between cycles, not shown: taken
 *   as the repeatability/√2, mean of 2"
 */
export function cyclesSource(cycles: number, taken?: TakenLike): string {
  if (taken === undefined) return `${betweenCycles}, mean of ${cycles}`;
  const { scatter, agreeing } = taken;
  const name = agreeing === undefined ? `${notMeasured} ${scatter}` : `${notShown} ${scatter}/√${agreeing}`;
  return `${name}${cycles === 1 ? "" : `, mean of ${cycles}`}`;
}

/**
 * Whether a line of a budget is what cycles differ by, and how that was had.
 *
 * @param source of the line
 * @returns undefined for any other line
 * Source: `cyclesSource`.
 * @example cyclesOf("differences between cycles, mean of 3") // "measured"
 */
export function cyclesOf(source: string): CyclesKnown | undefined {
  if (!source.startsWith(betweenCycles)) return undefined;
  if (source.startsWith(notShown)) return "not shown";
  return source.startsWith(notMeasured) ? "not measured" : "measured";
}
