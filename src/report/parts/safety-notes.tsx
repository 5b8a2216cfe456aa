import type { CalibrationRecord } from "../../record/record-schema.ts";
import { workCautions } from "../../record/work-cautions.ts";
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
        {[...workCautions(record.instrument, "record"), ...limits].map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Part>
  );
}

/** What this record does not say. */
const limits = [
  "A sensor that protects people is not judged by this record; such devices have tests of their own.",
  "The results hold for the item, the test points, the target and the conditions stated, at the time stated. The decision rule is part of the result.",
  "This record supports compliance with the standards and rules that it names; it does not by itself give it. It may be passed on only as a whole.",
];
