// Pictures of a published month for the README, taken in Chromium.
import { existsSync, readdirSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

const [modules, month, out] = process.argv.slice(2).map((path) => resolve(path));
const { chromium } = createRequire(join(modules, "package.json"))("playwright-core");

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});

const opened = async (file, width, height) => {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.goto(pathToFileURL(file).href);
  return page;
};

const picture = (name) => ({ path: join(out, name) });

const report = await opened(join(month, "report/index.html"), 960, 960);
await report.screenshot(picture("report.png"));

const component = await opened(join(month, "report/fuel-injector.html"), 760, 900);
await component.locator("figure:has(.steps)").last().screenshot(picture("component.png"));

const briefings = join(month, "briefing");
if (existsSync(briefings)) {
  const size = (name) => statSync(join(briefings, name)).size;
  const longest = readdirSync(briefings).filter((name) => name.endsWith(".html"))
    .sort((a, b) => size(b) - size(a))[0];
  const briefing = await opened(join(briefings, longest), 1000, 1000);
  await briefing.evaluate(() => document.querySelector(".card").scrollIntoView());
  await briefing.screenshot(picture("briefing.png"));
} else {
  await report.evaluate(() => document.getElementById("due").scrollIntoView());
  await report.screenshot(picture("due.png"));
}
await browser.close();
