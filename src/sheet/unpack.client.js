// Unpacks the program of the sheet and runs it. The policy of the page pins both, so that nothing else can run.
const show = (text) => {
  document.querySelector("#sheet").textContent = text;
};
const unpack = async () => {
  const bytes = Uint8Array.from(atob(document.querySelector("#program").textContent), (sign) => sign.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const script = document.createElement("script");
  script.textContent = await new Response(stream).text();
  document.head.append(script);
};
unpack().catch(() =>
  show("This browser is too old for the sheet: it needs one of 2023 or later. Print the sheet and write by hand."),
);
