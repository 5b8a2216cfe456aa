import { workCautions } from "../../record/work-cautions.ts";
import { entriesOf, type KeptSheet } from "../kept-sheet.ts";
import type { Entries } from "../state/entries.ts";
import { useSheet } from "./sheet-context.ts";

type CautionsProps = { offered: KeptSheet | undefined; takeOver: (entries: Entries) => void };

/** The usual cautions stand before the first field; and what an earlier sheet of this calibration kept here. */
export function CautionsPart({ offered, takeOver }: CautionsProps) {
  const { instrument } = useSheet();
  return (
    <section class="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">Before any work</h2>
      <ul>
        {workCautions(instrument, "sheet").map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      {offered !== undefined && (
        <p class="offered">
          Another sheet of this calibration ({offered.sheet}, program {offered.program}) kept entries on this device,
          the last at {offered.at}.{" "}
          <button type="button" onClick={() => takeOver(entriesOf(offered))}>
            Go on with them here
          </button>
        </p>
      )}
    </section>
  );
}
