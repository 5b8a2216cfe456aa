import type { SourceFile } from "./source-files.ts";

const mostLinesOfFile = 250;
const mostLinesOfFunction = 60;

/** A line that begins a function, as the formatter leaves it: declared, assigned as an arrow, or a method. */
const functionBegins =
  /^\s*(?:export )?(?:default )?(?:async )?(?:function\b|(?:const|let) [\w$]+.*(?:=>|\()$|(?:const|let) [\w$]+ = .*=> [{(]$|(?:(?:async|static|private|get|set) )*[\w$#]+\(.*\).*\{$)/u;
const controlBegins = /^\s*(?:if|for|while|switch|catch|test|it|describe)\b/u;

/** Files over 250 lines and functions over 60, counted from their first line to the bracket that closes them. */
export function sizeFaults(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap(({ path, text }) => {
    const lines = text.replace(/\n$/u, "").split("\n");
    const tooLong =
      lines.length > mostLinesOfFile ? [`${path}: ${lines.length} lines, at most ${mostLinesOfFile}`] : [];
    return [...tooLong, ...functionFaults(path, lines)];
  });
}

/** The formatter puts a closing bracket at the indentation of the line that opened it: the first one there ends it. */
function functionFaults(path: string, lines: readonly string[]): readonly string[] {
  return lines.flatMap((line, index) => {
    if (!functionBegins.test(line) || controlBegins.test(line)) return [];
    const indentation = /^\s*/u.exec(line)?.[0] ?? "";
    const closes = new RegExp(`^${indentation}[})\\]](?!.*(?:\\{|\\(|=>)$)`, "u");
    const length = lines.slice(index + 1).findIndex((later) => closes.test(later)) + 2;
    if (length <= mostLinesOfFunction) return [];
    return [`${path}:${index + 1}: a function of ${length} lines, at most ${mostLinesOfFunction}`];
  });
}
