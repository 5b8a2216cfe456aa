import { renderToString } from "preact-render-to-string";
import { recordElement } from "../record/record-element.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { withDecimalMark } from "../units/decimal-mark.ts";
import { Annex } from "./annexes/annex.tsx";
import { annexes } from "./annexes/annexes.tsx";
import { Contents } from "./annexes/contents.tsx";
import { Certificate } from "./certificate/certificate.tsx";
import { htmlDocument } from "./html-document.ts";
import { isolatedTexts } from "./isolated-texts.ts";
import type { PageDrawings } from "./page-drawings.ts";
import { numberStyleOf } from "./style/number-style.ts";
import { pageStyle } from "./style/page-style.ts";
import { revisionWords } from "./texts/revision-words.ts";

const contentSecurityPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

/** One calibration as one self-contained page: no script, no network, the record's JSON packed inside. */
export function renderPage(record: SealedRecord, drawings: PageDrawings): string {
  const { instrument, calibration } = record;
  const title = `${instrument.tag} · calibration record ${calibration.calibration}${revisionWords(record)}`;
  return htmlDocument({
    title: title,
    contentSecurityPolicy,
    style: pageStyle,
    body: isolatedTexts(
      withDecimalMark(instrument.decimalMark, () => renderToString(<Page record={record} drawings={drawings} />)),
      [record],
    ),
    scripts: recordElement(record),
  });
}

function Page({ record, drawings }: { record: SealedRecord; drawings: PageDrawings }) {
  const style = numberStyleOf(record);
  return (
    <>
      <a class="skip" href="#answer-title">
        To the result
      </a>
      <main>
        <Certificate record={record} style={style} drawings={drawings} />
        <Contents record={record} />
        {annexes
          .filter(({ isThere }) => isThere(record))
          .map(({ body, ...name }) => (
            <Annex key={name.letter} record={record} name={name}>
              {body(record, style, drawings)}
            </Annex>
          ))}
      </main>
    </>
  );
}
