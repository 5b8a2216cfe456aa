import { budgetExamples } from "./budget-examples.ts";
import { gumExamples } from "./gum-examples.ts";
import { lineExamples } from "./line-examples.ts";
import { nistExamples } from "./nist-examples.ts";
import { proofExamples } from "./proof-examples.ts";
import type { Comparison, PublishedExample, TextComparison } from "./published-example.ts";

const examples: readonly PublishedExample[] = [
  ...[...nistExamples, ...gumExamples, ...budgetExamples, ...lineExamples, ...proofExamples],
];

/** What came out of one example: its figure that came nearest to what is allowed, or went furthest beyond. */
export type ExampleResult = {
  name: string;
  source: string;
  figures: number;
  isPassed: boolean;
  worst: string;
  /** Of that figure: the greatest gap, as a number in the unit of the example, or in words. */
  gap: string;
};

/** Every published example, computed now by this very program. */
export function runSelfTest(all: readonly PublishedExample[] = examples): readonly ExampleResult[] {
  return all.map(({ name, source, compare }) => {
    const compared = foundBy(compare);
    const worst = compared.toSorted((one, other) => shareOf(other) - shareOf(one))[0];
    const isPassed = worst !== undefined && shareOf(worst) <= 1;
    return { name, source, figures: compared.length, isPassed, worst: worst?.figure ?? "", gap: gapOf(worst) };
  });
}

/** What throws has failed, and stops no other example. */
function foundBy(compare: PublishedExample["compare"]): readonly (Comparison | TextComparison)[] {
  try {
    return compare();
  } catch (fault) {
    return [{ figure: fault instanceof Error ? fault.message : String(fault), computed: "a fault", published: "none" }];
  }
}

/** How much of what is allowed is taken; beyond 1, and where there is no number at all, it is too much. */
function shareOf(one: Comparison | TextComparison): number {
  if (!("allowed" in one)) return one.computed === one.published ? 0 : Number.POSITIVE_INFINITY;
  const gap = Math.abs(one.computed - one.published);
  if (gap === 0) return 0;
  return Number.isFinite(gap) ? gap / one.allowed : Number.POSITIVE_INFINITY;
}

function gapOf(one: Comparison | TextComparison | undefined): string {
  if (one === undefined) return "nothing was compared";
  if (!("allowed" in one)) return one.computed === one.published ? "none" : `${one.computed} for ${one.published}`;
  const gap = Math.abs(one.computed - one.published);
  return gap === 0 ? "none" : `${gap.toPrecision(2)} of ${one.allowed.toPrecision(2)}`;
}
