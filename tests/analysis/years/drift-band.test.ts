import { describe, expect, test } from "vitest";
import { driftBand } from "../../../src/analysis/years/drift-band.ts";
import { type DriftLine, driftLine, predictedError } from "../../../src/analysis/years/drift-line.ts";

describe("the band that is drawn", () => {
  const line = driftLine([0, 1, 2, 3.2].map((error, year) => ({ day: 365.25 * year, error }))) as DriftLine;

  test("goes from the first day evenly to a third beyond the meeting", () => {
    const crossing = { day: 3653, limit: "upper", isAlready: false } as const;
    const band = driftBand(line, crossing, 1096);
    expect(band).toHaveLength(41);
    expect(band[0]?.day).toBe(0);
    expect(band.at(-1)?.day).toBe(3653 + Math.ceil(1096 / 3));
    expect(band[7]).toEqual({ day: band[7]?.day, ...predictedError(line, band[7]?.day ?? 0) });
  });

  test("without a meeting as far ahead as the records reach back", () => {
    expect(driftBand(line, undefined, 1096).at(-1)?.day).toBe(2 * 1096);
  });
});
