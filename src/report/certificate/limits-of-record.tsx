import type { SealedRecord } from "../../record/record-schema.ts";
import { statedElsewhere } from "../parts/stated-facts.ts";
import { charactersOutsideFont } from "../style/font-faces.ts";

/** The safety line, what the record does not say, and what else was stated and where it stands. */
export function LimitsOfRecord({ record }: { record: SealedRecord }) {
  const elsewhere = statedElsewhere(record);
  const foreign = foreignLetters(record);
  return (
    <section class="limits" aria-label="Safety and limits of this record">
      <p>
        <strong>Safety:</strong> the site's lockout procedure, permits and local codes come first; this record gives
        nobody authority to work, and judges no sensor that protects people.{" "}
      </p>
      <p>
        <strong>Limits:</strong> the results hold for the item, the test points and the conditions stated, at that time;
        nothing is said of places, times or air between or beyond them. Passed on only as a whole.
        {elsewhere.length > 0 && ` Stated in annex I: ${elsewhere.join(", ").toLowerCase()}.`}
      </p>
      {foreign !== "" && (
        <p>
          <strong>Letters</strong> that the font of this page does not have, shown by the reader's own:{" "}
          <bdi>{foreign}</bdi>
        </p>
      )}
    </section>
  );
}

/** Letters of the tables that another machine may show otherwise, or not at all. */
function foreignLetters({ inputs }: SealedRecord): string {
  const { instruments, calibrations, standards } = inputs.rows;
  const cells = [...instruments, ...calibrations, ...standards].flatMap((row) => Object.values(row.cells));
  return charactersOutsideFont(cells.join("")).join(" ");
}
