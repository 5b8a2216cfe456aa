import { expect, it } from "vitest";
import { howMany } from "../../how-many.ts";
import { forecastsOf } from "./forecasts.ts";
import { chanceOfAtMost, fewestByChance } from "./shares.ts";

const loops = howMany(100, 200);

/** At 94 % other seeds break a limit with less than 10⁻⁶; half of the band would hold two thirds, and pass once in 100. */
it.each([6, 3].slice(0, howMany(1, 2)))(
  "the band of %i records holds the next result, and the interval the drift",
  (visits) => {
    const fewest = fewestByChance(loops, 0.94);
    const { held, missed } = forecastsOf(visits, loops, 11_000_000);
    expect(held.count).toBeGreaterThanOrEqual(fewest);
    expect(loops - missed.count).toBeGreaterThanOrEqual(fewestByChance(loops, 0.92));
    expect(1 - chanceOfAtMost(fewest - 1, loops, 2 / 3)).toBeLessThan(0.01);
  },
);
