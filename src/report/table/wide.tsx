import type { ComponentChildren } from "preact";

type WideProps = { label?: string; labelledBy?: string; children: ComponentChildren };

/**
 * A place for what is wider than a telephone. Where it scrolls sideways it says so, and the words are where the keyboard
 * stops; where there is room nothing is said, and the keyboard does not stop.
 */
export function Wide({ label, labelledBy, children }: WideProps) {
  return (
    <section class="wide" aria-label={label} aria-labelledby={labelledBy}>
      <p class="sideways" tabIndex={0}>
        Wider than this screen: scroll sideways →
      </p>
      {children}
    </section>
  );
}
