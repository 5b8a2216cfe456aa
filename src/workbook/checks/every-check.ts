import { adjustment } from "./adjustment.ts";
import { air } from "./air.ts";
import type { Check, ReadingsCheck } from "./check-context.ts";
import { controllerLimits } from "./controller-limits.ts";
import { dates } from "./dates.ts";
import { instrumentPairs } from "./instrument-pairs.ts";
import { keys } from "./keys.ts";
import { limits } from "./limits.ts";
import { loopChecks } from "./loop-checks.ts";
import { hasReadings, measured, saysSomething } from "./measured.ts";
import { people } from "./people.ts";
import { phaseOrder } from "./phase-order.ts";
import { points } from "./points.ts";
import { range } from "./range.ts";
import { readingCount } from "./reading-count.ts";
import { readingOrder } from "./reading-order.ts";
import { timesOfReadings } from "./reading-times.ts";
import { namesOfPlant, namesOfWork, readingsOfSome } from "./references.ts";
import { standards } from "./standards.ts";
import { target } from "./target.ts";
import { tripStates } from "./trip-states.ts";
import { trips } from "./trips.ts";
import { wiring } from "./wiring.ts";

/**
 * A check of the tables that are held, or of the readings of one calibration after the other. `byLine` where what is told
 * follows the rows of the table, and not the order in which the calibrations come in the table of readings; `ofMany` where
 * it looks at a calibration with too many of them too.
 */
export type CheckStep = { ofTables: Check } | { ofReadings: ReadingsCheck; byLine?: boolean; ofMany?: boolean };

/** What the tables have to say of each other, in the order in which a reader would want to mend it. */
export const everyCheck: readonly CheckStep[] = [
  { ofTables: keys },
  { ofTables: namesOfPlant },
  { ofReadings: readingsOfSome, ofMany: true },
  { ofTables: namesOfWork },
  { ofReadings: readingCount, ofMany: true },
  { ofTables: range },
  { ofTables: limits },
  { ofTables: air },
  { ofTables: instrumentPairs },
  { ofReadings: hasReadings, byLine: true },
  { ofReadings: saysSomething, byLine: true },
  { ofReadings: measured },
  { ofReadings: readingOrder },
  { ofReadings: phaseOrder },
  { ofReadings: timesOfReadings },
  { ofReadings: points },
  { ofTables: trips },
  { ofTables: tripStates },
  { ofTables: controllerLimits },
  { ofTables: target },
  { ofTables: standards },
  { ofReadings: adjustment, byLine: true },
  { ofTables: dates },
  { ofTables: people },
  { ofTables: wiring },
  { ofTables: loopChecks },
];
