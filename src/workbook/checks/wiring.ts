import { foldedRole, pinRoles, pinTwice } from "../../model/pin-roles.ts";
import type { DraftRow } from "../table-row.ts";
import type { Check, CheckContext } from "./check-context.ts";

/**
 * Connectors of up to five pins, as the trade assigns them: L+ on pin 1 with a brown wire, 0 V on pin 3 with a blue one.
 * Source: IEC 60947-5-2, its table of connections; from memory, and common practice.
 */
const commonly = [
  { pin: "1", role: "L+", names: /^(?:l\+|\+u?b?|\+?24vdc?|\+24v|v\+|supply\+?|vcc)$/u },
  { pin: "3", role: "0 V", names: /^(?:0vd?c?|l-|l\u2212|-|gnd|ground|m|common)$/u },
] as const;
const supplyColours: Readonly<Record<string, string>> = { brown: "L+", bn: "L+", blue: "0 V", bu: "0 V" };

/** Pins, wires and outputs of a tag agree with each other, and where they depart from what is common, it is told. */
export const wiring: Check = (context) => {
  for (const draft of context.drafts.instruments) checkSupply(context, draft);
  for (const draft of context.drafts.outputs) checkOutput(context, draft);
  for (const draft of context.drafts.loop_checks) checkLooked(context, draft);
};

/** What was found at the terminals of an output against what its row says: "sink or source of Q1" with "NPN, sourcing". */
function checkLooked({ report, calibrationByName, drafts }: CheckContext, draft: DraftRow<"loop_checks">): void {
  const { calibration, item, measured } = draft.row;
  const [, output] = /^sink or source of (.+)$/iu.exec(item?.trim() ?? "") ?? [];
  const tag = calibration === undefined ? undefined : calibrationByName.get(calibration)?.row.tag;
  const stated = drafts.outputs.find(({ row }) => row.tag === tag && row.output === output)?.row;
  if (stated === undefined || typeof measured !== "string") return;
  const words = measured.toLowerCase().split(/[^a-z]+/u);
  for (const [kinds, own] of [
    [["pnp", "npn"], stated.polarity?.toLowerCase()],
    [["sinking", "sourcing"], stated.controllerInput],
  ] as const) {
    const found = kinds.filter((kind) => words.includes(kind));
    if (own === undefined || found.length !== 1 || found[0] === own) continue;
    report("loop_checks", draft, "model/output-contradicted", {
      column: "measured",
      values: { output: output ?? "", stated: own === "pnp" || own === "npn" ? own.toUpperCase() : own },
    });
  }
}

function checkSupply({ report }: CheckContext, draft: DraftRow<"instruments">): void {
  const { pins = "", connector } = draft.row;
  const roles = pinRoles(pins);
  const most = pinsOf(connector);
  const twice = pinTwice(pins);
  if (twice !== undefined) {
    const values = { says: `pin ${twice.pin} twice: ${twice.roles.join(" and ")}` };
    report("instruments", draft, "model/pin-contradicted", { column: "pins", values });
  }
  if (roles === undefined) return;
  for (const pin of roles.keys()) {
    if (most === undefined || Number(pin) <= most) continue;
    report("instruments", draft, "model/pin-not-there", {
      column: "pins",
      values: { pin, connector: connector ?? "" },
    });
  }
  for (const { pin, role, names } of commonly) {
    const [found] = [...roles].find(([, carried]) => names.test(carried)) ?? [];
    if (found === undefined || found === pin || (most ?? 4) > 5) continue;
    report("instruments", draft, "model/pin-uncommon", { column: "pins", values: { role, pin: found, usual: pin } });
  }
}

function checkOutput({ report, instrumentByTag }: CheckContext, draft: DraftRow<"outputs">): void {
  const { tag, output, wire, pin } = draft.row;
  const instrument = tag === undefined ? undefined : instrumentByTag.get(tag)?.row;
  const roles = pinRoles(instrument?.pins ?? "");
  const carried = pin === undefined ? undefined : roles?.get(pin.trim());
  const most = pinsOf(instrument?.connector);
  if (output !== undefined && roles !== undefined && pin !== undefined) {
    const [other] = [...roles].find(([, role]) => role === foldedRole(output)) ?? [];
    const isElsewhere = other !== undefined && other !== pin.trim();
    if (isElsewhere || (carried !== undefined && carried !== foldedRole(output))) {
      const says = isElsewhere ? `${output} on pin ${other}` : `${roleText(instrument?.pins ?? "", pin)} on pin ${pin}`;
      report("outputs", draft, "model/pin-contradicted", { column: "pin", values: { says } });
    }
  }
  if (pin !== undefined && most !== undefined && /^\d+$/u.test(pin.trim()) && Number(pin) > most) {
    report("outputs", draft, "model/pin-not-there", {
      column: "pin",
      values: { pin, connector: instrument?.connector ?? "" },
    });
  }
  const role = supplyColours[(wire ?? "").trim().toLowerCase()];
  if (role !== undefined) report("outputs", draft, "model/wire-uncommon", { column: "wire", values: { role } });
}

/** How many pins a connector has, from its words, such as "M12, 4 pins". */
function pinsOf(connector: string | undefined): number | undefined {
  const [, count] = /(\d+)\s*[- ]?(?:pins?|poles?)\b/iu.exec(connector ?? "") ?? [];
  return count === undefined ? undefined : Number(count);
}

/** What a pin carries, as it was typed. */
function roleText(pins: string, pin: string): string {
  const part = pins.split(/[;,]/u).find((one) => new RegExp(`^\\s*(?:pin\\s*)?${pin.trim()}\\b`, "iu").test(one)) ?? "";
  return part.replace(/^\s*(?:pin\s*)?\d+\s*[:=\s]\s*/iu, "").trim();
}
