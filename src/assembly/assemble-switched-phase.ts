import { type Figure, isDetermined, notDetermined } from "../analysis/figures/figure.ts";
import { analogErrorAt } from "../analysis/switching/analog-error-at.ts";
import { type SwitchBudgetBasis, switchBudget } from "../analysis/switching/switch-budget.ts";
import {
  type SwitchedOutput,
  switchedOutput,
  type TravelFigure,
  type TripMean,
} from "../analysis/switching/switched-output.ts";
import type { Trip } from "../model/calibration.ts";
import type { TableRow } from "../model/calibration-case.ts";
import type { Output } from "../model/instrument.ts";
import { isInTolerance, worstStatement } from "../model/statement.ts";
import type { PhaseRecord, Statement } from "../record/record-schema.ts";
import type { SwitchedPhaseRecord } from "../record/switching-schema.ts";
import type { DecisionRule } from "../verdict/decision/decision-rule.ts";
import { type JudgedSetPoint, judgeSetPoint } from "../verdict/switching/judge-set-point.ts";
import { judgeTravel } from "../verdict/switching/judge-travel.ts";
import { isToExplain, setPointShares } from "../verdict/switching/set-point-shares.ts";
import { statesContradiction } from "../verdict/switching/switching-function.ts";
import { orNull, type Reasons } from "./phase/assemble-figures.ts";
import { budgetRecord } from "./phase/assemble-points.ts";
import type { TypedResolution } from "./phase/typed-resolution.ts";

/** What a switched output is judged by: its row, the rule, the rows of the budget, the analog readings of the phase. */
export type SwitchContext = {
  output: Output;
  rule: DecisionRule;
  basis: Omit<SwitchBudgetBasis, "typedStep">;
  /** How finely the references were typed. */
  typed: TypedResolution;
  /** Span of the range, distance. */
  span: number;
  /** Undefined where no readings were taken in the phase. */
  phase: PhaseRecord | undefined;
};

type SetPoint = NonNullable<SwitchedPhaseRecord["setPoint"]>;

/**
 * One switched output in one phase as the record carries it; a figure that cannot be had is null, with its reason.
 *
 * @param trips of that output and phase, in the order of the table, at least one
 * @param context row of the output, rule, budget rows, analog readings
 * @returns trips, figures in distance and in percent of the operating distance, statements
 * Source: the figures' own files. The statement is the worst of those that could be made, and no pass where the set point
 *   was not measured in the direction in which it counts, or has no tolerance; chatter fails (own choice).
 * @example assembleSwitchedPhase(rows.trips, switchContext).statement // "pass"
 */
export function assembleSwitchedPhase(trips: readonly TableRow<Trip>[], context: SwitchContext): SwitchedPhaseRecord {
  const { output, typed } = context;
  const reasons: Reasons = {};
  const found = switchedOutput(trips.map(({ row }) => row));
  const judged = {
    differential: differentialOf(found, output, reasons),
    repeat: travelOf("repeat", orNull("repeat", found.repeat, reasons), output.repeatMax),
    chatter: chatterOf(found, reasons),
    setPoint: setPointOf(trips, found, context, reasons),
  };
  const { differential, repeat, chatter, setPoint } = judged;
  const contradiction = statesContradiction(trips.map(({ row }) => row).filter((_, index) => found.isCounted[index]));
  if (contradiction !== undefined) reasons.function = contradiction;
  const statement = worstStatement(
    [differential, repeat, chatter, setPoint?.decision].flatMap((part) => part?.statement ?? []),
  );
  return {
    trips: trips.map(({ row: { direction, cycle, reference }, line }, index) => ({
      row: line,
      direction,
      ...(cycle !== undefined && { cycle }),
      reference,
      isCounted: found.isCounted[index] === true,
    })),
    decimals: typed.decimals,
    operating: meanOf("operating", found.operating, reasons),
    release: meanOf("release", found.release, reasons),
    ...judged,
    shares: setPoint && orNull("shares", sharesOf(setPoint, context), reasons),
    statement: orNull("statement", statementOf(statement, setPoint, output, contradiction), reasons),
    notDetermined: reasons,
  };
}

