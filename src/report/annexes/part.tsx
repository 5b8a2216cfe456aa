import type { ComponentChildren } from "preact";

type PartProps = { id: string; title: string; kind?: string; children: ComponentChildren };

/** A part of an annex that has several. */
export function Part({ id, title, kind, children }: PartProps) {
  return (
    <section class={kind === undefined ? "part" : `part ${kind}`} aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      {children}
    </section>
  );
}
