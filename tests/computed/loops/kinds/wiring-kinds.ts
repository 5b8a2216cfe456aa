import { type Loop, signalOfLength, signalSpanOf, spanOf } from "../loop.ts";
import type { Kind } from "./kind.ts";

const repair = ["repair wiring or set-up"] as const;
const bothEnds = { signal: true, card: true, counts: true, value: true } as const;

/** Errors between the sensor's terminals and the card's. */
export const wiringKinds: readonly Kind[] = [
  {
    id: "leakage",
    row: 12,
    stage: "wiring",
    needs: { signals: ["4-20 mA"], reads: bothEnds },
    sizes: [0.5, 5],
    apply: leak,
    advice: repair,
    alike: ["offset of card or common"],
  },
  {
    id: "leakage, one meter",
    row: 12,
    stage: "wiring",
    needs: { signals: ["4-20 mA"], reads: { signal: true, card: false }, meterAt: "card" },
    sizes: [0.5, 5],
    apply: leak,
    advice: [...repair, "cannot be decided", "re-teach"],
    alike: ["zero shift", "lower end taught wrong", "both ends taught wrong"],
  },
  {
    id: "shunted signal",
    row: 11,
    stage: "wiring",
    needs: { signals: ["0-20 mA", "4-20 mA"], reads: bothEnds, isRising: true },
    sizes: [1, 8],
    apply: ({ wire, design }, size) => {
      wire.shunt = 1 - Math.abs(signalOfLength(design, size * design.tolerance)) / design.signal.upper;
    },
    advice: repair,
    alike: ["shunt or card gain"],
  },
  {
    id: "burden-limited top",
    row: 13,
    stage: "wiring",
    needs: { signals: ["4-20 mA"], points: 9, isRising: true, reads: { signal: true, card: false } },
    apply: ({ wire, design }, _, random) => {
      // Supply less what the sensor needs, over the resistance of the loop.
      wire.limit = design.signal.lower + random.between(0.5, 0.85) * signalSpanOf(design);
    },
    advice: repair,
    alike: ["fixed obstruction", "missed echo, held"],
    isAlwaysMended: true,
  },
  {
    id: "voltage output overloaded",
    row: 14,
    stage: "wiring",
    needs: { signals: ["0-10 V", "1-5 V"], isRising: true, reads: { signal: true } },
    sizes: [1, 8],
    apply: ({ wire, design }, size) => {
      wire.overload = 1 - signalOfLength(design, size * design.tolerance) / design.signal.upper;
    },
    advice: [...repair, "cannot be decided", "re-teach"],
    alike: ["upper end taught wrong", "both ends taught wrong", "shunt or card gain"],
  },
  {
    id: "shared 0 V",
    row: 9,
    stage: "wiring",
    needs: { signals: ["0-10 V", "1-5 V"], reads: bothEnds },
    sizes: [0.5, 10],
    apply: ({ wire, design }, size, random) => {
      wire.cardOffset = random.sign() * signalOfLength(design, size * design.tolerance);
    },
    advice: repair,
    alike: ["offset of card or common"],
  },
  {
    id: "open wire",
    row: 29,
    stage: "wiring",
    needs: { signals: ["4-20 mA", "0-20 mA"], reads: { signal: true } },
    apply: ({ wire }) => {
      wire.isOpen = true;
    },
    advice: repair,
    alike: ["current on a voltage input"],
    isAlwaysMended: true,
  },
  {
    id: "current on a voltage input",
    row: 30,
    stage: "input card",
    needs: { reads: { signal: true, counts: true } },
    apply: ({ controller, design }, _, random) => {
      const { lower, upper } = design.counts;
      controller.stuckAt = random.pick([Math.min(lower, 0), Math.min(Math.round(upper * 1.17), 32767)]);
    },
    advice: repair,
    alike: ["open wire", "clamp in the controller", "crossed channel"],
    isAlwaysMended: true,
  },
  {
    id: "crossed channel",
    row: 31,
    stage: "input card",
    needs: { points: 5, reads: { signal: true, value: true } },
    apply: ({ controller }) => {
      controller.isCrossed = true;
    },
    advice: repair,
    isAlwaysMended: true,
  },
];

function leak({ wire, design }: Loop, size: number): void {
  const milliamps = Math.abs(signalSpanOf(design)) * ((size * design.tolerance) / spanOf(design));
  // The size is what it makes at 4 mA, where it is greatest.
  wire.leakOhms = (1000 * (wire.supplyVolts - 0.004 * wire.loopOhms)) / milliamps;
}
