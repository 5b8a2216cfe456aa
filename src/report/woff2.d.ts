/** Parts of a font file, brought in as base64 text by the build and by the tests. */
declare module "*.woff2?latin" {
  const base64: string;
  export default base64;
}
declare module "*.woff2?latin-1" {
  const base64: string;
  export default base64;
}
declare module "*.woff2?latin-extended-a" {
  const base64: string;
  export default base64;
}
declare module "*.woff2?latin+signs" {
  const base64: string;
  export default base64;
}
declare module "*.woff2?greek" {
  const base64: string;
  export default base64;
}
declare module "*.woff2?formulas" {
  const base64: string;
  export default base64;
}
