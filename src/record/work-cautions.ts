import type { Instrument } from "../model/instrument.ts";

type OfLoop = Pick<Instrument, "criticality" | "hazardousArea" | "principle" | "signalLower" | "signalUpper">;

/** One of the usual cautions; without `appliesTo` it is for every loop. */
type Caution = { says: string; appliesTo?: (instrument: OfLoop) => boolean };

const cautions: readonly Caution[] = [
  {
    says: "Where stored energy or an unexpected start could hurt someone, isolate, relieve or restrain it and verify that before hands go in; electrical work falls under the electrical rules as well. If power is needed for a test, clear people and tools first, energise only for the test, then isolate again.",
  },
  {
    says: "Targets, belts, hoists and levels can start to move from this sensor's own signal. Tell operations and bring the outputs to a safe state before anything is simulated or disconnected, and know what the controller does at 0 mA or 0 V before a loop is opened.",
  },
  {
    says: "A loop that is part of a trip, an interlock or an alarm counts as a safety function until shown otherwise: a bypass needs a permit, other protection meanwhile, a time limit, and a record of its removal.",
    appliesTo: ({ criticality }) => criticality !== "general",
  },
  {
    says: "Hazardous area: only approved equipment and methods; no connection is opened and no meter connected unless the site's permit allows it.",
    appliesTo: ({ hazardousArea }) => hazardousArea !== false,
  },
  {
    says: "Laser: respect the class on the label, never look into the beam with optics, mind mirrors and polished targets.",
    appliesTo: ({ principle }) => principle === "laser" || principle === "photoelectric",
  },
  { says: "Height, confined space, heat, pressure and chemicals: the site's rules." },
  {
    says: "A broken wire can look like a valid low reading on this signal.",
    appliesTo: ({ signalLower, signalUpper }) => Math.min(signalLower, signalUpper) === 0,
  },
  {
    says: "After the work: remove forced values, simulations, jumpers and bypasses, restore filter and scaling, confirm a live reading with operations, note the time.",
  },
];

/**
 * The usual cautions for work on a loop; they defer to the site, the code and the licence.
 *
 * @param instrument its row
 * @param paper what they stand on, in words: "record", "sheet"
 * @returns sentences, in the order of the work
 * Source: common practice of the trade; the site's lockout procedure, local codes and licensed practice go before them.
 * @example workCautions({ signalLower: 4, signalUpper: 20 }, "record").length // 7
 */
export function workCautions(instrument: OfLoop, paper: "record" | "sheet"): readonly string[] {
  const first = `Isolating, bypassing and restoring the loop follow the site's own lockout procedure, its permits and the local codes, and are done by people licensed or qualified for it. This ${paper} gives nobody authority to work.`;
  const others = cautions.filter(({ appliesTo }) => appliesTo?.(instrument) ?? true);
  return [first, ...others.map(({ says }) => says)];
}
