// Holds JSON to the schema files of the project and SARIF to its published schema, by ajv. Each
// schema must be used, and must refuse an output that lacks a key or has another kind of format.
const fs = require('fs');
const path = require('path');
const Ajv2020 = require('ajv/dist/2020');
const Ajv04 = require('ajv-draft-04');
const formats = require('ajv-formats');

const [schemas, sarif, work] = process.argv.slice(2);
const read = (file) => JSON.parse(fs.readFileSync(file, 'utf8'));
let failed = false;
const fail = (text) => { console.error('FAILED: ' + text); failed = true; };

const used = new Set();
for (const file of fs.readdirSync(path.join(work, 'json'))) {
  const name = file.replace(/-.*|\.json$/g, '');
  used.add(name + '.json');
  const ajv = new Ajv2020({ strict: false });
  formats(ajv);
  const schema = read(path.join(schemas, name + '.json'));
  const valid = ajv.compile(schema);
  const doc = read(path.join(work, 'json', file));
  if (!valid(doc)) fail(file + ': ' + ajv.errorsText(valid.errors));
  if (!Number.isInteger(doc.format)) fail(file + ' has no format');
  if (valid({ ...doc, format: 'one' })) fail(name + '.json takes any format');
  if (!(schema.required || []).includes('format')) fail(name + '.json does not ask for its format');
  for (const key of schema.required || []) {
    const { [key]: _, ...rest } = doc;
    if (valid(rest)) fail(name + '.json takes an output without ' + key);
  }
}
for (const file of fs.readdirSync(schemas)) if (!used.has(file)) fail('no output was held to ' + file);
console.log(used.size + ' schemas: real output of each verb fits, by ajv');

const ajv = new Ajv04({ strict: false });
formats(ajv);
const valid = ajv.compile(read(sarif));
for (const file of fs.readdirSync(path.join(work, 'sarif'))) {
  const log = read(path.join(work, 'sarif', file));
  if (!valid(log)) fail(file + ': ' + JSON.stringify(valid.errors));
  const results = log.runs.reduce((n, r) => n + r.results.length, 0);
  if (results > 25000 || results === 0 && file !== 'broken.sarif') fail(file + ' has ' + results + ' results');
  console.log(file + ': ' + results + ' results fit the published schema, by ajv');
}
process.exit(failed ? 1 : 0);
