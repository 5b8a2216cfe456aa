import { type Loop, signalOfLength, spanOf } from "../loop.ts";
import type { Random } from "../random.ts";
import { type Kind, mostOfSpan } from "./kind.ts";

const sizes = [0.5, 10] as const;
const live = ["4-20 mA", "1-5 V"] as const;
const card = { signal: true, counts: true } as const;
const scaled = { signal: true, value: true } as const;
const valueAlone = { signal: false, card: false, counts: false, value: true } as const;
const repair = ["repair wiring or set-up"] as const;
const rescale = ["re-scale"] as const;

/** Errors of the input card and of the constants that the controller holds. */
export const controllerKinds: readonly Kind[] = [
  {
    id: "live zero read as dead zero",
    row: 1,
    stage: "input card",
    needs: { signals: live, reads: card, isRising: true },
    apply: ({ controller, design }) => {
      controller.cardSignal = { lower: 0, upper: design.signal.upper };
    },
    advice: [...repair, ...rescale],
    alike: ["low constant wrong"],
  },
  {
    id: "dead zero read as live zero",
    row: 2,
    stage: "input card",
    needs: { signals: ["0-20 mA"], reads: card, isRising: true },
    apply: ({ controller, design }) => {
      controller.cardSignal = { lower: 4, upper: design.signal.upper };
    },
    advice: [...repair, ...rescale],
    alike: ["low constant wrong"],
  },
  {
    id: "offset of card or common",
    row: 9,
    stage: "input card",
    needs: { reads: card },
    sizes,
    apply: ({ controller, design }, size, random) => {
      controller.cardOffset = random.sign() * signalOfLength(design, size * design.tolerance);
    },
    advice: [...repair],
  },
  {
    id: "shunt or card gain",
    row: 11,
    stage: "input card",
    needs: { reads: card, isRising: true },
    sizes: [1, 8],
    apply: ({ controller, design }, size, random) => {
      controller.cardGain = 1 + (random.sign() * signalOfLength(design, size * design.tolerance)) / design.signal.upper;
    },
    advice: [...repair],
    alike: ["shunted signal"],
  },
  {
    id: "low constant wrong",
    row: 3,
    stage: "scaling",
    needs: { reads: scaled },
    sizes,
    apply: (loop, size, random) => {
      loop.controller.value[endOfSignal(loop, "low")] += valueOfTolerances(loop, size * random.sign());
    },
    advice: rescale,
    alike: ["live zero read as dead zero"],
  },
  {
    id: "high constant wrong",
    row: 4,
    stage: "scaling",
    needs: { reads: scaled },
    sizes,
    apply: (loop, size, random) => {
      loop.controller.value[endOfSignal(loop, "high")] += valueOfTolerances(loop, size * random.sign());
    },
    advice: rescale,
    alike: ["raw full scale wrong"],
  },
  {
    id: "high constant wrong, value alone",
    row: 4,
    stage: "scaling",
    needs: { reads: valueAlone },
    sizes: [1.5, 10],
    apply: (loop, size, random) => {
      loop.controller.value[endOfSignal(loop, "high")] += valueOfTolerances(loop, size * random.sign());
    },
    advice: ["cannot be decided", ...rescale],
    isNameless: true,
  },
  {
    id: "raw full scale wrong",
    row: 5,
    stage: "scaling",
    needs: { reads: scaled, countsFromZero: true },
    apply: ({ controller, design }, _, random) => {
      controller.counts.upper = wrongFullScale(design.counts.upper, random);
    },
    advice: rescale,
    alike: ["high constant wrong"],
  },
  {
    id: "unit slip",
    row: 6,
    stage: "scaling",
    needs: { reads: scaled },
    apply: ({ controller, plan }, _, random) => {
      controller.factor = random.pick([25.4, 1 / 25.4, 10, 0.1, 1000, 0.001]);
      plan.decimals.value += Math.max(Math.ceil(-Math.log10(controller.factor)), 0);
    },
    advice: rescale,
    mayBeRefused: true,
  },
  {
    id: "constants exchanged",
    row: 7,
    stage: "scaling",
    needs: { reads: scaled },
    apply: ({ controller }) => {
      controller.value = { lower: controller.value.upper, upper: controller.value.lower };
    },
    advice: rescale,
  },
  {
    id: "value that stands still",
    row: 28,
    stage: "scaling",
    needs: { points: 5, reads: scaled },
    apply: ({ controller, design }, _, random) => {
      const shown = design.value.lower + random.between(0, 1) * (design.value.upper - design.value.lower);
      controller.clampLow = shown;
      controller.clampHigh = shown;
    },
    advice: [...rescale, ...repair, "cannot be decided"],
    alike: ["crossed channel", "current on a voltage input"],
    isAlwaysMended: true,
  },
  {
    id: "clamp in the controller",
    row: 28,
    stage: "scaling",
    needs: { points: 9, reads: scaled },
    apply: ({ controller, design }, _, random) => {
      const { lower, upper } = design.value;
      const limit = lower + random.between(0.5, 0.85) * (upper - lower);
      if (upper > lower) controller.clampHigh = limit;
      else controller.clampLow = limit;
    },
    advice: rescale,
    isAlwaysMended: true,
  },
  {
    id: "fraction cut off",
    row: 28,
    stage: "scaling",
    // Repeats show it: the value stands where the signal does not.
    needs: { points: 9, cycles: 2, reads: scaled },
    sizes: [1.5, 10],
    apply: (loop, size, random) => {
      const grid = Math.abs(valueOfTolerances(loop, size));
      const most = mostOfSpan * Math.abs(loop.design.value.upper - loop.design.value.lower);
      const decade = 10 ** Math.ceil(Math.log10(grid));
      // A whole number of units, tenths or tens; or whatever a division of whole counts leaves.
      loop.controller.grid = random.isTrue(0.5) && decade <= most ? decade : grid;
    },
    advice: rescale,
  },
];

function valueOfTolerances({ design }: Loop, tolerances: number): number {
  return ((tolerances * design.tolerance) / spanOf(design)) * (design.value.upper - design.value.lower);
}

/** End of the range that the low or the high signal stands for. */
function endOfSignal({ design: { signal } }: Loop, end: "low" | "high"): "lower" | "upper" {
  return (end === "low") === signal.upper > signal.lower ? "lower" : "upper";
}

function wrongFullScale(right: number, random: Random): number {
  return right === 4000 ? 4095 : random.pick([32767, right === 27648 ? 32000 : 27648]);
}
