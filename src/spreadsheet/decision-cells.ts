import type { CalibrationRecord, JudgedPointRecord } from "../record/record-schema.ts";
import type { Cell } from "./cell.ts";
import type { BudgetCells } from "./coverage-cells.ts";
import type { LoopCells } from "./loop-cells.ts";

/** What a decision about one test point rests on: addresses of its row, of its budget and of what the loop is meant to do. */
export type DecisionBasis = {
  rule: CalibrationRecord["decisionRule"]["name"];
  /** Address of the guard factor. */
  factor: string;
  loop: LoopCells;
  budget: BudgetCells;
  point: JudgedPointRecord;
  /** Whether both directions have as many readings of as many cycles: else the record has the budget of one of them alone. */
  isReadAlike: boolean;
  /** Address of a column in the row that is written. */
  at: (key: DecisionKey) => string;
  /** Addresses of the point on the sheet of figures. */
  figure: (key: "reference" | "up" | "down") => string;
};

export const decisionHeadings = {
  number: ["test point", "its number"],
  reference: ["reference", "mean"],
  direction: ["direction", "the worse"],
  error: ["error", "of its mean"],
  low: ["tolerance", "lower"],
  high: ["tolerance", "upper"],
  expanded: ["U", "Uncertainty"],
  ratio: ["T/U", "test uncertainty ratio"],
  guard: ["guard band", "w"],
  acceptLow: ["acceptance", "lower"],
  acceptHigh: ["acceptance", "upper"],
  statement: ["statement", "by the rule"],
  decides: ["decides", "1 yes, 0 no: value"],
  risk: ["specific risk", "of either direction"],
  shared: ["shared", "u of both directions"],
  own: ["own", "u of each direction"],
} as const;
export type DecisionKey = keyof typeof decisionHeadings;

/** The cells of one test point; the direction whose mean lies farther beyond the tolerance, or nearer to it, stands for it. */
export function decisionCells(basis: DecisionBasis): Partial<Record<DecisionKey, Cell>> {
  const { point, at, figure, loop, budget, isReadAlike } = basis;
  const { up, down } = point;
  const inDistance = (of: "up" | "down") => `${figure(of)}*${loop.span}/100`;
  const beyond = (of: "up" | "down") => `MAX(${inDistance(of)}-${at("high")},${at("low")}-${inDistance(of)})`;
  const worse =
    up !== null && down !== null && isReadAlike
      ? `IF(${beyond("up")}>=${beyond("down")},"rising","falling")`
      : undefined;
  const error = `IF(${at("direction")}="rising",${inDistance("up")},${inDistance("down")})`;
  return {
    reference: { formula: figure("reference"), is: point.reference },
    direction: worse === undefined ? point.direction : { formula: worse, is: point.direction },
    error: { formula: error, is: point.errorDistance },
    low: { formula: `-${loop.tolerance("minus", at("reference"))}`, is: point.toleranceLow },
    high: { formula: loop.tolerance("plus", at("reference")), is: point.toleranceHigh },
    expanded: { formula: budget.expanded, is: point.expandedUncertainty },
    ...ruleCells({ ...basis, rounding: loop.rounding }, point),
    statement: { formula: statement({ ...basis, rounding: loop.rounding }), is: point.statement },
    ...riskCells(basis),
  };
}

/** What a rule needs: where error, limits and U of the row stand, and what is allowed for rounding. */
export type RuleBasis = Pick<DecisionBasis, "rule" | "factor" | "at" | "budget"> & { rounding: string };

type RuleFigures = Pick<JudgedPointRecord, "testUncertaintyRatio" | "guardBand" | "acceptanceLow" | "acceptanceHigh">;

/** T/U, guard band and acceptance limits of one error. */
export function ruleCells(basis: RuleBasis, is: RuleFigures): Partial<Record<DecisionKey, Cell>> {
  const { at } = basis;
  return {
    ratio: { formula: `(${at("high")}-${at("low")})/(2*${at("expanded")})`, is: is.testUncertaintyRatio },
    guard: { formula: guardBand(basis), is: is.guardBand },
    acceptLow: acceptance(basis, `${at("low")}+${at("guard")}`, is.acceptanceLow),
    acceptHigh: acceptance(basis, `${at("high")}-${at("guard")}`, is.acceptanceHigh),
  };
}

