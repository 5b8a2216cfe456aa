// Functions that run inside a page; each stands alone, for its text is sent there.

export function contentsOf(pages) {
  const loading = "iframe,object,embed,link,base,form,img,image,video,audio,use,foreignObject,template,frame,portal";
  return pages.map((html) => {
    const page = new DOMParser().parseFromString(html, "text/html");
    const attributes = [...page.querySelectorAll("*")].flatMap((element) =>
      [...element.attributes].map(({ name, value }) => ({
        name: name.toLowerCase(),
        value,
        element: element.localName,
      })),
    );
    const refreshing = [...page.querySelectorAll("meta[http-equiv]")].filter(
      (meta) => meta.getAttribute("http-equiv") !== "Content-Security-Policy",
    );
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(page.querySelector("style")?.textContent ?? "");
    const names = (parent) => [...parent.children].map((element) => element.localName);
    return {
      frame: [...names(page.head), "|", ...names(page.body)],
      title: page.title,
      rules: [...sheet.cssRules].map((rule) => `${rule.constructor.name} ${rule.selectorText ?? ""}`),
      scripts: [...page.querySelectorAll("script")].map((script) => `${script.type}#${script.id}`),
      active: [...page.querySelectorAll(loading), ...refreshing].map((element) => element.localName),
      actingAttributes: attributes
        // A link to a place in the page itself loads nothing.
        .filter(({ name, value }) => !(name === "href" && /^#[a-z0-9-]+$/u.test(value)))
        .filter(
          ({ name, value }) =>
            /^on|^(?:href|src|xlink:href|action|formaction|srcdoc)$/u.test(name) || /javascript:/iu.test(value),
        )
        .map(({ name, element }) => `${element} ${name}`),
      text: page.querySelector("main")?.textContent ?? "",
      data: page.getElementById("record")?.textContent ?? "",
    };
  });
}

export function elementsBeyond() {
  const edge = window.innerWidth + 0.5;
  const beyond = [...document.querySelectorAll("main, main *")]
    .filter((element) => element.closest(".wide") === null && element.closest("svg *") === null)
    .map((element) => ({ element, box: element.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 0 && (box.right > edge || box.left < -0.5))
    .map(({ element, box }) => `${element.localName}.${element.getAttribute("class") ?? ""} ${Math.round(box.right)}`);
  return { scrollWidth: document.documentElement.scrollWidth, beyond };
}

export function seenText() {
  // biome-ignore lint/performance/useDomNodeTextContent: only what is seen
  return document.body.innerText.replace(/\s+/gu, " ").trim();
}

export function uncuttable() {
  return [...document.querySelectorAll("tr, figure, .answer-box, .fact")]
    .map((element) => ({ element, box: element.getBoundingClientRect() }))
    .filter(({ box }) => box.height > 0)
    .map(({ element, box }) => ({
      name: `${element.localName} ${element.textContent.trim().slice(0, 40)}`,
      height: box.height,
      breakInside: getComputedStyle(element).breakInside,
    }));
}

export function verdictColours() {
  const backgroundOf = (element) => {
    for (let at = element; at !== null; at = at.parentElement) {
      const colour = getComputedStyle(at).backgroundColor;
      if (colour !== "rgba(0, 0, 0, 0)") return colour;
    }
    return "rgb(255, 255, 255)";
  };
  const verdicts = document.querySelectorAll(".answer-box:not(.what-to-do) .verdict, .sheet tbody td:last-child");
  return [...verdicts]
    .filter((element) => element.getBoundingClientRect().height > 0)
    .map((element) => ({
      text: element.textContent.trim(),
      colour: getComputedStyle(element).color,
      background: backgroundOf(element),
    }));
}

export function sheetRows() {
  return [...document.querySelectorAll(".sheet tbody tr")].map((row) =>
    [...row.children].map((cell) => cell.textContent.trim()),
  );
}

export function figureTexts() {
  return [...document.querySelectorAll("figure")]
    .filter((figure) => figure.getBoundingClientRect().height > 0)
    .map((figure) =>
      [...figure.querySelectorAll(".picture-title, figcaption, svg text")]
        .flatMap((element) => element.textContent.split(/\s+/u))
        .filter((word) => word !== ""),
    );
}

export function scrollingPlaces() {
  return [...document.querySelectorAll("section.wide")]
    .filter((place) => place.clientWidth > 0)
    .map((place) => ({
      name: place.getAttribute("aria-label") ?? place.textContent.trim().slice(0, 40),
      scrolls: place.scrollWidth > place.clientWidth + 1,
      says: place.querySelector(".sideways").getBoundingClientRect().height > 0,
    }));
}
