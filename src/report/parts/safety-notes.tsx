import type { CalibrationRecord } from "../../record/record-schema.ts";
import { Part } from "../annexes/part.tsx";
import { incompleteWords } from "../texts/loop-check-texts.ts";

/** The usual cautions, and what this record does not say; they defer to the site, the code and the licence. */
export function SafetyNotes({ record }: { record: CalibrationRecord }) {
  const incomplete = incompleteWords(record);
  return (
    <Part id="safety" title="Safety notes and limits of this record">
      <ul class="notes">
        {incomplete && (
          <li>
            <strong>{incomplete}</strong>
          </li>
        )}
        {cautionsFor(record).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Part>
  );
}

type Caution = { says: string; appliesTo?: (record: CalibrationRecord) => boolean };

const cautions: readonly Caution[] = [
  {
    says: "Isolating, bypassing and restoring the loop follow the site's own lockout procedure, its permits and the local codes, and are done by people licensed or qualified for it. This record gives nobody authority to work.",
  },
  {
    says: "Where stored energy or an unexpected start could hurt someone, isolate, relieve or restrain it and verify that before hands go in; electrical work falls under the electrical rules as well. If power is needed for a test, clear people and tools first, energise only for the test, then isolate again.",
  },
  {
    says: "Targets, belts, hoists and levels can start to move from this sensor's own signal. Tell operations and bring the outputs to a safe state before anything is simulated or disconnected, and know what the controller does at 0 mA or 0 V before a loop is opened.",
  },
  {
    says: "A loop that is part of a trip, an interlock or an alarm counts as a safety function until shown otherwise: a bypass needs a permit, other protection meanwhile, a time limit, and a record of its removal.",
    appliesTo: ({ instrument }) => instrument.criticality !== "general",
  },
  {
    says: "Hazardous area: only approved equipment and methods; no connection is opened and no meter connected unless the site's permit allows it.",
    appliesTo: ({ instrument }) => instrument.hazardousArea !== false,
  },
  {
    says: "Laser: respect the class on the label, never look into the beam with optics, mind mirrors and polished targets.",
    appliesTo: ({ instrument }) => instrument.principle === "laser" || instrument.principle === "photoelectric",
  },
  { says: "Height, confined space, heat, pressure and chemicals: the site's rules." },
  {
    says: "A broken wire can look like a valid low reading on this signal.",
    appliesTo: ({ instrument }) => Math.min(instrument.signalLower, instrument.signalUpper) === 0,
  },
  {
    says: "After the work: remove forced values, simulations, jumpers and bypasses, restore filter and scaling, confirm a live reading with operations, note the time.",
  },
  { says: "A sensor that protects people is not judged by this record; such devices have tests of their own." },
  {
    says: "The results hold for the item, the test points, the target and the conditions stated, at the time stated. The decision rule is part of the result.",
  },
  {
    says: "This record supports compliance with the standards and rules that it names; it does not by itself give it. It may be passed on only as a whole.",
  },
];

function cautionsFor(record: CalibrationRecord): readonly string[] {
  return cautions.filter(({ appliesTo }) => appliesTo?.(record) ?? true).map(({ says }) => says);
}
