import { type FigureKey, figureSubjects } from "../../record/figure-definitions.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { Definitions } from "../parts/definitions.tsx";
import { memoryMark } from "../texts/source-texts.ts";
import { glossaryKeys } from "./glossary-keys.ts";

/** Every figure of this record once, by its subject: what it is, its formula, its source. */
export function Glossary({ record }: { record: SealedRecord }) {
  const shown: ReadonlySet<string> = new Set(glossaryKeys(record));
  return (
    <>
      <p>
        Every figure of this record, once. A {memoryMark} behind a source: from memory; the standard itself was not read
        again for it.
      </p>
      <div class="glossary">
        {figureSubjects.map(({ subject, figures }) => (
          <Subject
            key={subject}
            subject={subject}
            keys={figures.map(({ key }): FigureKey => key).filter((key) => shown.has(key))}
          />
        ))}
      </div>
      <p class="end">End of record {record.calibration.calibration}</p>
    </>
  );
}

function Subject({ subject, keys }: { subject: string; keys: readonly FigureKey[] }) {
  if (keys.length === 0) return null;
  return (
    <>
      <h3>{subject}</h3>
      <Definitions keys={keys} />
    </>
  );
}
