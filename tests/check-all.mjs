/**
 * `npm test`: types, lint and unused code are looked at while the command is built and every test is run, for tests wait
 * for browsers and other programs. What a check prints is shown where it fails; whatever fails, the whole does.
 *
 *   node tests/check-all.mjs [words for vitest]
 */
import { spawn } from "node:child_process";

/** Runs a script of npm; gives its exit code, and what it printed where that is not shown at once. */
function run(script, { isShown = false, words = [] } = {}) {
  const begun = performance.now();
  return new Promise((settle) => {
    let printed = "";
    const stdio = isShown ? "inherit" : ["ignore", "pipe", "pipe"];
    const child = spawn("npm", ["run", "--silent", script, "--", ...words], { stdio });
    for (const stream of [child.stdout, child.stderr]) {
      stream?.on("data", (text) => {
        printed += text;
      });
    }
    child.once("error", ({ message }) => settle({ script, code: 1, printed: message }));
    child.once("close", (code) => {
      const seconds = ((performance.now() - begun) / 1000).toFixed(0);
      process.stdout.write(`${script}: ${code === 0 ? "right" : "WRONG"}, ${seconds} s\n`);
      settle({ script, code: code ?? 1, printed });
    });
  });
}

async function inTurn(scripts) {
  const ended = [];
  for (const script of scripts) ended.push(await run(script));
  return ended;
}

async function buildAndTest() {
  const built = await run("build");
  return built.code === 0 ? [built, await run("test:all", { isShown: true, words: process.argv.slice(2) })] : [built];
}

const ended = (await Promise.all([inTurn(["types", "lint", "unused"]), buildAndTest()])).flat();
const wrong = ended.filter(({ code }) => code !== 0);
// At the end, where the many lines of the tests do not hide it.
for (const { script, printed } of wrong) process.stdout.write(`\nWRONG: npm run ${script}\n${printed}`);
process.exitCode = wrong.length === 0 ? 0 : 1;
