import type { SetPointShares } from "../../../src/verdict/switching/set-point-shares.ts";
import type { SwitchedFound, SwitchedState } from "../../../src/verdict/switching/switched-state.ts";
import { frozen } from "../../charts/frozen.ts";

const shares = (consistentWith: SetPointShares["consistentWith"]): SetPointShares => ({
  analogErrorDistance: 20,
  shift: -20,
  shiftUncertainty: 1,
  teach: -1,
  teachUncertainty: 1.5,
  consistentWith,
});

/** Q1 at 700 mm: fine, or 21 mm nearer than that by the share that is named; null for one that nothing tells. */
export function switchedState(
  because?: SetPointShares["consistentWith"] | null,
  changes: Partial<SwitchedFound> = {},
): SwitchedState {
  const isOff = because !== undefined;
  const statement = isOff ? "fail" : "pass";
  return frozen({
    output: { tag: "LT-1", output: "Q1", setPoint: 700, polarity: "PNP", controllerInput: "sourcing" },
    wiring: { inputMatch: null, statement: null },
    found: {
      trips: [1, 2, 3].map((cycle) => ({ direction: "approach", cycle, reference: 700, isCounted: true })),
      decimals: 1,
      setPoint: { error: isOff ? -21 : 0.1, expandedUncertainty: 1, decision: { statement } },
      shares: because ? shares(because) : null,
      differential: null,
      repeat: null,
      chatter: null,
      statement,
      notDetermined: {},
      ...changes,
    },
  });
}
