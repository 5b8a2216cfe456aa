/**
 * Ends that HTML does not ask for (HTML, 13.1.2.4): a cell ends where the next one begins. Nothing else is changed, for
 * text has no bare "<".
 */
const optionalEnd = /<\/(?:td|th|tr|thead|tbody|tfoot|li|dt|dd)>/gu;

/** The same page with fewer bytes. */
export function compactHtml(html: string): string {
  return html.replace(optionalEnd, "");
}
