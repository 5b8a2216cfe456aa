import * as vega from "vega";
import type { DrawingData } from "./drawing-data.ts";
import type { Mark } from "./scene.ts";
import type { Scene } from "./scene-svg.ts";
import { strictLogger } from "./strict-logger.ts";
import { textWidth } from "./text-width.ts";

declare module "vega" {
  /** Missing in vega's own types. */
  export const textMetrics: { width: typeof textWidth };
  interface View {
    scenegraph(): { root: Mark };
  }
}

const refusingLoader = {
  load: refuseToLoad,
  sanitize: refuseToLoad,
  http: refuseToLoad,
  file: refuseToLoad,
  options: {},
} as unknown as vega.Loader;

/**
 * Draws by vega itself what the walker does not know. Each drawing is a fresh view, for a view that is fed again
 * remembers the order of its axis ticks.
 */
export async function drawByVega(runtime: vega.Runtime, drawing: Wanted): Promise<Scene> {
  const view = viewOf(runtime, drawing);
  try {
    await view.runAsync();
    const padding = view.padding() as { left: number; top: number };
    const [left = 0, top = 0] = view.origin();
    return { root: view.scenegraph().root, size: drawing.size, origin: [padding.left + left, padding.top + top] };
  } finally {
    view.finalize();
  }
}

/** What a view is fed. */
type Wanted = Pick<DrawingData, "size" | "signals" | "data">;

/** A view with the data of one drawing; in tests it writes its own SVG. */
export function viewOf(runtime: vega.Runtime, { size, signals, data }: Wanted): vega.View {
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

function refuseToLoad(address: unknown): never {
  throw new Error(`draw: a chart loads nothing, and was asked for ${String(address)}`);
}
