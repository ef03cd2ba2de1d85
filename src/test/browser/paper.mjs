import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";

const A4_POINTS = [595, 842];
const PAGES_OF_A_BATCH = 2;
const BATCH = 6;

// Tokens too small to see, in the first line of each head and at both ends of each row, tell from
// the printed text which page has what.
const mark = (page) => page.evaluate(() => {
  const token = (text) => {
    const span = document.createElement("span");
    span.style.cssText = "font-size:1px;letter-spacing:0;color:#777;white-space:nowrap";
    span.textContent = " " + text + " ";
    return span;
  };
  document.querySelectorAll("table").forEach((table, t) => {
    table.tHead?.rows[0].cells[0].append(token("hq" + t + "q"));
    [...table.tBodies].flatMap((body) => [...body.rows]).forEach((row, r) => {
      const cells = [...row.cells];
      const longest = cells.reduce((a, b) => (b.textContent.length > a.textContent.length ? b : a));
      cells[0].prepend(token("sq" + t + "q" + r + "q"));
      longest.append(token("eq" + t + "q" + r + "q"));
    });
  });
});

const pdf = async (page) => {
  const folder = mkdtempSync(join(tmpdir(), "printed"));
  try {
    const file = join(folder, "page.pdf");
    await page.pdf({ path: file, format: "A4", preferCSSPageSize: true });
    const text = execFileSync("pdftotext", ["-bbox", file, "-"], { maxBuffer: 1 << 30 }).toString();
    return text.split("<page ").slice(1).map((part) => ({
      size: part.match(/width="([\d.]+)" height="([\d.]+)"/).slice(1).map(Number),
      words: [...part.matchAll(/<word xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)">([^<]*)/g)]
        .map(([, left, top, right, bottom, word]) => ({ left: +left, top: +top, right: +right, bottom: +bottom, word })),
    }));
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const offThePaper = (sheets) => sheets.flatMap(({ size: [width, height], words }, i) =>
  words
    .filter((w) => w.left < -1 || w.right > width + 1 || w.top < -1 || w.bottom > height + 1)
    .slice(0, 2)
    .map((w) => "printed off the paper of page " + (i + 1) + ": '" + w.word + "'"));

const notA4 = (sheets) => sheets.flatMap(({ size }, i) => {
  const sides = [...size].sort((a, b) => a - b);
  return sides.some((side, j) => Math.abs(side - A4_POINTS[j]) > 2)
    ? ["page " + (i + 1) + " is printed on " + size.join(" by ") + " points, not on A4"] : [];
});

const tooMany = async (page, file, sheets) => {
  if (basename(dirname(file)) !== "briefing") return [];
  const [stated, positions] = await page.evaluate(() =>
    [document.body.dataset.pages ?? "", document.querySelectorAll(".card").length]);
  const most = stated !== "" ? Number(stated) : positions <= BATCH ? PAGES_OF_A_BATCH : Infinity;
  return sheets.length > most
    ? [positions + " positions take " + sheets.length + " printed pages, not " + most] : [];
};

const brokenTables = (sheets) => {
  const pages = sheets.map(({ words }) => words.map((w) => w.word).join(" "));
  const headless = pages.flatMap((text, i) => {
    const tables = new Set([...text.matchAll(/[se]q(\d+)q\d+q/g)].map((m) => m[1]));
    return [...tables]
      .filter((t) => !text.includes("hq" + t + "q"))
      .map((t) => "printed page " + (i + 1) + " has rows of table " + t + " without their heads");
  });
  const ends = new Map();
  pages.forEach((text, i) => {
    for (const [, , row] of text.matchAll(/([se])q(\d+q\d+)q/g)) {
      ends.set(row, (ends.get(row) ?? new Set()).add(i + 1));
    }
  });
  const cut = [...ends].filter(([, on]) => on.size > 1)
    .map(([row, on]) => "row " + row.replace("q", ".") + " is cut between printed pages " + [...on].join(" and "));
  return { found: [...headless.slice(0, 3), ...cut.slice(0, 3)], rows: ends.size };
};

const shrunk = (page) => page.evaluate(() => {
  const found = [];
  document.querySelectorAll("thead").forEach((head) => {
    if (getComputedStyle(head).display !== "table-header-group") found.push("heads are not repeated in print");
  });
  document.querySelectorAll("tbody tr").forEach((row) => {
    if (getComputedStyle(row).breakInside !== "avoid") found.push("rows may be cut in print");
  });
  const room = document.documentElement.clientWidth;
  document.querySelectorAll("body *").forEach((element) => {
    if (!element.closest(".wide") && element.getBoundingClientRect().right > room + 1) {
      found.push("wider than the paper: " + element.tagName.toLowerCase() + " '"
        + element.textContent.trim().slice(0, 40) + "', "
        + Math.round(element.getBoundingClientRect().right) + " of " + room + " px");
    }
  });
  return [...new Set(found)].slice(0, 4);
});

// A4, heads on every page, whole rows, nothing beside the paper.
export const printed = async (page, file) => {
  const plain = await pdf(page);
  const found = [...notA4(plain), ...offThePaper(plain), ...(await tooMany(page, file, plain))];
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: 703, height: 1000 }); // A4 less two margins of 12 mm, at 96 px an inch
  found.push(...(await shrunk(page)));
  const rows = await page.locator("tbody tr").count();
  await mark(page);
  const tables = brokenTables(await pdf(page));
  if (tables.rows < rows) found.push(rows - tables.rows + " of " + rows + " rows are not printed");
  return [...found, ...tables.found];
};
