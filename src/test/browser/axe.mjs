import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

// What keeps readers with other senses or tools from the page.
export const axe = async (page) => {
  await page.evaluate(source);
  const violations = await page.evaluate(async () =>
    (await window.axe.run(document, { resultTypes: ["violations"], preload: false })).violations.map((rule) => ({
      id: rule.id,
      impact: rule.impact,
      help: rule.help,
      nodes: rule.nodes.length,
      first: String(rule.nodes[0].target),
    })));
  return violations
    .filter((rule) => ["serious", "critical"].includes(rule.impact))
    .map((rule) =>
      `axe ${rule.id} (${rule.impact}): ${rule.help}; ${rule.nodes} elements, first ${rule.first}`);
};
