import { expect, test } from "vitest";
import { Keeper, type Keeping } from "../../src/sheet/keeper.ts";
import { CannotKeep, type KeptSheet, type SheetStore, WrittenElsewhere } from "../../src/sheet/kept-sheet.ts";
import { noEntries, typing } from "../../src/sheet/state/entries.ts";

const entries = (text: string) => typing(noEntries, "r1", "signal", text);

/** A store that keeps what it is given, or refuses with a fault; a write takes a moment, as on a disk. */
function keeping(refuses: () => Error | undefined = () => undefined) {
  const written: string[] = [];
  const told: string[] = [];
  const store = {
    write: async ({ entries: some }: KeptSheet) => {
      await new Promise((resolve) => setTimeout(resolve, 5));
      const fault = refuses();
      if (fault !== undefined) throw fault;
      written.push(some.cells.r1?.signal ?? "");
    },
    look: async () => ({ isWriter: true, alsoOpen: undefined }),
  };
  const sheet = { form: 1, calibration: "C-1", sheet: "S-1", device: "00ff", program: "0.3.0", writer: "w" } as const;
  const tell = ({ says, isSafe }: Keeping) => void told.push(`${isSafe ? "" : "! "}${says}`);
  const keeper = new Keeper({ store: store as unknown as SheetStore, sheet, now: () => "2026-11-27T10:31:05Z", tell });
  return { keeper, written, told };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 60));

test("keys that come while a write is under way are kept with the next one, the last of all", async () => {
  const { keeper, written, told } = keeping();
  for (const text of ["1", "12", "12,", "12,0"]) keeper.keep(entries(text));
  await new Promise((resolve) => setTimeout(resolve, 3));
  keeper.keep(entries("12,02"));
  await settled();
  expect(written).toEqual(["12,0", "12,02"]);
  expect(told).toEqual(["Being kept …", "Kept on this device."]);
});

test("what is not on the disk yet is known until it is, for a page that is left meanwhile", async () => {
  const { keeper } = keeping();
  keeper.keep(entries("12,0"));
  expect(keeper.unkept).toEqual(entries("12,0"));
  await settled();
  expect(keeper.unkept).toBeUndefined();
});

test("no room is said, nothing says that it is kept, and the next key tries again", async () => {
  let isFull = true;
  const { keeper, written, told } = keeping(() =>
    isFull ? new CannotKeep("this device has no room left") : undefined,
  );
  keeper.keep(entries("1"));
  await settled();
  await keeper.look();
  expect(told.at(-1)).toBe(
    "! Not kept: this device has no room left. Hand back what was typed before this page is closed.",
  );
  isFull = false;
  keeper.keep(entries("12"));
  await settled();
  expect([written, told.at(-1)]).toEqual([["12"], "Kept on this device."]);
});

test("a page of which another took the sheet writes no more, until it is told to go on", async () => {
  let isElsewhere = true;
  const { keeper, written, told } = keeping(() => (isElsewhere ? new WrittenElsewhere() : undefined));
  keeper.keep(entries("1"));
  await settled();
  expect(told.at(-1)).toContain("Nothing typed here is kept");
  isElsewhere = false;
  keeper.keep(entries("12"));
  await settled();
  expect(written).toEqual([]);
  await keeper.takeOver(entries("12"));
  expect([written, told.at(-1)]).toEqual([["12"], "Kept on this device."]);
});
