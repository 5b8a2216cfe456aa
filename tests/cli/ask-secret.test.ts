import { PassThrough, Readable } from "node:stream";
import { expect, test } from "vitest";
import { type SecretInput, secretAsker } from "../../src/cli/ask-secret.ts";

/** What a terminal's owner types, and all that is written there. */
function terminal() {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => input }) as SecretInput & PassThrough;
  const shown: string[] = [];
  return { input, shown, ask: secretAsker(input, { write: (text) => shown.push(text) }) };
}

test("without a terminal each question takes one line, and none are left over", async () => {
  const ask = secretAsker(Readable.from(["first line\r\nsecond", " line\n"]), { write: () => undefined });
  expect(await ask("?")).toBe("first line");
  expect(await ask("?")).toBe("second line");
  expect(await ask("?")).toBeUndefined();
});

test("a last line without its end is one, an empty line is an empty answer, an empty input none", async () => {
  const ask = secretAsker(Readable.from(["\nlast"]), { write: () => undefined });
  expect([await ask("?"), await ask("?"), await ask("?")]).toEqual(["", "last", undefined]);
  expect(await secretAsker(Readable.from([]), { write: () => undefined })("?")).toBeUndefined();
});

test("on a terminal the question is shown and what is typed is not", async () => {
  const { input, shown, ask } = terminal();
  const answer = ask("passphrase: ");
  input.write("twelve characters\r");
  expect(await answer).toBe("twelve characters");
  expect(shown).toEqual(["passphrase: ", "\n"]);
  const again = ask("once more: ");
  input.write("twelve characters\r");
  expect(await again).toBe("twelve characters");
});

test("a wrong character can be taken back, and Ctrl-C gives up", async () => {
  const { input, ask } = terminal();
  const answer = ask("passphrase: ");
  input.write("twelvX\u007fe characters\r");
  expect(await answer).toBe("twelve characters");
  const given = ask("passphrase: ");
  input.write("twel\u0003");
  expect(await given).toBeUndefined();
});
