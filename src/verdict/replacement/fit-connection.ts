import type { Candidate, Instrument, Output } from "../../model/instrument.ts";
import { foldedRole, pinRoles } from "../../model/pin-roles.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * Whether the present cable fits a candidate: the same connector, and the same on each pin. Another one is never a
 * reason against a candidate, for a cable can be changed.
 *
 * @param candidate connector, pins
 * @param needs connector and pins of the loop, and the pins of its outputs
 * @returns a cell for each of the two that the loop states
 * Source: own choice.
 * @example fitConnection({ candidate: "A", connector: "M12, 5 pins" }, needs)[0].result // "fits", for the same words
 */
export function fitConnection(
  candidate: Candidate,
  { instrument, outputs }: Pick<LoopNeeds, "instrument" | "outputs">,
): readonly FitCell[] {
  return [...connectorCell(candidate, instrument), ...pinsCell(candidate, pinsOfLoop(instrument, outputs))];
}

/**
 * What the pins of a loop carry: the column pins of the instrument, and the pin of each output that is not in it.
 *
 * @param instrument a checked row
 * @param outputs of the tag
 * @returns a text such as "1 L+; 4 Q1"; empty where nothing is stated
 * Source: own choice.
 * @example pinsOfLoop({ pins: "1 L+; 2 signal" }, [{ tag: "LT-1", output: "Q1", setPoint: 1, pin: "4" }]) //
 *   "1 L+; 2 signal; 4 Q1"
 */
export function pinsOfLoop({ pins }: Pick<Instrument, "pins">, outputs: readonly Output[]): string {
  const known = pins === undefined ? undefined : pinRoles(pins);
  const others = outputs.flatMap(({ pin, output }) =>
    pin === undefined || known?.has(pin) || (pins !== undefined && known === undefined) ? [] : [`${pin} ${output}`],
  );
  return [...(pins === undefined ? [] : [pins]), ...others].join("; ");
}

function connectorCell(candidate: Candidate, instrument: Instrument): readonly FitCell[] {
  if (instrument.connector === undefined) return [];
  const question = { demand: "connector", needs: instrument.connector, offers: candidate.connector ?? notStated };
  if (candidate.connector === undefined) {
    return [{ ...question, result: "cannot be told", reason: "connector is not stated" }];
  }
  if (foldedRole(candidate.connector) === foldedRole(instrument.connector)) {
    return [{ ...question, result: "fits", reason: "the present cable plugs in" }];
  }
  return [{ ...question, result: "fits with a change", reason: "another cable, plug or adapter" }];
}

function pinsCell({ pins }: Candidate, loopPins: string): readonly FitCell[] {
  if (loopPins === "") return [];
  const question = { demand: "pins", needs: loopPins, offers: pins ?? notStated };
  if (pins === undefined) return [{ ...question, result: "cannot be told", reason: "pins is not stated" }];
  const [needed, offered] = [pinRoles(loopPins), pinRoles(pins)];
  if (needed === undefined || offered === undefined) {
    const reason = "the two cannot be compared: each is to read such as 1 L+; 2 signal; 3 0 V; 4 Q1";
    return [{ ...question, result: "cannot be told", reason }];
  }
  const absent = [...needed.values()].filter((role) => ![...offered.values()].includes(role));
  if (absent.length > 0) {
    return [{ ...question, result: "cannot be told", reason: `on none of its pins: ${absent.join(", ")}` }];
  }
  const moved = [...needed].flatMap(([pin, role]) =>
    offered.get(pin) === role ? [] : [moveWords(role, pin, offered)],
  );
  if (moved.length === 0) return [{ ...question, result: "fits", reason: "the same on each pin" }];
  return [{ ...question, result: "fits with a change", reason: `to be wired anew: ${moved.join(", ")}` }];
}

function moveWords(role: string, from: string, offered: ReadonlyMap<string, string>): string {
  const [to] = [...offered].find(([, one]) => one === role) ?? [];
  return `${role} from pin ${from} to pin ${to}`;
}
