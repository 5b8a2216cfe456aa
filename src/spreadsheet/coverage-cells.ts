import type { JudgedPointRecord } from "../record/record-schema.ts";
import type { Grid } from "./grid.ts";

/** Addresses of what a budget comes to. */
export type BudgetCells = {
  combined: string;
  factor: string;
  expanded: string;
  /** Standard uncertainty that the cycles differ by, over their number; "0" where they are not shown to differ. */
  ofCycles: string;
};

/** A budget of the record, and what it comes to. */
export type Budgeted = Pick<JudgedPointRecord, "coverageFactor" | "expandedUncertainty"> & {
  budget: Omit<JudgedPointRecord["budget"], "sharing">;
};

/** Where the lines of a budget stand: rows, and the letters of the columns that are summed. */
type Lines = { first: number; last: number };

/**
 * Combined uncertainty, effective degrees of freedom, coverage factor and U, below the lines of a budget.
 *
 * k as in EA-4/02 M:2022: 0.95·√3 where one rectangular contribution dominates, a trapezoid's where two do, else Student's
 * t at 95.45 % of the truncated degrees of freedom, the normal distribution's above 10⁴.
 */
export function coverageCells(grid: Grid, { first, last }: Lines, point: Budgeted): Omit<BudgetCells, "ofCycles"> {
  const { combinedUncertainty, effectiveDegreesOfFreedom } = point.budget;
  const put = (label: string, formula: string, is?: number | string, how = "") =>
    grid.at("G", grid.add([label, null, null, null, null, null, { formula, is }, null, how]));
  const column = (letter: string) => grid.range(letter, first, last);
  const squares = `SUMSQ(${column("G")})`;
  const combined = put("combined standard uncertainty", `SQRT(${squares})`, combinedUncertainty);
  const sum = column("K");
  const freedom = put(
    "effective degrees of freedom",
    `IF(SUM(${sum})=0,"unlimited",${combined}^4/SUM(${sum}))`,
    effectiveDegreesOfFreedom ?? "unlimited",
  );
  const one = put("greatest rectangular", `MAX(${column("J")})`);
  const two = put("second rectangular", first === last ? "0" : `LARGE(${column("J")},2)`);
  const restOfOne = put("all but the greatest", `SQRT(MAX(0,${squares}-${one}^2))`);
  const restOfTwo = put("all but these two", `SQRT(MAX(0,${squares}-${one}^2-${two}^2))`);
  const edge = put("edge of their trapezoid", `IF(${one}=0,0,(${one}-${two})/(${one}+${two}))`);
  const trapezoid = `IF(0.95<=2*${edge}/(1+${edge}),0.95*(1+${edge})/2,1-SQRT(0.05*(1-${edge}^2)))/SQRT((1+${edge}^2)/6)`;
  const student = `IF(ISTEXT(${freedom}),NORMSINV(0.97725),IF(${freedom}>10000,NORMSINV(0.97725),_xlfn.T.INV.2T(0.0455,INT(${freedom}*(1+1E-12)))))`;
  const dominates = `AND(${two}>0,${restOfTwo}<=MIN(${two},0.35*SQRT(${one}^2+${two}^2)))`;
  const k = `IF(AND(${one}>0,${restOfOne}<=0.3*${one}),0.95*SQRT(3),IF(${dominates},${trapezoid},${student}))`;
  const factor = put("coverage factor k", k, point.coverageFactor, `by ${point.budget.coverageBasis}, in the record`);
  const expanded = put("expanded uncertainty U", `${factor}*${combined}`, point.expandedUncertainty);
  return { combined, factor, expanded };
}
