import { combineBudget, contribution, type Distribution } from "../../analysis/uncertainty/budget.ts";
import { type Comparison, type PublishedExample, printedTo } from "./published-example.ts";

type Line = readonly [value: number, sensitivity: number, degreesOfFreedom: number, shape: "N" | "R" | "X"];

/** A budget of EA-4/02 with what the document makes of it. */
type BudgetExample = {
  name: string;
  lines: readonly Line[];
  /** u, and the place of its last printed digit. */
  combined: readonly [number, number];
  /** k, and how far it may be off: S11 and S10 print k of rounded contributions. */
  factor: readonly [number, number];
};

const unlimited = Number.POSITIVE_INFINITY;
const rectangular = (value: number, sensitivity = 1): Line => [value, sensitivity, unlimited, "R"];
const normal = (value: number, degreesOfFreedom = unlimited): Line => [value, 1, degreesOfFreedom, "N"];

/** Rounded contributions as printed; the special shape of S4 ("X") takes no part in its k. */
export const budgets: readonly BudgetExample[] = [
  {
    name: "S2, weight of 10 kg",
    lines: [normal(22.5), rectangular(8.95), normal(14.4, 2), rectangular(5.77), rectangular(5.77)],
    combined: [29.3, 0.1],
    factor: [2.08, 0.005],
  },
  {
    name: "S4, gauge block of 50 mm",
    lines: [
      ...[normal(15), rectangular(17.3), normal(5.37, 4), rectangular(18.5), rectangular(0.0289, -575)],
      ...([[0.236e-6, 5e7, unlimited, "X"], rectangular(3.87, -1)] as const),
    ],
    combined: [36.4, 0.1],
    factor: [2, 0.005],
  },
  {
    name: "S9, multimeter",
    lines: [[0.001, -1, unlimited, "N"], rectangular(0.029), rectangular(0.0064, -1)],
    combined: [0.03, 0.001],
    factor: [1.65, 0.005],
  },
  {
    name: "S11, temperature block",
    lines: [
      ...[normal(15), normal(10), rectangular(23), rectangular(29, -1)],
      ...[rectangular(58), rectangular(144), rectangular(29), rectangular(17)],
    ],
    combined: [164, 1],
    factor: [1.81, 0.015],
  },
  {
    name: "S12, water meter",
    lines: [normal(6e-4, 2), normal(6.8e-4)],
    combined: [9.1e-4, 1e-5],
    factor: [2.28, 0.005],
  },
];

const shapes: Readonly<Record<Line[3], Distribution>> = { N: "normal", R: "rectangular", X: "triangular" };

function compared({ lines, combined, factor }: BudgetExample): readonly Comparison[] {
  const budget = combineBudget(
    lines.map(([value, sensitivity, degreesOfFreedom, shape]) =>
      contribution({
        ...{ source: "EA-4/02", value, unit: "1", distribution: shapes[shape], divisor: 1 },
        ...{ sensitivity, degreesOfFreedom },
      }),
    ),
  );
  return [
    { figure: "u", computed: budget.combinedUncertainty, published: combined[0], allowed: printedTo(combined[1]) },
    { figure: "k", computed: budget.coverageFactor, published: factor[0], allowed: factor[1] },
  ];
}

/** Budgets whose k comes from Student's t, from one and from two rectangular contributions. */
export const budgetExamples: readonly PublishedExample[] = budgets.map((example) => ({
  name: `budget of ${example.name}`,
  source: `EA-4/02, ${example.name.split(",")[0]}`,
  compare: () => compared(example),
}));
