import type { SvgRoot } from "./svg-root.ts";

export type Row = Readonly<Record<string, string | number>>;
export type Size = Readonly<{ width: number; height: number }>;

/** Everything that differs from one drawing of a specification to the next. */
export type DrawingData = SvgRoot & {
  size: Size;
  signals: Readonly<Record<string, string | number | readonly (string | number)[]>>;
  data: Readonly<Record<string, readonly Row[]>>;
};
