// A client on the protocol's own library: its types, its framing and its life cycle. It types a
// formula with wide characters, asks for everything once, and ends in order. Every message of both
// sides is held to the published meta-model.
const { spawn } = require('child_process');
const fs = require('fs');
const path = require('path');
const { pathToFileURL } = require('url');
const rpc = require('vscode-jsonrpc/node');
const p = require('vscode-languageserver-protocol');

const [program, formulas, modelFile] = process.argv.slice(2);
const fail = (text) => { console.error('FAILED: ' + text); process.exit(1); };
setTimeout(() => fail('no answer within two minutes'), 120000).unref();
const zero = { line: 0, character: 0 };

// A model that takes anything would hold nothing.
{
  const model = require('./metamodel.js')(modelFile);
  const said = { uri: 'file:///a', version: 1, diagnostics: [{ range: { start: zero, end: zero }, message: 'm' }] };
  const message = (params) => ({ jsonrpc: '2.0', method: 'textDocument/publishDiagnostics', params });
  if (model.holds(message(said))) fail('a right message is refused: ' + model.holds(message(said)));
  for (const wrong of [{ ...said, diagnostics: [{ message: 'm' }] }, { ...said, more: 1 }, { ...said, version: 'a' },
    { ...said, diagnostics: [{ ...said.diagnostics[0], severity: 9 }] }]) {
    if (!model.holds(message(wrong))) fail('a wrong message is taken: ' + JSON.stringify(wrong));
  }
}

