import { adjustment } from "./adjustment.ts";
import type { Check } from "./check-context.ts";
import { dates } from "./dates.ts";
import { instrumentPairs } from "./instrument-pairs.ts";
import { keys } from "./keys.ts";
import { limits } from "./limits.ts";
import { loopChecks } from "./loop-checks.ts";
import { measured } from "./measured.ts";
import { people } from "./people.ts";
import { phaseOrder } from "./phase-order.ts";
import { points } from "./points.ts";
import { range } from "./range.ts";
import { readingCount } from "./reading-count.ts";
import { readingOrder } from "./reading-order.ts";
import { references } from "./references.ts";
import { standards } from "./standards.ts";
import { target } from "./target.ts";
import { trips } from "./trips.ts";
import { wiring } from "./wiring.ts";

/** What the tables have to say of each other, in the order in which a reader would want to mend it. */
export const everyCheck: readonly Check[] = [
  keys,
  references,
  readingCount,
  range,
  limits,
  instrumentPairs,
  measured,
  readingOrder,
  phaseOrder,
  points,
  trips,
  target,
  standards,
  adjustment,
  dates,
  people,
  wiring,
  loopChecks,
];
