/** What a page holds that could act, and what it says. */
export type PageContents = {
  /** every script element, as type and id */
  scripts: string[];
  /** elements that load or send something */
  active: string[];
  /** attributes that hold a program or an address */
  actingAttributes: string[];
  /** children of the head, a bar, children of the body */
  frame: string[];
  title: string;
  /** rules of the style, as the browser reads them, and what selects in them */
  rules: string[];
  text: string;
  data: string;
};
/** Parses pages without running them. */
export function contentsOf(pages: readonly string[]): PageContents[];

/** Elements that reach beyond the right edge of the window and stand in no scroller, as "name.class right". */
export function elementsBeyond(): { scrollWidth: number; beyond: string[] };

/** The text that is seen, with runs of blanks made one. */
export function seenText(): string;

/** Every row, figure and box that must not be cut, with its height and what it says of breaks. */
export function uncuttable(): { name: string; height: number; breakInside: string }[];

/** Text colour and background of every verdict that is seen. */
export function verdictColours(): { text: string; colour: string; background: string }[];

/** Cells of each row of the working sheets. */
export function sheetRows(): string[][];

/** Words of each figure that is seen: title, picture and caption. */
export function figureTexts(): string[][];
export function scrollingPlaces(): readonly { name: string; scrolls: boolean; says: boolean }[];
