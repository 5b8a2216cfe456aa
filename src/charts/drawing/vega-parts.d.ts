/** What is used of parts of vega that have no types of their own. */
declare module "vega-format" {
  export type Locale = { utcFormat(specifier: string): (value: number | Date) => string };
  export function defaultLocale(): Locale;
}

declare module "vega-scale" {
  import type { Locale } from "vega-format";
  export type Scale = {
    (value: unknown): number;
    type: string;
    domain(domain?: readonly unknown[]): Scale & unknown[];
    range(range?: readonly unknown[]): number[];
    padding?(padding: number): Scale;
    paddingInner?(padding: number): Scale;
    paddingOuter?(padding: number): Scale;
    nice?(count: unknown): Scale;
    unknown(value: unknown): Scale;
    bandwidth?(): number;
  };
  export function scale(type: string): () => Scale;
  export function tickCount(scale: Scale, count: unknown): number;
  export function tickValues(scale: Scale, count: number): readonly unknown[];
  export function tickFormat(
    locale: Locale,
    scale: Scale,
    count: number,
    specifier?: string,
  ): (value: unknown) => string;
}

declare module "vega-scenegraph" {
  export class Bounds {
    x1: number;
    y1: number;
    x2: number;
    y2: number;
    clear(): this;
    clone(): Bounds;
    set(x1: number, y1: number, x2: number, y2: number): this;
    add(x: number, y: number): this;
    union(bounds: Bounds): this;
    translate(dx: number, dy: number): this;
    alignsWith(bounds: Bounds): boolean;
    width(): number;
    height(): number;
  }
  type Emit = (name: string, value: unknown) => void;
  type MarkType = {
    tag: "path" | "line" | "text" | "g";
    nested: boolean;
    bound(bounds: Bounds, item: object): Bounds;
    attr(emit: Emit, item: object): void;
    background(emit: Emit, item: object): void;
  };
  export const Marks: Readonly<Record<string, MarkType>>;
  export function boundClip(mark: object): void;
  export function boundStroke(bounds: Bounds, item: object): Bounds;
  export function multiLineOffset(item: object): number;
  export const textMetrics: { width(item: object, text?: unknown): number };
}
