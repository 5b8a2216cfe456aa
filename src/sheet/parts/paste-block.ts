import type { RowView, Sheet } from "./sheet-context.ts";

/** Columns of a reading in the order in which they stand beside each other. */
const readingColumns = ["reference", "signal", "signal_at_card", "counts", "value"] as const;

/** Lines and columns that were copied from a spreadsheet. */
export function blockOf(text: string): readonly (readonly string[])[] {
  const lines = text.replace(/\r\n?/gu, "\n").replace(/\n+$/u, "").split("\n");
  return lines.map((line) => line.split("\t").map((cell) => cell.trim()));
}

/** A block pasted into a reading fills the fields from there, to the right and down, as one step that can be taken back. */
export function pasteBlock(
  event: ClipboardEvent,
  views: { readings: readonly RowView[] },
  { set }: Pick<Sheet, "set">,
): void {
  const block = blockOf(event.clipboardData?.getData("text/plain") ?? "");
  const field = event.target;
  const isBlock = block.length > 1 || (block[0]?.length ?? 0) > 1;
  if (!isBlock || !(field instanceof HTMLInputElement)) return;
  const { row: id, column: from = "" } = field.dataset;
  const start = views.readings.findIndex(({ row }) => row.id === id);
  if (start === -1) return;
  event.preventDefault();
  const columns = columnsFrom(field, from);
  set(
    block.flatMap((cells, down) => {
      const view = views.readings[start + down];
      return cells.flatMap((text, right) => {
        const column = columns[right];
        return view === undefined || column === undefined || view.row.isGiven ? [] : [{ row: view.row, column, text }];
      });
    }),
  );
}

/** The columns that the row of a field shows, from that field on. */
function columnsFrom(field: HTMLInputElement, from: string): readonly string[] {
  const shown = [...(field.closest("tr")?.querySelectorAll<HTMLInputElement>("input[data-column]") ?? [])];
  const columns = shown.map((one) => one.dataset.column ?? "");
  const known = columns.filter((column) => (readingColumns as readonly string[]).includes(column));
  return known.slice(known.indexOf(from));
}
