import { defaultLocale } from "vega-format";
import type { Scale } from "vega-scale";
import { isDate, lerp, span, toDate, toNumber } from "vega-util";

/** How numbers and days are written on an axis. */
export const locale = defaultLocale();

/** What the expressions of a chart call as `this`, with the scales of one drawing. */
export type ChartFunctions = typeof base & { scales: Record<string, Scale> };

const base = {
  isValid: (value: unknown) => value !== undefined && value !== null && !Number.isNaN(value),
  isDate,
  toDate: (value: unknown) => toDate(value),
  toNumber,
  lerp,
  span,
  __bandwidth: (scale: Scale | undefined) => scale?.bandwidth?.() ?? 0,
  utcFormat: (value: unknown, specifier: string) =>
    value === null ? "null" : locale.utcFormat(specifier)(value as number),
  range(this: { scales: Record<string, Scale> }, name: string) {
    return this.scales[name]?.range() ?? [];
  },
};

export function chartFunctions(): ChartFunctions {
  return { ...base, scales: {} };
}
