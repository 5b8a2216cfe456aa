/**
 * How a budget names what the certificate of a standard contributes, so that whoever compares two results finds it.
 *
 * @param standard its name
 * @returns the source of that line of a budget
 * Source: own choice.
 * @example certificateSource("GB-1") // "GB-1: certificate"
 */
export function certificateSource(standard: string): string {
  return `${standard}: certificate`;
}
