// Judges every sheet of a folder; .ci/sheets calls it. MODULES is the folder of node's modules.
import { createRequire } from "node:module";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";

const require = createRequire(join(process.env.MODULES, "x.js"));
const { HtmlValidate } = require("html-validate");
const puppeteer = require("puppeteer-core");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const parse5 = await import(join(process.env.MODULES, "parse5/dist/index.js"));

const folder = process.argv[2];
// The sizes at which a sheet is read, in CSS pixels; paper at 96 to the inch.
const sizes = { phone: [390, 844], tablet: [820, 1180], a4: [794, 1123], letter: [816, 1056] };
let faults = 0;
const fault = (file, text) => { faults++; console.log(`${file}: FAULT ${text}`); };

const validator = new HtmlValidate({
  extends: ["html-validate:standard"],
  rules: { "no-inline-style": "off", "long-title": "off", "require-sri": "off" },
});
const browser = await puppeteer.launch({
  executablePath: "/usr/bin/chromium", args: ["--no-sandbox", "--disable-gpu"],
});
for (const file of readdirSync(folder).filter((f) => f.endsWith(".html")).sort()) {
  const path = join(folder, file);
  const html = readFileSync(path, "utf8");
  const errors = [];
  parse5.parse(html, { onParseError: (e) => errors.push(`${e.code} at line ${e.startLine}`) });
  for (const e of errors) fault(file, `parse5: ${e}`);
  const report = await validator.validateString(html);
  for (const r of report.results) {
    for (const m of r.messages) fault(file, `html-validate: ${m.ruleId} line ${m.line}: ${m.message}`);
  }
  let checks = 0;
  for (const scheme of ["light", "dark", "print"]) {
    for (const [name, [width, height]] of Object.entries(sizes)) {
      const page = await browser.newPage();
      let asked = 0, ran = false;
      page.on("request", (r) => { if (!r.url().startsWith("file:")) asked++; });
      page.on("dialog", async (d) => { ran = true; await d.dismiss(); });
      await page.setViewport({ width, height });
      await page.emulateMediaType(scheme === "print" ? "print" : "screen");
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme === "dark" ? "dark" : "light" }]);
      await page.goto("file://" + path);
      await page.evaluate(axe);
      const result = await page.evaluate(() => window.axe.run());
      checks += result.passes.length;
      for (const v of result.violations) {
        fault(file, `axe, ${scheme}, ${name}: ${v.id} (${v.impact}), ${v.nodes.length} places, ${v.nodes[0].html.slice(0, 120)}`);
      }
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      if (wide > 0) fault(file, `${scheme}, ${name}: ${wide} px wider than the screen`);
      if (asked) fault(file, `asks the network ${asked} times`);
      if (ran || await page.evaluate(() => document.scripts.length && [...document.scripts].some((s) => s.text.includes("alert")))) {
        fault(file, "runs a script");
      }
      if (scheme !== "print" || name === "a4" || name === "letter") {
        await page.screenshot({ path: join(folder, `${file.slice(0, -5)}-${name}-${scheme}.png`), fullPage: true });
      }
      await page.close();
    }
  }
  for (const format of ["A4", "Letter"]) {
    const page = await browser.newPage();
    await page.goto("file://" + path);
    await page.pdf({ path: join(folder, `${file.slice(0, -5)}-${format}.pdf`), format, preferCSSPageSize: false });
    await page.close();
  }
  console.log(`${file}: parse5 ${errors.length} errors, html-validate ${report.errorCount}, axe ${checks} checks passed`);
}
await browser.close();
console.log(faults ? `${faults} faults` : "no fault");
process.exit(faults ? 1 : 0);