function guardBand({ rule, factor, at, budget }: RuleBasis): string {
  if (rule === "simple acceptance") return "0";
  if (rule !== "managed guard band") return `${factor}*${at("expanded")}`;
  const differ = `ABS(${at("low")}+${at("high")})>1E-9*(${at("high")}-${at("low")})`;
  const isNotTwo = `${budget.factor}<1.995,${budget.factor}>=2.055,${at("ratio")}<0.6`;
  const managed = `${at("expanded")}*MAX(0,1.04-EXP(0.38*LN(${at("ratio")})-0.54))`;
  return `IF(OR(${differ},${isNotTwo}),${at("expanded")},${managed})`;
}

/** Whether the guard band leaves no error that can pass. */
function leavesNoZone({ at, rounding }: RuleBasis): string {
  return `AND(${at("guard")}>0,(${at("high")}-${at("low")})/2<=${at("guard")}+${rounding})`;
}

function acceptance(basis: RuleBasis, formula: string, is: number | null): Cell {
  return { formula: `IF(${leavesNoZone(basis)},"none",${formula})`, is: is ?? "none" };
}

/** The word of one error by the rule. */
export function statement(basis: RuleBasis): string {
  const { at, rounding, rule } = basis;
  const isWithin = (moved: string) =>
    `AND(${at("error")}>=${at("low")}-(${moved})-${rounding},${at("error")}<=${at("high")}+(${moved})+${rounding})`;
  const conditional = `IF(${isWithin("0")},"conditional pass",IF(${isWithin(at("guard"))},"conditional fail","fail"))`;
  const otherwise = rule === "non-binary guard band" ? conditional : `"fail"`;
  const undecided = `IF(${isWithin(at("guard"))},"cannot be decided","fail")`;
  return `IF(${leavesNoZone(basis)},${undecided},IF(${isWithin(`-${at("guard")}`)},"pass",${otherwise}))`;
}

/** Steps of a fiftieth from −8.76 to 8.76 standard deviations of what both directions share. */
const steps = { width: 0.02, half: 438 };

/**
 * The risk that the true error of either direction lies outside: two normal tails where one was read; where both were,
 * 1 − ∫ φ(z) · Π (1 − p(z)) dz over what they share, by the trapezoid rule. Few degrees of freedom widen u by k/2.
 */
function riskCells(basis: DecisionBasis): Partial<Record<DecisionKey, Cell>> {
  const { point, at, budget, figure, loop } = basis;
  const widened = `MAX(1,${budget.factor}/2)`;
  const tails = (error: string, u: string) => normalTails(at, error, u);
  const risk = (formula: string) => ({ formula, is: point.specificRisk });
  if (point.up === null || point.down === null) {
    return { risk: risk(tails(at("error"), `(${budget.combined}*${widened})`)) };
  }
  const { sharing } = point.budget;
  if (sharing === undefined || !basis.isReadAlike) return { risk: point.specificRisk };
  const z = `(ROW($1:$${2 * steps.half + 1})-${steps.half + 1})*${steps.width}`;
  const outside = (of: "up" | "down") => `(${tails(`${figure(of)}*${loop.span}/100+${z}*${at("shared")}`, at("own"))})`;
  const [up, down] = [outside("up"), outside("down")];
  const density = `${steps.width}*EXP(0-(${z})^2/2)/SQRT(2*PI())`;
  return {
    risk: risk(`SUMPRODUCT(${density}*(${up}+${down}*(1-${up})))`),
    shared: { formula: `${widened}*${sharedOf(point, basis)}` },
    own: {
      formula: `MAX(${widened}*SQRT(MAX(0,${budget.combined}^2-(${at("shared")}/${widened})^2)),0.001*${at("shared")})`,
    },
  };
}

/** Chance that a normal error lies outside the limits of its row, as the sum of two tails. */
export function normalTails(at: (key: "low" | "high") => string, error: string, u: string): string {
  return `NORMSDIST((${error}-${at("high")})/${u})+NORMSDIST((${at("low")}-(${error}))/${u})`;
}

/** What all readings share, a value of the record; and what the cycles differ by, over their number. */
function sharedOf({ budget: { sharing } }: JudgedPointRecord, { budget }: DecisionBasis): string {
  return `SQRT(${sharing?.all ?? 0}^2+${budget.ofCycles}^2)`;
}
