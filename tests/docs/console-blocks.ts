/** A command of a page, with what the page says it prints and ends with. */
export type DocumentedCommand = { line: number; command: string; exitCode: number; expected: readonly string[] };

/** A fenced block: its language, the file name that may stand behind it, and its lines. */
export type Block = { line: number; language: string; name: string; lines: readonly string[] };

/** Every fenced block of a page, in order. */
export function blocksOf(page: string): readonly Block[] {
  const blocks: { line: number; language: string; name: string; lines: string[] }[] = [];
  let open: (typeof blocks)[number] | undefined;
  for (const [index, text] of page.split("\n").entries()) {
    const fence = /^```(\S*) *(.*)$/u.exec(text);
    if (fence === null) open?.lines.push(text);
    else if (open !== undefined) open = undefined;
    else {
      open = { line: index + 1, language: fence[1] ?? "", name: fence[2] ?? "", lines: [] };
      blocks.push(open);
    }
  }
  if (open !== undefined) throw new Error(`line ${open.line}: the block is not closed`);
  return blocks;
}

/**
 * The commands of a `console` block: a line with `$ ` before it is one, and the lines behind it are what it prints.
 * It ends with 0, unless a comment says `# ends with 2`.
 */
export function commandsOf({ line, lines }: Block): readonly DocumentedCommand[] {
  const commands: { line: number; command: string; exitCode: number; expected: string[] }[] = [];
  for (const [index, text] of lines.entries()) {
    const [, command, exitCode] = /^\$ (.*?)(?: +# ends with (\d+))?$/u.exec(text) ?? [];
    if (command !== undefined) {
      commands.push({ line: line + 1 + index, command, exitCode: Number(exitCode ?? 0), expected: [] });
      continue;
    }
    const last = commands.at(-1);
    if (last === undefined) throw new Error(`line ${line + 1 + index}: a console block begins with a command, $ …`);
    last.expected.push(text);
  }
  return commands;
}

/**
 * Whether a command printed what a page says: `…` stands for anything within a line, and alone on a line for any number
 * of lines. How wide the columns of a table are does not count.
 */
export function isAsDocumented(expected: readonly string[], printed: string): boolean {
  const lines = expected.map((line) => (line.trim() === "…" ? "(?:[^\\n]*\\n)*" : `${patternOf(line)}\\n`));
  const output = printed.trim() === "" ? "" : `${printed.trimEnd()}\n`;
  const spaced = output.split("\n").map(withoutWidths).join("\n");
  return new RegExp(`^${lines.join("")}$`, "u").test(spaced);
}

function patternOf(line: string): string {
  const parts = withoutWidths(line).split("…");
  return parts.map((part) => part.replace(/[.*+?^${}()|[\]\\/]/gu, "\\$&")).join("[^\\n]*");
}

function withoutWidths(line: string): string {
  return line.trimEnd().replaceAll(/ +/gu, " ").replaceAll(/─+/gu, "─");
}
