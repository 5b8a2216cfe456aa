import * as vega from "vega";
import type { CompiledChart } from "./compiled-chart.ts";
import { strictLogger } from "./strict-logger.ts";
import { type SvgRoot, withRoot } from "./svg-root.ts";
import { textWidth } from "./text-width.ts";

declare module "vega" {
  /** Missing in vega's own types. */
  export const textMetrics: { width: typeof textWidth };
}

export type Row = Readonly<Record<string, string | number>>;
export type Size = Readonly<{ width: number; height: number }>;

/** Everything that differs from one drawing of a specification to the next. */
export type DrawingData = SvgRoot & {
  size: Size;
  signals: Readonly<Record<string, string | number | readonly (string | number)[]>>;
  data: Readonly<Record<string, readonly Row[]>>;
};

/** A picture and its words: a sentence that says what it shows, how to read it, and what it would say aloud. */
export type Drawing = { svg: string; title: string; caption: string; description: string };

const refusingLoader = {
  load: refuseToLoad,
  sanitize: refuseToLoad,
  http: refuseToLoad,
  file: refuseToLoad,
  options: {},
} as unknown as vega.Loader;

/**
 * How a chart is drawn. Each drawing is a fresh view, for a view that is fed again remembers the order of its axis ticks.
 * A series that some records do not have is named in `mayBeEmpty`; it must shape no axis.
 */
export function createDrawing(
  { runtime, series }: CompiledChart,
  mayBeEmpty: readonly string[] = [],
): (drawing: DrawingData) => Promise<string> {
  const required = series.filter((name) => !mayBeEmpty.includes(name));
  return async (drawing) => {
    requireRows(required, drawing.data);
    return withRoot(await svgOf(viewOf(runtime, drawing)), drawing);
  };
}

/** An empty series would leave a chart that looks complete, and infinite extents. */
function requireRows(required: readonly string[], data: DrawingData["data"]): void {
  for (const name of required) {
    if ((data[name] ?? []).length === 0) throw new RangeError(`draw: requires at least one row of ${name}`);
  }
}

function viewOf(runtime: vega.Runtime, { size, signals, data }: DrawingData): vega.View {
  vega.textMetrics.width = textWidth;
  const view = new vega.View(runtime, { renderer: "none", loader: refusingLoader, logger: strictLogger });
  view.width(size.width).height(size.height);
  for (const [name, value] of Object.entries(signals)) view.signal(name, structuredClone(value));
  for (const [name, rows] of Object.entries(data)) {
    view.data(
      name,
      rows.map((row) => ({ ...row })),
    );
  }
  return view;
}

async function svgOf(view: vega.View): Promise<string> {
  vega.resetSVGDefIds();
  try {
    return await view.toSVG();
  } finally {
    view.finalize();
  }
}

function refuseToLoad(address: unknown): never {
  throw new Error(`draw: a chart loads nothing, and was asked for ${String(address)}`);
}
