import { roomAfter } from "../sheet/decimal-column.ts";

/** A cell of a column whose numbers have their decimal points below each other. */
export function DecimalCell({ text, column }: { text: string; column: readonly string[] }) {
  const room = roomAfter(text, column);
  return (
    <td class="number">{room === 0 ? text : <span style={{ paddingRight: `${String(room)}ch` }}>{text}</span>}</td>
  );
}
