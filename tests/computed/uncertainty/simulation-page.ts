import type { Coverage } from "./coverage.ts";
import type { FalseAlarm } from "./false-alarms.ts";
import type { Forecast } from "./forecasts.ts";
import type { GlobalRisk } from "./global-risk.ts";
import { percent, type Share, withInterval } from "./shares.ts";
import type { RiskBin } from "./stated-risk.ts";

export type Simulation = {
  date: string;
  seed: number;
  coverage: readonly Coverage[];
  /** Of readings outwards only, and out and back. */
  risks: Readonly<Record<"out" | "both", readonly RiskBin[]>>;
  globalRisks: readonly GlobalRisk[];
  forecasts: readonly Forecast[];
  falseAlarms: readonly FalseAlarm[];
};

const asked = { least: 0.94, most: 0.97, worst: 0.9 };

/** The summary of a whole run, as Markdown. */
export function simulationPage(simulation: Simulation): string {
  return [
    headOf(simulation),
    coveragePart(simulation),
    riskPart(simulation),
    globalPart(simulation),
    yearsPart(simulation),
    alarmsPart(simulation),
    notes,
  ].join("\n");
}

function headOf({ date, seed }: Simulation): string {
  return `# Uncertainty, simulated

Made by \`npm run simulate\` on ${date}; do not edit. Seeds from ${seed} on.

A straight sensor over 2000 mm on 4 to 20 mA is read out and back. Zero, span and the errors of the two standards are
drawn anew for each record, those of the standards from their own certificates (0.6 mm + 0.01 %, 4 µA + 0.01 %, k = 2).
The scatter of a reading is 1 mm; the cycle effect shifts each cycle by 1 mm (standard deviation); growing noise goes from
0.2 mm to 1.8 mm; the coarse display has steps of 0.01 mA, 1.25 mm, over a noise of 0.1 mm; the random walk moves 0.5 mm
a reading. The generator (\`tests/computed/uncertainty\`) knows the true error of each place and nothing of how the program
reckons. In brackets: the 95 % interval of a share by what chance makes of so many records (C. J. Clopper, E. S. Pearson
1934; of test points of one record, which share their standards, ± 1.96 standard errors of the mean over the records).
`;
}

function coveragePart({ coverage }: Simulation): string {
  const row = (one: Coverage) => {
    const { disturbance, cycles, points } = one.design;
    const said = [one.cyclesDiffer, one.ownScatter, one.notStraight].map((share) =>
      share ? percent(share.share) : "–",
    );
    const held = [withInterval(one.points), percent(one.worstPoint), withInterval(one.zero), withInterval(one.span)];
    return `| ${[disturbance, cycles, points, ...held, ...said, one.meanExpandedUncertainty.toFixed(2)].join(" | ")} |`;
  };
  return `## How often U holds

**Asked**: U covers the true error of a test point in 94 to 97 % of records, at the test point where it holds least in 90 %
or more; zero and span ± 2u likewise. ${coverage[0]?.records ?? 0} records a row.

![Coverage of U at the test points, of the zero and of the span error, a row a design](uncertainty-simulated.svg)

| readings | cycles | points | U holds, % | at the worst place, % | zero ± 2u, % | span ± 2u, % | said: cycles differ, % | said: own scatter, % | said: not straight, % | mean U, mm |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${coverage.map(row).join("\n")}

Beyond what is asked by more than chance:

${outsideOf(coverage)}
`;
}

/** A line for each design of which an interval lies wholly outside what is asked. */
function outsideOf(coverage: readonly Coverage[]): string {
  const lines = coverage.flatMap(({ design, points, worstPoint, zero, span }) => {
    const found = [
      ...[["U", points] as const, ["zero", zero] as const, ["span", span] as const].flatMap(([name, share]) => {
        if (share.high < asked.least) return [`${name} holds in too few (${percent(share.share)} %)`];
        return share.low > asked.most ? [`${name} holds in more (${percent(share.share)} %)`] : [];
      }),
      ...(worstPoint < asked.worst ? [`at the worst place ${percent(worstPoint)} %`] : []),
    ];
    const { disturbance, cycles, points: count } = design;
    const of = `${disturbance}, ${cycles === 1 ? "1 cycle" : `${cycles} cycles`}, ${count} points`;
    return found.length === 0 ? [] : [`- ${of}: ${found.join("; ")}.`];
  });
  return lines.length === 0 ? "- none." : lines.join("\n");
}

function riskPart({ risks }: Simulation): string {
  const row = ({ from, to, stated, outside }: RiskBin) =>
    `| ${[`${100 * from} to ${100 * to} %`, outside.of, percent(stated), withInterval(outside)].join(" | ")} |`;
  const table = (bins: readonly RiskBin[]) => `| stated risk | test points | mean stated, % | outside the tolerance, % |
| --- | --- | --- | --- |
${bins.map(row).join("\n")}`;
  return `## The stated risk, and what is so

The zero of each sensor is drawn flat over ± 12 mm, far more than the tolerance of ± 5 mm, five cycles, five points; of each
record one test point counts. Read outwards only, what is stated is what is so:

![What is stated and what is so, with the intervals of chance, about the diagonal](uncertainty-simulated-risk.svg)

${table(risks.out)}

Read out and back, the risk of a test point is that of its worse direction. Here both directions are as true as each other,
and the worse of the two is the one that noise has moved outwards: what is stated is on the safe side, as it is meant to be.

${table(risks.both)}
`;
}