/**
 * The set point is what an output is for: where it was not measured or has no tolerance, the rest may fail it and passes
 * nothing; nor do trips whose states contradict each other.
 */
function statementOf(
  worst: Statement | undefined,
  setPoint: SetPoint | null,
  { criticalDirection = "approach" }: Output,
  contradiction: string | undefined,
): Figure<Statement> {
  if (worst !== undefined && !isInTolerance(worst)) return worst;
  const isUnlimited = setPoint !== null && setPoint.decision === null;
  if (isUnlimited || contradiction !== undefined) return "cannot be decided";
  if (worst === undefined) return notDetermined("nothing could be judged");
  if (setPoint !== null) return worst;
  return notDetermined(`the set point was not measured on ${criticalDirection}, the direction in which it counts`);
}

function meanOf(name: string, figure: Figure<TripMean>, reasons: Reasons): SwitchedPhaseRecord["operating"] {
  const found = orNull(name, figure, reasons);
  return (
    found && { ...found, standardDeviation: orNull(`${name}.standardDeviation`, found.standardDeviation, reasons) }
  );
}

function differentialOf(found: SwitchedOutput, { differentialMax }: Output, reasons: Reasons) {
  const figure = orNull("differential", found.differential, reasons);
  if (figure === null) return null;
  const greatestOfOneCycle = orNull("differential.greatestOfOneCycle", figure.greatestOfOneCycle, reasons);
  return { ...figure, ...judgeTravel("differential", figure.percent, differentialMax), greatestOfOneCycle };
}

function travelOf(name: "repeat", figure: TravelFigure | null, limit: number | undefined) {
  return figure && { ...figure, ...judgeTravel(name, figure.percent, limit) };
}

function chatterOf({ chatter }: SwitchedOutput, reasons: Reasons): SwitchedPhaseRecord["chatter"] {
  const runs = orNull("chatter", chatter, reasons);
  return runs && { runs: [...runs], statement: runs.length === 0 ? "pass" : "fail" };
}

function setPointOf(
  trips: readonly TableRow<Trip>[],
  found: SwitchedOutput,
  { output, rule, basis, typed }: SwitchContext,
  reasons: Reasons,
): SetPoint | null {
  const { setPoint, setPointTolerance: tolerance, criticalDirection: direction = "approach" } = output;
  const switched = orNull("setPoint", direction === "approach" ? found.operating : found.release, reasons);
  if (switched === null) return null;
  const { budget, missing } = switchBudget({ ...basis, typedStep: typed.step }, switched);
  const error = switched.mean - setPoint;
  const distances = trips
    .filter(({ row }, index) => row.direction === direction && found.isCounted[index])
    .map(({ row }) => row.reference);
  const decision =
    tolerance === undefined
      ? notDetermined("no set_point_tolerance is stated")
      : decisionRecord(judgeSetPoint({ distances, error, setPoint, tolerance, budget, rule }));
  return {
    direction,
    error,
    budget: { ...budgetRecord(budget), missing: [...missing] },
    expandedUncertainty: budget.expandedUncertainty,
    coverageFactor: budget.coverageFactor,
    decision: orNull("setPoint.decision", decision, reasons),
  };
}

function decisionRecord({ acceptance, ...judged }: JudgedSetPoint): SetPoint["decision"] {
  return { ...judged, acceptanceLow: acceptance?.low ?? null, acceptanceHigh: acceptance?.high ?? null };
}

/** Only where there is something to explain, and the sensor's own analog value to explain it with. */
function sharesOf(
  found: SetPoint,
  { output, phase, span }: SwitchContext,
): Figure<NonNullable<SwitchedPhaseRecord["shares"]>> {
  const { error, expandedUncertainty, direction } = found;
  if (!isToExplain(found)) return notDetermined("the set point is where it should be");
  if (phase === undefined) return notDetermined("no readings were taken in this phase");
  if (phase.judged === "value") return notDetermined("only what the controller showed was read of the analog value");
  const analog = analogErrorAt(phase.points, output.setPoint, direction, span);
  return isDetermined(analog) ? setPointShares(error, expandedUncertainty, analog) : analog;
}
