// Tab goes to every control in the order of the page, and shows where it is.
export const keyboard = async (page) => {
  const found = [];
  const names = await page.evaluate(() => {
    const all = [...document.querySelectorAll("a[href], button, input, select, textarea, [tabindex='0']")];
    const controls = all.filter((element) => element.getClientRects().length > 0);
    controls.forEach((element, i) => { element.dataset.place = i; });
    return controls.map((element) =>
      element.tagName.toLowerCase() + " '"
      + (element.getAttribute("aria-label") ?? element.textContent).trim().slice(0, 60) + "'");
  });
  for (let place = 0; place < names.length; place++) {
    await page.keyboard.press("Tab");
    const here = await page.evaluate(() => {
      const element = document.activeElement;
      const style = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      return {
        place: element.dataset.place ?? "none",
        outlined: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) > 0,
        inSight: box.width > 0 && box.bottom > 0 && box.top < innerHeight
          && box.right > 0 && box.left < innerWidth,
      };
    });
    if (here.place !== String(place)) {
      found.push("Tab goes to " + (names[here.place] ?? "nothing") + " where " + names[place] + " is next");
      break;
    }
    if (!here.outlined) found.push("focus on " + names[place] + " is not shown");
    if (!here.inSight) found.push("focus on " + names[place] + " is out of sight");
  }
  return found;
};
