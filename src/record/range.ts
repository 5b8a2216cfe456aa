export { type Range, spanOf } from "../model/range.ts";
