import { createInterface } from "node:readline";
import { Writable } from "node:stream";

/** Where secrets are typed, and where the question for one is shown. */
export type SecretInput = NodeJS.ReadableStream & { isTTY?: boolean };
export type AskSecret = (question: string) => Promise<string | undefined>;

/**
 * Asks for a secret: on a terminal without showing what is typed, else one line of the standard input each time.
 * Nothing comes back where the input has ended, or where the question was broken off.
 */
export function secretAsker(input: SecretInput, question: { write: (text: string) => unknown }): AskSecret {
  if (input.isTTY === true) return (words) => typedUnseen(input, question, words);
  let lines: AsyncIterator<string> | undefined;
  return async () => {
    lines ??= createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })[Symbol.asyncIterator]();
    const { done, value } = await lines.next();
    return done === true ? undefined : value;
  };
}

function typedUnseen(
  input: SecretInput,
  question: { write: (text: string) => unknown },
  words: string,
): Promise<string | undefined> {
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  const reader = createInterface({ input, output: nowhere, terminal: true, historySize: 0 });
  question.write(words);
  return new Promise((resolve) => {
    reader.once("line", resolve);
    reader.once("SIGINT", () => reader.close());
    reader.once("close", () => resolve(undefined));
  }).then((answer) => {
    reader.close();
    question.write("\n");
    return answer as string | undefined;
  });
}
