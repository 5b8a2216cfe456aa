import type { PhaseName } from "../record/phase-name.ts";
import type { Drawing, DrawingData } from "./drawing/draw.ts";

export const smallLegendWidth = 390;

/** What the charts of one phase have in common: two of them stand side by side on the page. */
export function smallChart(
  kind: string,
  name: PhaseName,
  { title, description }: Omit<Drawing, "svg">,
): Omit<DrawingData, "signals" | "data"> {
  const phase = name === "asFound" ? "as-found" : "as-left";
  return {
    idPrefix: `${kind}-${phase}`,
    className: `chart ${kind}-chart ${phase}`,
    title,
    description,
    size: { width: 470, height: 280 },
  };
}
