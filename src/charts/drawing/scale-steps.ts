import { type Scale, scale as scaleOf, tickCount, tickFormat, tickValues } from "vega-scale";
import { locale } from "./chart-functions.ts";
import type { Datum, Known } from "./chart-program.ts";

/** A scale with the domain and range that hold now: as vega does it, for the types that our charts have. */
export function configuredScale(before: unknown, type: string, known: Known): Scale {
  const { domain, range, nice, zero } = known;
  const scale = (before as Scale | undefined) ?? scaleOf(type)();
  for (const name of ["padding", "paddingInner", "paddingOuter"] as const) {
    if (known[name] !== undefined) scale[name]?.(known[name] as number);
  }
  if (domain !== undefined && domain !== null) {
    const hasZero = zero === true || (zero === undefined && type === "linear");
    scale.domain(hasZero ? withZero(domain as readonly number[]) : (domain as readonly unknown[]));
    if (type === "ordinal") scale.unknown(undefined);
    if (nice !== undefined && nice !== false) scale.nice?.((nice !== true && tickCount(scale, nice)) || null);
  }
  if (range !== undefined) scale.range(range as readonly unknown[]);
  return scale;
}

function withZero(domain: readonly number[]): readonly number[] {
  const own = domain.slice();
  const last = own.length - 1 || 1;
  if ((own[0] ?? 0) > 0) own[0] = 0;
  if ((own[last] ?? 0) < 0) own[last] = 0;
  return own;
}

/** The ticks of an axis as rows: value, label and where they lie in their order, from 0 to 1. */
export function ticksOf(scale: unknown, count: unknown, specifier: string | undefined): readonly Datum[] {
  const of = scale as Scale;
  const number = tickCount(of, count ?? 10);
  const label = tickFormat(locale, of, number, specifier);
  const values = tickValues(of, number);
  return values.map((value, index) => {
    return { index: index / (values.length - 1 || 1), tickIndex: index, value, label: label(value) };
  });
}
