import { isFound, type Judged } from "./judge.ts";
import { kinds } from "./kinds/kinds.ts";
import type { Count, Score } from "./score.ts";

/** What stands above the tables. */
export type Heading = { date: string; first: number; last: number };

/** The page of what was judged, in Markdown. */
export function judgedPage(judged: readonly Judged[], score: Score, { date, first, last }: Heading): string {
  return [
    "# Advice, judged",
    "",
    `Made by \`npm run judge\` on ${date}; do not edit. Seeds ${first} to ${last}, ${judged.length} loops.`,
    "",
    "The loops come from a second generator (`tests/computed/loops`), a physical model that was written from the",
    "signatures of faults and not from the detectors. It knows what is so. Three in ten loops are healthy, four have one",
    "fault, two have two, one is a sensor of which nobody knows beforehand whether a re-teach will do. Faults are half to",
    "ten times the tolerance or have a size of their own; 3 to 21 points, 1 to 10 cycles. A loop is made again from its",
    "seed by `npm run judge -- --seed 51`.",
    "",
    "## The figures",
    "",
    ...table(["what", "asked", "found"], figureRows(score)),
    "",
    "'False pass': the record passes a loop that is outside by more than the expanded uncertainty of a test point.",
    "'Named': by its own name or by that of a fault that the same readings fit, where the fault puts the loop out.",
    "",
    "## A re-teach foretold, and done",
    "",
    "The sensor is taught on its own physics, at the ends of its range with the scatter of one reading, and read anew",
    "by the same plan; where the stated chance lies between 0.1 and 0.9, twenty times.",
    "",
    ...table(["foretold", "loops", "mean chance stated", "passed"], forecastRows(score)),
    "",
    "## One fault",
    "",
    ...table(
      ["fault", "loops", "advice right", "to be named", "named", "false 'replace'", "false pass", "what it was called"],
      kinds.map(({ id }) => kindRow(id, judged)),
    ),
    "",
    "## Two faults",
    "",
    ...table(
      ["faults", "loops", "advice right", "both named", "false 'replace'", "false pass", "what they were called"],
      pairRows(judged),
    ),
    "",
    "## What was wrong, the most harmful first",
    "",
    ...table(["what", "loops", "seeds"], wrongRows(judged)),
    "",
  ].join("\n");
}

