// Opens every page of a published month in Chromium and looks at it as a reader, a keyboard, a
// telephone and a printer do. Each complaint is a line "FILE: what"; any makes the exit code 1.
//   node check.mjs FOLDER      the folders report and briefing are looked for in it, else its own pages
import { existsSync, readdirSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { axe } from "./axe.mjs";
import { keyboard } from "./keyboard.mjs";
import { printed } from "./paper.mjs";
import { phone, withoutScript } from "./screen.mjs";
import { copied, filtered, sorted } from "./tables.mjs";

const PAGES = ["report", "briefing"];

const folder = resolve(process.argv[2] ?? ".");
const kept = PAGES.map((name) => join(folder, name)).filter(existsSync);
const files = (kept.length ? kept : [folder]).flatMap((place) =>
  readdirSync(place).filter((name) => name.endsWith(".html")).sort().map((name) => join(place, name)));

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
let complaints = 0;

// One visit in a context of its own: whatever else it asks for is refused and complained of.
const visit = async (file, settings, look) => {
  const url = pathToFileURL(file).href;
  const found = [];
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...settings });
  try {
    await context.route("**/*", (route) => {
      if (route.request().url().split("#")[0] === url) return route.continue();
      found.push("asks for " + route.request().url());
      return route.abort();
    });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    page.on("console", (line) => {
      if (["error", "warning"].includes(line.type())) found.push("console: " + line.text());
    });
    page.on("pageerror", (error) => found.push("script: " + error.message));
    await page.goto(url);
    found.push(...(await look(page, file, context)));
  } catch (fault) {
    found.push(look.name + " could not be looked at: " + fault.message.split("\n")[0]);
  } finally {
    await context.close();
  }
  return found;
};

for (const file of files) {
  const found = [
    ...(await visit(file, {}, sorted)),
    ...(await visit(file, {}, filtered)),
    ...(await visit(file, { permissions: ["clipboard-read", "clipboard-write"] }, copied)),
    ...(await visit(file, {}, keyboard)),
    ...(await visit(file, { bypassCSP: true }, axe)),
    ...(await visit(file, { viewport: { width: 390, height: 844 } }, phone)),
    ...(await visit(file, { javaScriptEnabled: false }, withoutScript)),
    ...(await visit(file, {}, printed)),
  ];
  for (const complaint of new Set(found)) {
    complaints++;
    console.log(relative(folder, file) + ": " + complaint.replace(/\s+/g, " ").slice(0, 300));
  }
}
await browser.close();
if (files.length === 0) console.log(basename(folder) + ": no page");
console.log(files.length + " pages, " + complaints + " complaints");
process.exit(files.length === 0 || complaints > 0 ? 1 : 0);
