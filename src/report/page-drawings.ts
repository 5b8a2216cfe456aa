import type { Drawing } from "../charts/drawing/draw.ts";
import type { HistoryDrawings } from "./parts/history.tsx";

/** The drawings of a page: the error picture in two widths, the others, and why one of them is missing. */
export type PageDrawings = {
  errorWide: Drawing | undefined;
  errorNarrow: Drawing | undefined;
  /** Sensor against controller, where controller values were read. */
  stages: readonly Drawing[];
  /** Before and after the best two constants; with and without the error of the air. */
  reteach?: Drawing | undefined;
  sound?: Drawing | undefined;
  /** Over the filed records, where there are any. */
  history?: HistoryDrawings | undefined;
  others: readonly Drawing[];
  absent: readonly string[];
};