function table(columns: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  return [columns, columns.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
}

const share = ({ of, right }: Count): string =>
  of === 0 ? "none asked" : `${((100 * right) / of).toFixed(1)} % (${right} of ${of})`;

/** The limits are those of the project's own evidence rules. */
function figureRows(score: Score): readonly (readonly string[])[] {
  return [
    ["the program broke", "0", String(score.broke)],
    ["false pass, as found", "0", String(score.falsePass)],
    ["false pass, as left", "0", String(score.falsePassAsLeft)],
    ["false 'replace'", "0", `${score.falseReplace} of ${score.replaces} said`],
    ["healthy loops without a finding", "≥ 99.8 %", share(score.healthyWithoutFinding)],
    ["healthy loops that pass", "", share(score.healthyPassed)],
    ["advice right, healthy", "≥ 97 %", share(score.adviceHealthy)],
    ["advice right, one fault", "≥ 97 %", share(score.adviceSingle)],
    ["advice right, two faults", "≥ 97 %", share(score.adviceDouble)],
    ["one fault: named", "≥ 98 %", share(score.singleNamed)],
    ["one fault: no finding that it does not bear out", "", share(score.singleWithoutStrange)],
    ["two faults: both named", "≥ 75 %", share(score.bothNamed)],
    ["two faults: one at least named", "", share(score.oneOfTwoNamed)],
    ["two faults: a cure for each among the steps", "", share(score.bothCured)],
  ];
}

function forecastRows({ bound, chances }: Score): readonly (readonly string[])[] {
  const bounds = [
    ["the best two constants would do: taught at the ends", bound.curableThatPass],
    ["the same: given those two constants", bound.curableThatPassAtBest],
    ["no two constants would do: taught at the ends", bound.notCurableThatPass],
  ] as const;
  const number = (value: number) => (Number.isNaN(value) ? "" : value.toFixed(2));
  return [
    ...bounds.map(([what, { of, right }]) => [what, String(of), "", number(right / of)]),
    ...chances.map(({ from, of, stated, passed }) => [
      `chance from ${from} to ${(from + 0.2).toFixed(1)}`,
      String(of),
      number(stated),
      number(passed),
    ]),
  ];
}

function kindRow(id: string, judged: readonly Judged[]): readonly string[] {
  const loops = judged.filter(({ made }) => made.family === "one fault" && made.faults[0]?.kind.id === id);
  const asked = loops.flatMap(({ naming }) => naming);
  return [
    id,
    String(loops.length),
    String(loops.filter(({ isAdviceRight }) => isAdviceRight).length),
    String(asked.length),
    String(asked.filter(isFound).length),
    ...harm(loops),
    calledAs(loops),
  ];
}

function pairRows(judged: readonly Judged[]): readonly (readonly string[])[] {
  const doubles = judged.filter(({ made }) => made.family === "two faults");
  const nameOf = ({ made }: Judged) => made.faults.map(({ kind }) => kind.id).join(" + ");
  return [...new Set(doubles.map(nameOf))].map((name) => {
    const loops = doubles.filter((one) => nameOf(one) === name);
    return [
      name,
      String(loops.length),
      String(loops.filter(({ isAdviceRight }) => isAdviceRight).length),
      String(loops.filter(({ naming }) => naming.length === 2 && naming.every(isFound)).length),
      ...harm(loops),
      calledAs(loops),
    ];
  });
}

function harm(loops: readonly Judged[]): readonly string[] {
  const count = (isWrong: (one: Judged) => boolean) => String(loops.filter(isWrong).length);
  return [count(({ isFalseReplace }) => isFalseReplace), count(({ isFalsePass }) => isFalsePass)];
}

/** The names of the record with how many of the loops have them, most first. */
function calledAs(loops: readonly Judged[]): string {
  const names = loops.flatMap(({ titles, isRefused, broke }) =>
    isRefused || broke !== null
      ? [isRefused ? "(refused)" : "(broke)"]
      : titles.length === 0
        ? ["(nothing)"]
        : [...new Set(titles)],
  );
  const counts = [...new Set(names)].map((name) => ({ name, times: names.filter((one) => one === name).length }));
  return counts
    .sort((first, second) => second.times - first.times)
    .map(({ name, times }) => `${name} ${times}`)
    .join("; ");
}

function wrongRows(judged: readonly Judged[]): readonly (readonly string[])[] {
  const kindsOf = ({ made }: Judged) => made.faults.map(({ kind }) => kind.id).join(" + ") || made.family;
  const wrongs = [
    ...judged.flatMap((one) =>
      one.broke === null ? [] : [[`0 the program broke (${one.broke})`, kindsOf(one), one] as const],
    ),
    ...judged.filter(({ isFalsePass }) => isFalsePass).map((one) => ["1 false pass", kindsOf(one), one] as const),
    ...judged
      .filter(({ isFalsePassAsLeft }) => isFalsePassAsLeft)
      .map((one) => ["2 false pass as left", kindsOf(one), one] as const),
    ...judged
      .filter(({ isFalseReplace }) => isFalseReplace)
      .map((one) => ["3 'replace' without need", kindsOf(one), one] as const),
    ...judged
      .filter(({ made, titles }) => made.family === "healthy" && titles.length > 0)
      .map((one) => ["4 finding in a healthy loop", one.titles.join("; "), one] as const),
    ...judged
      .filter(
        ({ isAdviceRight, isFalseReplace, broke, made }) =>
          !isAdviceRight && !isFalseReplace && broke === null && made.family !== "doubtful",
      )
      .map((one) => [`5 advice '${one.advice ?? "none: refused"}'`, kindsOf(one), one] as const),
  ];
  const groups = [...new Set(wrongs.map(([what, of]) => `${what}: ${of}`))];
  return groups.sort().map((group) => {
    const seeds = wrongs.filter(([what, of]) => `${what}: ${of}` === group).map(([, , one]) => one.made.seed);
    return [group.slice(2), String(seeds.length), seeds.slice(0, 8).join(", ")];
  });
}