function globalPart({ globalRisks }: Simulation): string {
  const row = (one: GlobalRisk) => {
    const { rule, disturbance, cycles, passed } = one;
    const name =
      rule.name.endsWith("guard band") && rule.name !== "managed guard band"
        ? `${rule.name}, ${rule.guardFactor} U`
        : rule.name;
    const share = (found: Share, said: number) => [withInterval(found, 2), percent(said, 2)];
    const parts = [...share(one.falseAccept, one.statedFalseAccept), ...share(one.falseReject, one.statedFalseReject)];
    return `| ${[name, disturbance, cycles, one.ratio.toFixed(1), passed.of, percent(passed.share), ...parts].join(" | ")} |`;
  };
  return `## The risks over all loops, and what comes of them

The zero of each sensor is drawn from a normal distribution about the middle of the tolerance, of a standard deviation of
0.7 of it; five points. Each loop is calibrated and judged; of all of them some pass though the zero is outside, and some
do not though it is inside. Beside it what the records say of such loops when they are told how many were found in
tolerance, in the mean of 200; as that number is known from these loops only, so is what they say. A guard band of 0 U
judges the means of the directions by the tolerance itself; simple acceptance judges every reading, here quiet ones
(0.1 mm). A non-binary rule passes without condition inside the guard band, and loops are found in tolerance with one too.

| rule | readings | cycles | T/U | loops | passed, % | false accept, % | said, % | false reject, % | said, % |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${globalRisks.map(row).join("\n")}
`;
}

function yearsPart({ forecasts }: Simulation): string {
  const row = ({ visits, held, missed, missedAtLeading }: Forecast) =>
    `| ${[visits, held.of, ...[held, missed, missedAtLeading].map((share) => withInterval(share))].join(" | ")} |`;
  return `## Over the years

Loops that drift by up to 1 mm a year, calibrated each year with standards that were calibrated anew; three cycles, five
points. The 95 % prediction band of the next result at one test point, and the 95 % interval of its drift a year. The
leading test point is the one whose forecast meets a limit first: of five it is the one that seems to drift most, and its
interval misses what is so more often.

| records | loops | the band holds the next result, % | the interval misses the drift, % | at the leading test point, % |
| --- | --- | --- | --- | --- |
${forecasts.map(row).join("\n")}
`;
}

function alarmsPart({ falseAlarms }: Simulation): string {
  const row = ({ test, design, nominal, alarms }: FalseAlarm) =>
    `| ${[test, design.disturbance, design.cycles, alarms.of, withInterval(alarms, 2), percent(nominal, nominal < 0.001 ? 3 : 0)].join(" | ")} |`;
  return `## False alarms of tests

How often a test speaks where what it looks for is not there; eleven points. How often something is found on healthy loops,
with all tests together, is counted in [advice-judged.md](advice-judged.md).

| what is said | readings | cycles | records | said, % | nominal, % |
| --- | --- | --- | --- | --- | --- |
${falseAlarms.map(row).join("\n")}
`;
}

const notes = `## What it shows, and what it cannot

- **One cycle cannot show what cycles differ by.** The budget takes it as large as the scatter, and says that it is
  assumed: a cycle effect of that size holds, a greater one does not, and white noise is held in more than 97 %, the zero
  in nearly all records. No rule for one cycle holds both within 94 to 97 %: readings of one cycle look the same with and
  without an effect.
- **Several cycles that are not shown to differ** may differ nevertheless: of two cycles of a cycle effect a third agrees, as
  those of white noise do. The zero takes a difference of s/√m for m of them, a budget takes none
  ([uncertainty.md](uncertainty.md)): a cycle effect as large as the scatter s then holds as asked, and where there is none
  the zero of two and three cycles holds in more than 97 %.
- **One cycle of growing noise** has at each point the scatter that the sizes of the residuals show there, where they are
  shown to grow ("own scatter"); else one for the whole range, which what is assumed of the cycles makes wide enough.
- **Growing noise** counts point by point in the tests for straightness and for slopes of cycles where the scatter is shown
  to change along the range. Two cycles do not always show it, and one scatter for all then speaks more often than at 5 %.
- **A wild reading** is sought about a robust line, whose residuals are not quite those of the test, and by the sizes of the
  others at its place where these are shown to change along the range; what a record says of one has to matter beside the
  tolerance too, and here it had not.
- **A coarse display** hides the scatter: each step counts as a rectangle, whole, at every test point, while the true error
  lies anywhere within the step, so that U holds in more.
- **A tolerance on a step of the display** passes errors up to half a step beyond it, which no risk takes into account: the
  tolerances of these loops lie between two steps.
- **A random walk** cannot be held by any budget of independent readings. From two cycles on the record says that the
  cycles differ, mostly; with one cycle nothing tells it, and only what is assumed of the cycles holds a short one.
- A certificate that does not state U = a + b·L counts at both ends of the span, which then holds in more than 97 %.
`;
