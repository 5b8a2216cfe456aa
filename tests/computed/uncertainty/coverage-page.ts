import type { Coverage } from "./coverage.ts";
import type { GlobalRisk } from "./global-risk.ts";
import type { RiskBin } from "./stated-risk.ts";

function riskRow({ from, to, points, stated, outside }: RiskBin): string {
  return `| ${[`${100 * from} to ${100 * to} %`, points, percent(stated), percent(outside)].join(" | ")} |`;
}

function globalRow(one: GlobalRisk): string {
  const { rule, disturbance, cycles, records } = one;
  const name = rule.name === "guard band" ? `guard band of ${rule.guardFactor} U` : rule.name;
  const parts = [one.found, one.falseAccept, one.statedFalseAccept, one.falseReject, one.statedFalseReject];
  return `| ${[name, disturbance, cycles, records, ...parts.map(percent)].join(" | ")} |`;
}

const percent = (part: number) => (100 * part).toFixed(1);

type Run = { date: string; seed: number; risks?: readonly RiskBin[]; globalRisks?: readonly GlobalRisk[] };

/** The summary of a whole run, as Markdown. */
export function coveragePage(found: readonly Coverage[], { date, seed, risks = [], globalRisks = [] }: Run): string {
  const records = found[0]?.records ?? 0;
  const row = (one: Coverage) => {
    const { disturbance, cycles, points } = one.design;
    const parts = [one.points, one.worstPoint, one.zero, one.span, one.cyclesDiffer, one.ownScatter].map(percent);
    const straight = one.notStraight === null ? "–" : percent(one.notStraight);
    return `| ${[disturbance, cycles, points, ...parts, straight, one.meanExpandedUncertainty.toFixed(2)].join(" | ")} |`;
  };
  return `# Uncertainty, simulated

Made by \`npm run simulate\` on ${date}; do not edit. ${records} records a row, seeds from ${seed} on.

A straight sensor over 2000 mm on 4 to 20 mA is read out and back. Zero, span and the errors of the two standards are
drawn anew for each record, those of the standards from their own certificates (0.6 mm + 0.01 %, 4 µA + 0.01 %, k = 2).
The scatter of a reading is 1 mm; the cycle effect shifts each cycle by 1 mm (standard deviation); growing noise goes from
0.2 mm to 1.8 mm; the coarse display has steps of 0.01 mA, 1.25 mm, over a noise of 0.1 mm; the random walk moves 0.5 mm
a reading. The generator (\`tests/computed/uncertainty\`) knows the true error of each place and nothing of how the program
reckons.

**Asked**: U covers the true error of a test point in 94 to 97 % of records, at the test point where it holds least in 90 %
or more; zero and span ± 2u likewise. The standard deviation of a figure of one row by chance is
${(100 * Math.sqrt((0.95 * 0.05) / records)).toFixed(1)} % for zero and span, and less for the points.

![Coverage of U at the test points, of the zero and of the span error, a row a design](uncertainty-simulated.svg)

| readings | cycles | points | U holds, % | at the worst place, % | zero ± 2u, % | span ± 2u, % | said: cycles differ, % | said: own scatter, % | said: not straight, % | mean U, mm |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${found.map(row).join("\n")}

## The stated risk, and what is so

The zero of each sensor is drawn flat over ± 12 mm, far more than the tolerance of ± 5 mm, three cycles, five points. The
risk of a test point is that of its worse direction. Here both directions are as true as each other, and the worse of the
two is the one that noise has moved outwards: what is stated is on the safe side, as it is meant to be.

| stated risk | test points | mean stated, % | outside the tolerance, % |
| --- | --- | --- | --- |
${risks.map(riskRow).join("\n")}

## The risks over all loops, and what comes of them

The zero of each sensor is drawn from a normal distribution about the middle of the tolerance, of a standard deviation of
half of it; five points. Each loop is calibrated and judged; of all of them some pass though the zero is outside, and some
do not though it is inside. Beside it what the records say of such loops when they are told how many were found in
tolerance, in the mean. The standard deviation of a part by chance is ${(100 * Math.sqrt(0.25 / (globalRisks[0]?.records ?? 1))).toFixed(1)} % at most. A guard band of 0 U judges the means of the
directions by the tolerance itself; simple acceptance judges every reading, so that noise rejects many.

| rule | readings | cycles | loops | passed, % | false accept, % | said, % | false reject, % | said, % |
| --- | --- | --- | --- | --- | --- | --- | --- | --- |
${globalRisks.map(globalRow).join("\n")}

How often the band of a forecast holds the next result is in \`tests/properties/prediction-bands.test.ts\`, with the limits
of chance.

## What it shows, and what it cannot

- With white noise "cycles differ", "own scatter" and "not straight" are false alarms of tests at 5 %.
- **One cycle cannot show what cycles differ by.** The budget takes it as large as the scatter, and says that it is
  assumed: a cycle effect of that size holds, a greater one does not, and white noise is held in more than 97 %, the zero
  in nearly all records. No rule for one cycle holds both within 94 to 97 %: readings of one cycle look the same with and
  without an effect. Two cycles of a cycle effect are not always told from white noise either.
- **One cycle of growing noise** has at each point the scatter that the sizes of the residuals show there, where they are
  shown to grow ("own scatter"); else one for the whole range, which what is assumed of the cycles makes wide enough.
- **A random walk** cannot be held by any budget of independent readings. From two cycles on the record says that the
  cycles differ, mostly; with one cycle nothing tells it, and only what is assumed of the cycles holds a short one.
- A certificate that does not state U = a + b·L counts at both ends of the span, which then holds in more than 97 %.
`;
}

const [width, rowHeight, left, top] = [760, 18, 230, 40];
const [least, most] = [0.8, 1];

/** The same as a picture: a row a design, a mark a figure, the band that is asked for. */
export function coveragePicture(found: readonly Coverage[]): string {
  const height = top + found.length * rowHeight + 30;
  const at = (part: number) => left + ((Math.max(least, part) - least) / (most - least)) * (width - left - 20);
  const rows = found.flatMap((one, index) => {
    const y = top + index * rowHeight + rowHeight / 2;
    const { disturbance, cycles, points } = one.design;
    return [
      `<text x="${left - 10}" y="${y + 4}" text-anchor="end">${disturbance}, ${cycles} × ${points}</text>`,
      `<circle cx="${at(one.points).toFixed(1)}" cy="${y}" r="4" fill="#1f4e79"/>`,
      `<path d="M${(at(one.zero) - 4).toFixed(1)} ${y - 4}h8v8h-8z" fill="none" stroke="#8a4b08" stroke-width="1.5"/>`,
      `<path d="M${at(one.span).toFixed(1)} ${y - 5}l5 9h-10z" fill="none" stroke="#2e6b34" stroke-width="1.5"/>`,
    ];
  });
  const ticks = [0.8, 0.85, 0.9, 0.95, 1].map(
    (part) =>
      `<text x="${at(part)}" y="${height - 8}" text-anchor="middle">${part === least ? "≤ " : ""}${100 * part} %</text>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    "<title>Coverage of U in simulated calibrations</title>",
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<rect x="${at(0.94)}" y="${top}" width="${at(0.97) - at(0.94)}" height="${found.length * rowHeight}" fill="#dfe8f0"/>`,
    `<text x="${left}" y="20">dot: U at the test points; square: zero ± 2u; triangle: span ± 2u; band: asked for</text>`,
    ...rows,
    ...ticks,
    "</svg>\n",
  ].join("\n");
}
