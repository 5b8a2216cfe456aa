import type { SealedRecord } from "../../record/record-schema.ts";
import { annexId } from "./annex.tsx";
import { annexes } from "./annexes.tsx";

/** What stands behind the certificate; an annex for which the record has nothing is named too. */
export function Contents({ record }: { record: SealedRecord }) {
  return (
    <nav class="contents" aria-label="Contents">
      <ol>
        <li>
          <a href="#sheet-1">
            <span class="letter">1</span> Certificate
          </a>
        </li>
        {annexes.map((annex) => (
          <li key={annex.letter}>
            {annex.isThere(record) ? (
              <a href={`#${annexId(annex)}`}>
                <span class="letter">{annex.letter}</span> {annex.title}
              </a>
            ) : (
              <span class="is-absent">
                <span class="letter">{annex.letter}</span> {annex.title}: nothing in this record
              </span>
            )}
          </li>
        ))}
      </ol>
    </nav>
  );
}
