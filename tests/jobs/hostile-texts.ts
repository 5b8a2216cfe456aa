/** A text that should do no harm, and how it is shown where that differs from the text itself. */
export type HostileText = { name: string; text: string; shown?: string };

export const hostileTexts: readonly HostileText[] = Object.freeze([
  { name: "script element", text: "<script>alert(1)</script>" },
  { name: "end of a script element", text: "</script><img src=x onerror=alert(1)>" },
  { name: "end of the title", text: "</title></head><body><b id=slipped>" },
  { name: "event handler", text: '" onmouseover="alert(1)' },
  { name: "SVG that acts", text: "]]><svg onload=alert(1)><a href='javascript:alert(1)'>" },
  { name: "comment that opens", text: "<!--<script>" },
  { name: "character reference", text: "&lt;b&gt;&amp;&#60;" },
  { name: "end of a style", text: '"; }body{display:none}</style>' },
  { name: "rule of a style", text: '"}}*{color:red}@media all{' },
  { name: "backslash of a style", text: "\\22 ;}*{display:none}\\" },
  { name: "formula", text: "=cmd()" },
  { name: "path upwards", text: "../../x" },
  { name: "path of another system", text: "C:\\..\\..\\x" },
  { name: "hidden file", text: ".hidden" },
  { name: "reserved name", text: "con" },
  { name: "key of every object", text: "__proto__" },
  { name: "name of a method", text: "toString" },
  { name: "template", text: "{column} $& $1 {{tag}}" },
  { name: "ten thousand characters", text: "x".repeat(10_000) },
  { name: "emoji", text: "😀🛠️👩‍🔧" },
  { name: "NUL", text: "a\u0000b", shown: "a␀b" },
  { name: "escape sequence", text: "\u001b[31mred\u001b]0;t\u0007", shown: "␛[31mred␛]0;t␇" },
  { name: "C1 control", text: "a\u009b2Jb", shown: "a\ufffd2Jb" },
  { name: "bidirectional override", text: "a\u202egpj.exe", shown: "a\ufffdgpj.exe" },
  { name: "half a surrogate pair", text: "half \ud83d here", shown: "half \ufffd here" },
  { name: "line separator", text: "a\u2028b\u2029c" },
  { name: "newline", text: "first\nsecond" },
  { name: "no-break space alone", text: "\u00a0" },
]);

/** How a text is shown on the page. */
export function shownText({ text, shown }: HostileText): string {
  return shown ?? text;
}

/** Whether a cell that holds the text counts as empty. */
export function isBlank({ text }: HostileText): boolean {
  return text.trim() === "";
}

/** Characters that would move a terminal's cursor, turn its text around, or are none. */
export const hiddenCharacters =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what it looks for
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]|\p{Surrogate}/u;
