import type { SourceFile } from "./source-files.ts";

/** What is written in one place and read from there everywhere else. */
type SaidOnce = { what: string; pattern: RegExp; homes: readonly string[] };

export const saidOnce: readonly SaidOnce[] = [
  {
    what: "the span of a range is `spanOf`",
    pattern: /rangeUpper - (?:\w+\.)*rangeLower/gu,
    homes: ["src/model/range.ts"],
  },
  {
    what: "the phases of a record are `phaseNames`, and those that it has `phasesOf`",
    pattern: /\["asFound", "asLeft"\]|"asFound" \| "asLeft"/gu,
    homes: ["src/record/phase-name.ts"],
  },
  {
    what: "a phase in words is `phaseWords`, `phaseTitles` or `phaseInWords`",
    pattern: /"as found" : "as left"|"As found" : "As left"/gu,
    homes: [],
  },
  {
    what: "how far a stored decimal may lie beyond a limit is the business of `isInside`",
    pattern: /\(1 [-+] 1e-\d+\)|(?:slack|storedDigits|roundingShare) = 1e-12/gu,
    homes: ["src/units/is-inside.ts", "src/analysis/uncertainty/budget.ts"],
  },
  {
    what: "the stage between two quantities is `stageBetween`",
    pattern: /"signal(?:AtCard)? counts"/gu,
    homes: ["src/model/loop-stages.ts"],
  },
  {
    what: "a test point is as wide as `gapShare` says",
    pattern: /\b0\.02 \* span|\(2 \/ 100\)/gu,
    homes: ["src/model/test-points.ts"],
  },
];

/** Files that say again what is said elsewhere. */
export function saidAgain(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap(({ path, text }) =>
    saidOnce
      .filter(({ homes }) => !homes.includes(path))
      .flatMap(({ what, pattern }) => [...text.matchAll(pattern)].map(([found]) => `${path}: ${found}; ${what}`)),
  );
}
