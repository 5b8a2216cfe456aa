import { candidateFigures } from "./figures/candidate-figures.ts";
import { curveFigures } from "./figures/curve-figures.ts";
import { decisionFigures } from "./figures/decision-figures.ts";
import { errorFigures } from "./figures/error-figures.ts";
import type { FigureDefinition } from "./figures/figure-definition.ts";
import { historyFigures } from "./figures/history-figures.ts";
import { impactFigures } from "./figures/impact-figures.ts";
import { lineFigures } from "./figures/line-figures.ts";
import { loopFigures } from "./figures/loop-figures.ts";
import { reteachFigures } from "./figures/reteach-figures.ts";
import { soundFigures } from "./figures/sound-figures.ts";
import { stageFigures } from "./figures/stage-figures.ts";
import { switchingFigures } from "./figures/switching-figures.ts";
import { uncertaintyFigures } from "./figures/uncertainty-figures.ts";

export type { FigureDefinition } from "./figures/figure-definition.ts";

/** Every figure of a record by its subject. One meaning a word, one formula a figure. */
export const figureSubjects = Object.freeze([
  { subject: "Errors", figures: errorFigures },
  { subject: "Fitted line", figures: lineFigures },
  { subject: "Error curve", figures: curveFigures },
  { subject: "Uncertainty", figures: uncertaintyFigures },
  { subject: "Decision", figures: decisionFigures },
  { subject: "Stages of the loop", figures: stageFigures },
  { subject: "Re-teach and re-scale", figures: reteachFigures },
  { subject: "Found out of tolerance", figures: impactFigures },
  { subject: "Over the years", figures: historyFigures },
  { subject: "Replacement fit", figures: candidateFigures },
  { subject: "Sound in air", figures: soundFigures },
  { subject: "Switched outputs", figures: switchingFigures },
  { subject: "Loop and set points", figures: loopFigures },
] as const);

export type FigureKey = (typeof figureSubjects)[number]["figures"][number]["key"];

/** All of them; "from memory" in a source marks what was not read again. */
export const figureDefinitions: readonly (FigureDefinition & { key: FigureKey })[] = figureSubjects.flatMap(
  ({ figures }): readonly (FigureDefinition & { key: FigureKey })[] => figures,
);

const definitionByKey: ReadonlyMap<string, FigureDefinition> = new Map(
  figureDefinitions.map((definition) => [definition.key, definition]),
);

/**
 * What a figure is.
 *
 * @param key one of the keys above
 * @returns its definition
 * @throws TypeError for a key that is none
 * Source: own choice.
 * @example figureDefinition("zeroError").name // "Zero error"
 */
export function figureDefinition(key: FigureKey): FigureDefinition {
  const definition = definitionByKey.get(key);
  if (definition === undefined) throw new TypeError(`figureDefinition: there is no figure ${key}`);
  return definition;
}
