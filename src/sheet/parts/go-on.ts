/** Fields in the order in which Enter goes through them. */
const inOrder = "input[data-row]:not([readonly]):not([data-passed-over=true]), select[data-row]";

/** Enter goes to the next field; a field that holds it says so by preventing it. */
export function goOn(event: KeyboardEvent): void {
  const field = event.target;
  if (event.key !== "Enter" || event.defaultPrevented || !(field instanceof HTMLInputElement)) return;
  event.preventDefault();
  const fields = [...document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(inOrder)].filter(isOpen);
  const next = fields.find((one) => (field.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0);
  if (next === undefined) field.blur();
  else {
    next.focus();
    if (next instanceof HTMLInputElement) next.select();
  }
}

function isOpen(field: HTMLInputElement | HTMLSelectElement): boolean {
  return !field.matches(":disabled") && field.offsetParent !== null;
}
