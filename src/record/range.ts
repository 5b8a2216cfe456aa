export { spanOf } from "../model/range.ts";
