/** A font file, brought in as base64 text by the build and by the tests. */
declare module "*.woff2" {
  const base64: string;
  export default base64;
}
