import type { SwitchedOutput } from "../loop.ts";
import type { Kind } from "./kind.ts";

const repair = ["repair wiring or set-up"] as const;

/** Faults of a switched output beside an analog signal that is right. */
export const switchKinds: readonly Kind[] = [
  {
    id: "set point taught wrong",
    row: 27,
    stage: "switched output",
    needs: { reads: { signal: true } },
    sizes: [0.5, 10],
    apply: change((output, size, sign) => {
      output.shift = sign * size * output.tolerance;
    }),
    advice: ["re-teach"],
  },
  {
    id: "differential too wide",
    row: null,
    stage: "switched output",
    needs: { reads: { signal: true } },
    sizes: [1.5, 4],
    apply: change((output, size) => {
      output.differential = (size * output.differentialMaxPercent * output.setPoint) / 100;
    }),
    advice: ["re-teach", ...repair, "replace"],
    isAlwaysMended: true,
  },
  {
    id: "chatter",
    row: null,
    stage: "switched output",
    needs: { reads: { signal: true } },
    apply: change((output) => {
      output.chatters = true;
    }),
    advice: [...repair, "re-teach", "cannot be decided"],
    isAlwaysMended: true,
  },
  {
    id: "PNP on a sourcing input",
    row: 32,
    stage: "switched output",
    needs: { reads: { signal: true } },
    apply: change((output) => {
      output.isMismatched = true;
    }),
    advice: [...repair],
    isAlwaysMended: true,
  },
];

function change(how: (output: SwitchedOutput, size: number, sign: 1 | -1) => void): NonNullable<Kind["apply"]> {
  return (loop, size, random) => {
    const { design } = loop;
    const output: SwitchedOutput = {
      setPoint: design.range.lower + random.between(0.3, 0.7) * (design.range.upper - design.range.lower),
      tolerance: design.tolerance,
      differentialMaxPercent: 5,
      shift: 0,
      differential: 0,
      noise: loop.noise.white / 2,
      chatters: false,
      isMismatched: false,
    };
    output.differential = 0.02 * output.setPoint;
    how(output, size, random.sign());
    loop.output = output;
  };
}
