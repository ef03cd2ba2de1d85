// The page itself does not scroll sideways on a telephone; tables and charts do within theirs.
export const phone = (page) => page.evaluate(() => {
  const width = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= width) return [];
  const widest = [...document.body.querySelectorAll("*")]
    .filter((element) => !element.closest(".scroll")?.contains(element.parentElement))
    .find((element) => element.getBoundingClientRect().right > width + 1);
  return ["wider than a telephone of " + width + " px: "
    + (widest ? widest.tagName.toLowerCase() + " '" + widest.textContent.trim().slice(0, 60) + "'" : "the page")];
});

// Every text of the file is to be seen before any script has run.
export const withoutScript = (page) => page.evaluate(() => {
  const silent = "script, style, title, desc, noscript, template";
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found = [];
  while (walker.nextNode()) {
    const text = walker.currentNode;
    const element = text.parentElement;
    if (text.data.trim() === "" || element.closest(silent)) continue;
    const style = getComputedStyle(element);
    if (element.getClientRects().length === 0 || style.visibility !== "visible" || style.opacity === "0") {
      found.push("without script not to be seen: '" + text.data.trim().slice(0, 60) + "'");
    }
  }
  if (document.querySelector("noscript")) found.push("has a noscript element");
  return found.slice(0, 5);
});
