import type { YearRate } from "../record/register-form.ts";
import { createDrawing, type Drawing } from "./drawing/draw.ts";
import { rateChartSpec } from "./specs/rate-chart-spec.ts";

const draw = createDrawing(rateChartSpec);
/** Room for a dot with the words beside it, pixels. */
const widthOfYear = 72;
/** A chart of one year is still as wide as its title. */
const leastWidth = 470;

/** How many loops were found in tolerance, year by year; nothing where no record says. */
export async function rateChart(years: readonly YearRate[]): Promise<Drawing | undefined> {
  const last = years.at(-1);
  if (last === undefined) return undefined;
  const words = {
    title: `In ${last.year}, ${last.inTolerance} of ${last.of} were found in tolerance`,
    caption:
      "A dot is the part of the calibrations of a year whose loop was found in tolerance, with how many they were. " +
      "The bar is the two-sided 95 % interval of the rate (Clopper and Pearson).",
    description: years
      .map(({ year, inTolerance, of }) => `${year}: ${inTolerance} of ${of} found in tolerance`)
      .join("; "),
  };
  const svg = await draw({
    idPrefix: "rates",
    className: "chart rate-chart",
    title: words.title,
    description: words.description,
    size: { width: Math.max(leastWidth, widthOfYear * years.length), height: 280 },
    signals: {},
    data: {
      rates: years.map(({ year, inTolerance, of, interval }) => ({
        year: String(year),
        rate: (100 * inTolerance) / of,
        low: 100 * interval.low,
        high: 100 * interval.high,
        words: `${inTolerance} of ${of}`,
      })),
    },
  });
  return { svg, ...words };
}
