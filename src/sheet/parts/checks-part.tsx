import { limitWords } from "../../verdict/loop-check/limit-words.ts";
import type { ApplicableItem } from "../../verdict/loop-check/loop-items.ts";
import type { LoopLimit } from "../../verdict/loop-check/loop-limits.ts";
import { Field } from "./field.tsx";
import { RowProblems } from "./row-problems.tsx";
import { Kept, type RowView, useSheet } from "./sheet-context.ts";

/** What an item asks for, as the list has it. */
export type CheckMeaning = { item: ApplicableItem | undefined; limit: LoopLimit | undefined };

type ChecksProps = { views: readonly RowView[]; meanings: ReadonlyMap<string, CheckMeaning> };

/** The loop around the sensor: each item with its limits, answered by thumb. */
export function ChecksPart({ views, meanings }: ChecksProps) {
  const answered = views.filter(({ cells }) => (cells.result ?? "") !== "").length;
  return (
    <section aria-labelledby="checks-title">
      <h2 id="checks-title">Loop check</h2>
      <p class="state">
        {answered} of {views.length} answered
      </p>
      <ol class="checks">
        {views.map((view) => (
          <Kept
            key={view.row.id}
            of={[view.row, view.cells, view.problems]}
            draw={() => <Check view={view} meaning={meanings.get(view.cells.item ?? "")} />}
          />
        ))}
      </ol>
    </section>
  );
}

const answers = ["pass", "fail", "not applicable"] as const;

function Check({ view, meaning }: { view: RowView; meaning: CheckMeaning | undefined }) {
  const { set } = useSheet();
  const { row, cells, problems } = view;
  const item = cells.item ?? "";
  const isLocked = row.isGiven === true && (row.cells.result ?? "") !== "";
  return (
    <li class="check">
      <fieldset>
        <legend>{item}</legend>
        {meaning?.item && <p class="asks-for">{asked(meaning)}</p>}
        <div class="answers">
          {answers.map((answer) => (
            <button
              key={answer}
              type="button"
              class="answer"
              disabled={isLocked}
              aria-pressed={cells.result === answer}
              onClick={() => set([{ row, column: "result", text: cells.result === answer ? "" : answer }])}
            >
              {answer}
            </button>
          ))}
        </div>
        <div class="beside">
          <Field view={view} column="measured" label="measured" unit={cells.unit} />
          <Field view={view} column="remark" label="remark" />
        </div>
        <RowProblems problems={problems} />
      </fieldset>
    </li>
  );
}

function asked({ item, limit }: CheckMeaning): string {
  const { low = null, high = null } = limit ?? {};
  const here = low === null && high === null ? "" : ` Here: ${limitWords({ low, high }, item?.unit ?? null)}.`;
  return `${item?.look ?? ""}; accepted: ${item?.accepted ?? ""}.${here}`;
}
