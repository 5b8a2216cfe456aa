import type { ComponentChildren } from "preact";

/** A name and what there is to say of it, on the first page. */
export function AnswerFact({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <div class="answer-fact">
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