// begin starts a server and says initialize.
async function begin(encoding) {
  const model = require('./metamodel.js')(modelFile);
  const server = spawn(program, ['editor'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const ended = new Promise((done) => server.on('exit', done));
  const held = (message) => {
    const wrong = model.holds(message);
    if (wrong) fail('meta-model: ' + wrong);
  };
  const reader = new rpc.StreamMessageReader(server.stdout);
  const listen = reader.listen.bind(reader);
  reader.listen = (take) => listen((message) => { held(message); take(message); });
  const writer = new rpc.StreamMessageWriter(server.stdin);
  const write = writer.write.bind(writer);
  writer.write = (message) => { held(JSON.parse(JSON.stringify(message))); return write(message); };
  const c = rpc.createMessageConnection(reader, writer);
  const waiting = [];
  c.onNotification(p.PublishDiagnosticsNotification.type, (d) => waiting.forEach((w) => w(d)));
  const diagnostics = (version) => new Promise((done) =>
    waiting.push((d) => d.version === version && done(d.diagnostics)));
  c.listen();
  const init = await c.sendRequest(p.InitializeRequest.type, { processId: process.pid, rootUri: null,
    capabilities: { general: { positionEncodings: [encoding] },
      textDocument: { publishDiagnostics: { relatedInformation: true } } } });
  if (init.capabilities.positionEncoding !== encoding) fail('counts in ' + init.capabilities.positionEncoding);
  c.sendNotification(p.InitializedNotification.type, {});
  return { c, init, model, ended, diagnostics };
}

async function end(s) {
  await s.c.sendRequest(p.ShutdownRequest.type);
  s.c.sendNotification(p.ExitNotification.type);
  const status = await s.ended;
  if (status !== 0) fail('exit status ' + status);
}

// width is how long a text is in a client's units.
const width = { 'utf-16': (text) => text.length, 'utf-8': (text) => Buffer.byteLength(text) };

// asks types a formula with wide characters before each place that is asked about.
async function asks(encoding) {
  const s = await begin(encoding);
  const { c } = s;
  const uri = pathToFileURL(path.join(formulas, 'typed.hcl')).href;
  const lines = ['formula "Rolls é e\u0301 😀" {', '  dough "d é😀" {', '    ingredients = {',
    '      /* 😀😀 é e\u0301 */ "bread flour" = "1 kg"', '      "water" = "600 g"', '      "instant yeast" = "1 %"',
    '      /* é */ "salt" = "3.5 %"', '    }', '    steps = [', '      { mix = "8 min", by = "spiral" },', '    ]', '  }', '}', ''];
  const unitsTo = (line, text) => width[encoding](lines[line].slice(0, lines[line].indexOf(text)));
  const at = (line, text, more = 0) => ({ line, character: unitsTo(line, text) + more });
  let got = s.diagnostics(1);
  c.sendNotification(p.DidOpenTextDocumentNotification.type,
    { textDocument: { uri, languageId: 'hcl', version: 1, text: lines.join('\n') } });
  const salt = (await got).find((d) => d.code === 'salt-high');
  if (!salt) fail('salt of 3.5 % is not found');
  if (salt.range.end.character !== width[encoding]('  dough "d é😀"')) fail('salt-high: ' + JSON.stringify(salt.range));
  console.log(encoding + ': salt-high at ' + JSON.stringify(salt.range));

  const hover = await c.sendRequest(p.HoverRequest.type, { textDocument: { uri }, position: at(3, 'flour') });
  if (!hover || hover.range.start.character !== unitsTo(3, 'bread')) fail('hover: ' + JSON.stringify(hover));
  console.log('hover behind emoji and accents: ' + hover.contents.value.split('\n')[0] + ' at ' + JSON.stringify(hover.range));

  if (encoding === 'utf-16') {
    const actions = await c.sendRequest(p.CodeActionRequest.type, { textDocument: { uri },
      range: salt.range, context: { diagnostics: [salt] } });
    if (actions.length === 0) fail('no action for salt-high');
    console.log('actions there: ' + actions.map((a) => a.title).join(', '));
  }

  got = s.diagnostics(2);
  c.sendNotification(p.DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 },
    contentChanges: [{ range: { start: at(6, '3.5'), end: at(6, ' %') }, text: '1.8' }] });
  if ((await got).some((d) => d.code === 'salt-high')) fail('the salt is still high');
  console.log('typed 1.8 behind é: salt-high is gone');
  if (encoding === 'utf-8') return end(s);

  const completion = await c.sendRequest(p.CompletionRequest.type, { textDocument: { uri }, position: { line: 9, character: 8 } });
  console.log('completion in a step: ' + completion.items.length + ' words, ' + completion.items.slice(0, 4).map((i) => i.label).join(' '));
  const hints = await c.sendRequest(p.InlayHintRequest.type,
    { textDocument: { uri }, range: { start: zero, end: { line: 20, character: 0 } } });
  console.log('hints: ' + hints.map((h) => h.label).join(', '));
  const edits = await c.sendRequest(p.DocumentFormattingRequest.type,
    { textDocument: { uri }, options: { tabSize: 2, insertSpaces: true } });
  console.log('formatting: ' + edits.length + ' edits');
  const definition = await c.sendRequest(p.DefinitionRequest.type, { textDocument: { uri }, position: at(1, '"d é', 1) });
  const prepared = await c.sendRequest(p.PrepareRenameRequest.type, { textDocument: { uri }, position: at(1, '"d é', 1) });
  const renamed = await c.sendRequest(p.RenameRequest.type, { textDocument: { uri }, position: at(1, '"d é', 1), newName: 'e' });
  if (!definition || prepared.placeholder !== 'd é😀' || renamed.changes[uri].length !== 1) fail('rename of a part');

  const rules = pathToFileURL(path.join(formulas, 'mine.hcl')).href;
  const rule = 'about = "mine"\n\nrule "sweet" {\n  on = "dough"\n  level = "note"\n  limits = { most = 20 }\n' +
    '  when = "dough.suger_pct > limit.most"\n  say = "Sweet."\n  why = "So."\n  source = "common practice"\n}\n';
  got = s.diagnostics(7);
  c.sendNotification(p.DidOpenTextDocumentNotification.type,
    { textDocument: { uri: rules, languageId: 'hcl', version: 7, text: rule } });
  const wrong = (await got)[0];
  const word = rule.split('\n')[wrong.range.start.line].slice(wrong.range.start.character, wrong.range.end.character);
  console.log('rule file: "' + word + '" is underlined: ' + wrong.message);
  if (word !== 'suger_pct') fail('the misspelt fact is not underlined: ' + word);
  const facts = await c.sendRequest(p.CompletionRequest.type,
    { textDocument: { uri: rules }, position: { line: 6, character: 20 } });
  if (!facts.items.some((i) => i.label === 'dough.sugar_pct')) fail('completion lacks dough.sugar_pct');
  console.log('completion there: ' + facts.items.length + ' words, with dough.sugar_pct');
  const fixes = await c.sendRequest(p.CodeActionRequest.type, { textDocument: { uri: rules },
    range: wrong.range, context: { diagnostics: [wrong] } });
  if (!fixes.some((f) => f.title === 'write sugar_pct')) fail('no action writes sugar_pct');
  console.log('action there: ' + fixes.map((f) => f.title).join(', '));
  await end(s);
  console.log('shutdown, exit: status 0');
  console.log('held to the meta-model: ' + Object.entries(s.model.count).map(([k, n]) => `${n} ${k}`).join(', '));
}

(async () => {
  await asks('utf-16');
  await asks('utf-8');
  const s = await begin('utf-16'); // exit without shutdown
  s.c.sendNotification(p.ExitNotification.type);
  const status = await s.ended;
  if (status !== 1) fail('exit without shutdown: status ' + status);
  console.log('exit without shutdown: status 1');
  process.exit(0);
})().catch((e) => fail(e.stack));
