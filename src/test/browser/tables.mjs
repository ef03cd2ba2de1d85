// The tools of the tables: they sort, they filter, they copy.

// Each head twice: rising and then falling, empty cells last, no row lost.
export const sorted = (page) => page.evaluate(() => {
  const key = (row, column) => {
    const cell = row.cells[column];
    return cell.classList.contains("none") ? "" : cell.dataset.v ?? cell.textContent.trim();
  };
  const compare = (a, b) => {
    const numbers = Number(a) - Number(b);
    return Number.isNaN(numbers) ? a.localeCompare(b, "en", { numeric: true }) : numbers;
  };
  const inOrder = (keys, sign) => {
    const filled = keys.filter((k) => k !== "");
    return keys.slice(0, filled.length).every((k) => k !== "")
      && filled.every((k, i) => i === 0 || sign * compare(filled[i - 1], k) <= 0);
  };
  const found = [];
  document.querySelectorAll(".table").forEach((block) => {
    const table = block.querySelector("table");
    const heads = [...table.tHead.rows[0].cells];
    const rows = () => [...table.tBodies].flatMap((body) => [...body.rows]);
    const before = new Set(rows());
    heads.forEach((head, column) => {
      const name = "table " + block.id + ", column " + head.dataset.columns;
      const button = head.querySelector("button");
      if (!button) {
        found.push(name + " has no button to sort by");
        return;
      }
      for (const [state, sign] of [["ascending", 1], ["descending", -1]]) {
        button.click();
        if (head.getAttribute("aria-sort") !== state
            || heads.some((other) => other !== head && other.hasAttribute("aria-sort"))) {
          found.push(name + ": aria-sort does not say " + state);
        }
        if (!inOrder(rows().map((row) => key(row, column)), sign)) {
          found.push(name + " is not sorted " + state);
        }
        if (rows().length !== before.size || rows().some((row) => !before.has(row))) {
          found.push(name + ": rows lost by sorting");
        }
      }
    });
  });
  return found;
});

const shown = (block) => block.evaluate((element) => {
  const rows = [...element.querySelectorAll("tbody tr")];
  return rows.map((row) => ({
    text: row.textContent.toLowerCase(),
    first: row.cells[0].textContent.trim().toLowerCase(),
    seen: row.getClientRects().length > 0,
  }));
});

// What is typed narrows the rows to those that have it; all come back when it goes.
export const filtered = async (page) => {
  const found = [];
  for (const block of await page.locator(".table").all()) {
    const name = "table " + (await block.getAttribute("id"));
    const input = block.locator("input[type=search]");
    if ((await input.count()) !== 1) {
      found.push(name + " has no field to filter by");
      continue;
    }
    const all = await shown(block);
    if (all.length === 0) continue;
    for (const typed of [all[all.length - 1].first, "no row has this"]) {
      await input.fill(typed);
      const rows = await shown(block);
      if (rows.length !== all.length || rows.some((row) => row.seen !== row.text.includes(typed))) {
        found.push(name + ": wrong rows for '" + typed + "'");
      }
    }
    await input.fill("");
    if ((await shown(block)).some((row) => !row.seen)) {
      found.push(name + ": rows stay hidden when nothing is typed");
    }
  }
  return found;
};

const records = (csv) => {
  const rows = [];
  let row = [];
  for (const [, quoted, plain, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\n)/g)) {
    row.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === "\n") {
      rows.push(row);
      row = [];
    }
  }
  return rows;
};

// What lands on the clipboard, read back: every cell of every row, exact, with limits.
export const copied = async (page) => {
  const found = [];
  for (const block of await page.locator(".table").all()) {
    const name = "table " + (await block.getAttribute("id"));
    const button = block.getByRole("button", { name: "Copy as CSV" });
    if ((await button.count()) !== 1) {
      found.push(name + " has no button to copy it");
      continue;
    }
    await page.evaluate(() => navigator.clipboard.writeText("nothing"));
    await button.click();
    const got = records(await page.evaluate(() => navigator.clipboard.readText()));
    const expected = await block.evaluate((element) => {
      const heads = [...element.querySelectorAll("thead th")];
      const cells = [...element.querySelectorAll("tbody tr")].map((row) =>
        [...row.cells].flatMap((cell, i) => {
          const columns = heads[i].dataset.columns.split(" ");
          if (cell.classList.contains("none")) return columns.map(() => "");
          return columns.length > 1
            ? [cell.dataset.v, cell.dataset.lo, cell.dataset.hi]
            : [cell.dataset.v ?? cell.textContent];
        }));
      return [heads.flatMap((head) => head.dataset.columns.split(" ")), ...cells];
    });
    if (got.length !== expected.length) {
      found.push(name + ": " + got.length + " lines copied of " + expected.length);
      continue;
    }
    const differs = expected.findIndex((row, i) =>
      row.length !== got[i].length
      || row.some((cell, j) => cell !== got[i][j] && "'" + cell !== got[i][j]));
    if (differs >= 0) found.push(name + ": line " + differs + " copied as " + got[differs].join(","));
  }
  return found;
};
