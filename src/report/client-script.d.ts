/** A script that runs in a page, brought in as text by the build and by the tests. */
declare module "*.client.js" {
  const script: string;
  export default script;
}
