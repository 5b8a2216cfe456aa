const firstPicture = 0x2400;
const pictureOfDelete = "\u2421";
const replacement = "\ufffd";

/**
 * What does not show, or turns the text around it: control characters but tab and newline, bidirectional
 * embeddings, overrides and isolates, halves of a surrogate pair, and what an earlier program put in the
 * place of bytes that it could not read.
 */
const hidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what it looks for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffd]|\p{Surrogate}/u;
const everyHidden = new RegExp(hidden, "gu");

/** Whether a text holds characters that `visibleText` would replace, or U+FFFD, the trace of a lost character. */
export function hasHiddenCharacter(text: string): boolean {
  return hidden.test(text);
}

/** A text in which every hidden character is replaced by a visible sign; tab and newline are kept. */
export function visibleText(text: string): string {
  return hidden.test(text) ? text.replace(everyHidden, sign) : text;
}

function sign(character: string): string {
  const code = character.charCodeAt(0);
  if (code < 0x20) return String.fromCharCode(firstPicture + code);
  return code === 0x7f ? pictureOfDelete : replacement;
}
