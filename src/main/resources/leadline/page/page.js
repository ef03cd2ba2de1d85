"use strict";
(() => {
  const exact = (cell) => cell.dataset.v ?? cell.textContent.trim();

  const compare = (a, b) => {
    if (a === "" || b === "") return (a === "") - (b === "");
    const numbers = Number(a) - Number(b);
    return Number.isNaN(numbers) ? a.localeCompare(b, "en", { numeric: true }) : numbers;
  };

  const rowsOf = (table) => [...table.tBodies].flatMap((body) => [...body.rows]);

  const key = (row, column) => {
    const cell = row.cells[column];
    return cell.classList.contains("none") ? "" : exact(cell);
  };

  const sortBy = (table, heads, column) => {
    const falling = heads[column].getAttribute("aria-sort") === "ascending";
    const rows = rowsOf(table);
    rows.sort((a, b) => {
      const [x, y] = [key(a, column), key(b, column)];
      return x === "" || y === "" || !falling ? compare(x, y) : compare(y, x);
    });
    table.tBodies[0].append(...rows);
    heads.forEach((head) => head.removeAttribute("aria-sort"));
    heads[column].setAttribute("aria-sort", falling ? "descending" : "ascending");
  };

  const field = (text) => (/[",\n\r]/.test(text) ? '"' + text.replaceAll('"', '""') + '"' : text);

  const guarded = (text) => (/^[=+\-@'\t\r]/.test(text) ? "'" + text : text);

  const fields = (cell, head) => {
    const columns = head.dataset.columns.split(" ");
    if (cell.classList.contains("none")) return columns.map(() => "");
    if (columns.length > 1) return [cell.dataset.v, cell.dataset.lo, cell.dataset.hi];
    return [cell.dataset.v ?? field(guarded(cell.textContent))];
  };

  const csv = (table, heads) => {
    const shown = rowsOf(table).filter((row) => !row.hidden);
    const lines = shown.map((row) =>
      [...row.cells].flatMap((cell, column) => fields(cell, heads[column])).join(","));
    const names = heads.flatMap((head) => head.dataset.columns.split(" ")).join(",");
    return [names, ...lines, ""].join("\n");
  };

  const copy = (text) => {
    const area = document.createElement("textarea");
    area.value = text;
    area.className = "copied";
    document.body.append(area);
    area.select();
    const done = document.execCommand("copy");
    area.remove();
    return done;
  };

  // Rows as the page had them: together with those of which a sentence speaks.
  const asWritten = (table, heads, input) => {
    const bodies = [...table.tBodies].map((body) => [body, [...body.rows]]);
    return () => {
      bodies.forEach(([body, rows]) => body.append(...rows));
      heads.forEach((head) => head.removeAttribute("aria-sort"));
      input.value = "";
      input.dispatchEvent(new Event("input"));
    };
  };

  const leadTo = (id, writeAgain) => {
    const rows = document.getElementById(id);
    const block = rows?.closest(".table");
    if (!block || rows === block) return;
    writeAgain.get(block)();
    rows.scrollIntoView({ block: "center" });
  };

  const tools = (block, table, heads) => {
    const bar = document.createElement("div");
    bar.className = "tools";
    const label = document.createElement("label");
    const input = document.createElement("input");
    input.type = "search";
    label.append("Rows with ", input);
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = "Copy as CSV";
    const status = document.createElement("span");
    status.setAttribute("role", "status");
    input.addEventListener("input", () => {
      const wanted = input.value.trim().toLowerCase();
      const rows = rowsOf(table);
      rows.forEach((row) => { row.hidden = !row.textContent.toLowerCase().includes(wanted); });
      const left = rows.filter((row) => !row.hidden).length;
      status.textContent = wanted === "" ? "" : left + " of " + rows.length + " rows";
    });
    button.addEventListener("click", () => {
      const text = csv(table, heads);
      status.textContent = copy(text)
        ? text.split("\n").length - 2 + " rows copied"
        : "The browser did not let the rows be copied.";
      button.focus();
    });
    bar.append(label, button, status);
    block.prepend(bar);
    return input;
  };

  const sortable = (table, heads) => heads.forEach((head, column) => {
    const button = document.createElement("button");
    button.type = "button";
    button.append(...head.childNodes);
    button.addEventListener("click", () => sortBy(table, heads, column));
    head.append(button);
  });

  const writeAgain = new Map();
  document.querySelectorAll(".table").forEach((block) => {
    const table = block.querySelector("table");
    const heads = [...table.tHead.rows[0].cells];
    sortable(table, heads);
    const input = tools(block, table, heads);
    writeAgain.set(block, asWritten(table, heads, input));
  });
  document.querySelectorAll(".points a").forEach((link) =>
    link.addEventListener("click", () => leadTo(link.hash.slice(1), writeAgain)));
})();
