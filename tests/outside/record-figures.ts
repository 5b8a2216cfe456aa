import { figureDefinitions } from "../../src/record/figure-definitions.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord, Shares } from "../../src/record/record-schema.ts";

/** One figure of a record, where it has it; `scale` is the span in the figure's unit, or 1 where it has none. */
export type RecordFigure = { value: number | string | null; scale: number };

type Figures = Map<string, RecordFigure>;
type Value = number | string | null | undefined;

const shareNames = [
  "sensor",
  "wiring",
  "inputCard",
  "scaling",
  "sensorAndWiring",
  "sensorAndInputCard",
  "inputCardAndScaling",
  "sensorToController",
] as const;

/** What a phase holds under a name that the definitions of figures know; the line and the points have scales of their own. */
const ofOwnScale: ReadonlySet<string> = new Set(["fit", "uncertainLine", "worst"]);
const isFigure = (name: string) =>
  !ofOwnScale.has(name) && figureDefinitions.some(({ fields }) => fields.some((field) => field.startsWith(`${name}.`)));

const isDistance: ReadonlySet<string> = new Set(["distance", "point"]);

/** Numbers and words below a figure, by their path; `row` says where in the table, and the other program has no table. */
function leavesOf(value: unknown, path: string): readonly (readonly [string, Value])[] {
  if (value === null || value === undefined || path.endsWith(".row")) return [];
  if (typeof value !== "object") return [[path, value as Value]];
  return Object.entries(value).flatMap(([name, part]) => leavesOf(part, `${path}.${name}`));
}

/** Every figure of one phase of a record by the name under which the other program prints it. */
export function recordFigures(
  { instrument }: CalibrationRecord,
  phase: PhaseRecord,
): ReadonlyMap<string, RecordFigure> {
  const span = instrument.rangeUpper - instrument.rangeLower;
  const output = outputSpan(instrument, phase.judged);
  const controller = outputSpan(instrument, "value");
  const figures: Figures = new Map();
  const add = (name: string, value: Value, scale: number) => figures.set(name, { value: value ?? null, scale });
  const addShares = (prefix: string, shares: Shares | undefined) => {
    for (const name of shareNames) add(`${prefix}.${name}`, shares?.[name], span);
  };

  add("judged", phase.judged, 1);
  for (const name of ["readings", "used", "leftOut", "points", "cycles"] as const) {
    add(`counted.${name}`, phase.counted[name], 1);
  }
  for (const [index, reading] of phase.readings.entries()) {
    const prefix = `readings.${index + 1}`;
    for (const name of ["indicated", "errorDistance", "loopErrorDistance", "toleranceLow", "toleranceHigh"] as const) {
      add(`${prefix}.${name}`, reading[name], span);
    }
    add(`${prefix}.errorSignal`, reading.errorSignal, output);
    add(`${prefix}.errorPercentSpan`, reading.errorPercentSpan, 100);
    add(`${prefix}.loopErrorValue`, reading.loopErrorValue, controller);
    addShares(`${prefix}.shares`, reading.shares);
  }

  const { fit } = phase;
  add("fit.n", fit?.n, 1);
  add("fit.slope", fit?.slope, output / span);
  add("fit.slopeStdError", fit?.slopeStdError, output / span);
  for (const name of ["intercept", "interceptStdError", "residualStdDev"] as const)
    add(`fit.${name}`, fit?.[name], output);
  add("fit.rSquared", fit?.rSquared, 1);
  for (const [name, value] of Object.entries(phase)) {
    if (!isFigure(name)) continue;
    for (const [path, leaf] of leavesOf(value, name)) {
      const last = path.slice(path.lastIndexOf(".") + 1);
      add(path, leaf, path.includes(".shares.") || isDistance.has(last) ? span : last === "value" ? controller : 100);
    }
  }
  for (const [name, value] of pointFigures("points", phase.points, span)) figures.set(name, value);
  for (const [name, value] of pointFigures("endPoints", phase.endPoints ?? [], span)) figures.set(name, value);
  for (const name of ["sensor", "wiring", "inputCard", "controller"] as const)
    add(`verdicts.${name}`, phase.verdicts[name], 1);
  add("verdict", phase.verdict, 1);
  return figures;
}

/** Each judged point; numbers without a unit are compared to 1e-12, as a probability has to be. */
function pointFigures(curve: string, points: readonly JudgedPointRecord[], span: number): Figures {
  const figures: Figures = new Map();
  for (const [index, point] of points.entries()) {
    const add = (name: string, value: Value, scale: number) =>
      figures.set(`${curve}.${index + 1}.${name}`, { value: value ?? null, scale });
    const { combinedUncertainty, effectiveDegreesOfFreedom } = point.budget;
    for (const name of ["point", "reference", "errorDistance", "toleranceLow", "toleranceHigh"] as const)
      add(name, point[name], span);
    for (const name of ["up", "down", "mean"] as const) add(name, point[name], 100);
    add("direction", point.direction, 1);
    add("combinedUncertainty", combinedUncertainty, 0);
    add("effectiveDegreesOfFreedom", effectiveDegreesOfFreedom, 0);
    add("coverageFactor", point.coverageFactor, 0);
    add("expandedUncertainty", point.expandedUncertainty, 0);
    for (const name of ["guardBand", "acceptanceLow", "acceptanceHigh"] as const) add(name, point[name], span);
    add("testUncertaintyRatio", point.testUncertaintyRatio, 0);
    add("specificRisk", point.specificRisk, 1);
    add("statement", point.statement, 1);
  }
  return figures;
}

function outputSpan(instrument: CalibrationRecord["instrument"], stage: PhaseRecord["judged"]): number {
  return Math.abs((instrument[`${stage}Upper`] ?? 1) - (instrument[`${stage}Lower`] ?? 0));
}
