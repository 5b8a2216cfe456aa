import type { Keeping } from "../keeper.ts";
import { type SoFar, titleOf } from "../state/so-far.ts";

type StateLineProps = {
  asFound: SoFar;
  asLeft: SoFar;
  isRestored: boolean;
  keeping: Keeping;
  canUndo: boolean;
  undo: () => void;
  takeOver: () => void;
};

/** The line that stays in sight: how far the work is, what it says so far, what was not put back, whether it is kept. */
export function StateLine({ asFound, asLeft, isRestored, keeping, canUndo, undo, takeOver }: StateLineProps) {
  const isLeft = asLeft.filled > 0;
  const now = isLeft ? asLeft : asFound;
  return (
    <footer class={`state-line ${now.isBad ? "is-bad" : ""}`}>
      <p class="now" role="status">
        <strong>
          {titleOf(isLeft ? "as_left" : "as_found")}: {now.filled} of {now.of}, {now.word}
        </strong>
        {!isRestored && asFound.filled + asLeft.filled > 0 && (
          <span class="not-restored"> · loop not restored yet</span>
        )}
      </p>
      <p class={keeping.isSafe ? "keeping" : "keeping is-bad"} role={keeping.isSafe ? undefined : "alert"}>
        {keeping.says}
        {!keeping.isSafe && keeping.says.includes("another tab") && (
          <button type="button" class="small" onClick={takeOver}>
            Go on here with what is kept
          </button>
        )}
      </p>
      <button type="button" disabled={!canUndo} onClick={undo}>
        Take back
      </button>
    </footer>
  );
}
