import type { ComponentChildren } from "preact";
import type { SealedRecord } from "../../record/record-schema.ts";
import { RunningMarks } from "../running-marks.tsx";

/** Letter and title of an annex; its place in the page is found by its letter. */
export type AnnexName = { letter: string; title: string };

export function annexId({ letter }: Pick<AnnexName, "letter">): string {
  return `annex-${letter.toLowerCase()}`;
}

type AnnexProps = { record: SealedRecord; name: AnnexName; children: ComponentChildren };

/** One annex: a sheet of its own on paper, folded on a telephone until somebody asks for it. */
export function Annex({ record, name, children }: AnnexProps) {
  const { letter, title } = name;
  const id = annexId(name);
  return (
    <section class="leaf annex" id={id} aria-labelledby={`${id}-title`}>
      <RunningMarks record={record} sheet={`Annex ${letter}: ${title}`} />
      <div class="leaf-body">
        <div class="annex-head">
          <h2 id={`${id}-title`}>
            <span class="letter">{letter}</span> {title}
          </h2>
          <label class="fold">
            <input type="checkbox" /> show<span class="hidden"> annex {letter}</span>
          </label>
        </div>
        <div class="annex-body">{children}</div>
      </div>
    </section>
  );
}
