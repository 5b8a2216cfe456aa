const betweenCycles = "differences between cycles";
const notMeasured = `${betweenCycles}, not measured: taken as large as`;

/**
 * How a budget names what cycles differ by: as it was measured, or as it is taken where it was not.
 *
 * @param cycles that the mean is of
 * @param assumedLike the scatter whose size is taken; left out where the differences were measured
 * @returns the source of that line of a budget
 * Source: own choice.
 * @example cyclesSource(1, "repeatability") // "differences between cycles, not measured: taken as large as repeatability"
 */
export function cyclesSource(cycles: number, assumedLike?: string): string {
  if (assumedLike === undefined) return `${betweenCycles}, mean of ${cycles}`;
  return `${notMeasured} ${assumedLike}${cycles === 1 ? "" : `, mean of ${cycles}`}`;
}

/**
 * Whether a line of a budget is what cycles differ by, and whether that was measured.
 *
 * @param source of the line
 * @returns undefined for any other line
 * Source: `cyclesSource`.
 * @example cyclesOf("differences between cycles, mean of 3") // "measured"
 */
export function cyclesOf(source: string): "measured" | "assumed" | undefined {
  if (!source.startsWith(betweenCycles)) return undefined;
  return source.startsWith(notMeasured) ? "assumed" : "measured";
}
