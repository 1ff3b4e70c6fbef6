// A client on the protocol's own library: its types, its framing and its life cycle. It types a
// formula with wide characters, asks for everything once, and ends in order.
const { spawn } = require('child_process');
const fs = require('fs');
const path = require('path');
const { pathToFileURL } = require('url');
const rpc = require('vscode-jsonrpc/node');
const p = require('vscode-languageserver-protocol');

const [program, formulas] = process.argv.slice(2);
const fail = (text) => { console.error('FAILED: ' + text); process.exit(1); };
setTimeout(() => fail('no answer within a minute'), 60000).unref();

(async () => {
  const server = spawn(program, ['editor'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const ended = new Promise((done) => server.on('exit', done));
  const c = rpc.createMessageConnection(new rpc.StreamMessageReader(server.stdout),
    new rpc.StreamMessageWriter(server.stdin));
  const waiting = [];
  c.onNotification(p.PublishDiagnosticsNotification.type, (d) => waiting.forEach((w) => w(d)));
  const diagnostics = (version) => new Promise((done) => waiting.push((d) => d.version === version && done(d.diagnostics)));
  c.listen();
  const init = await c.sendRequest(p.InitializeRequest.type, { processId: process.pid, rootUri: null,
    capabilities: { general: { positionEncodings: ['utf-16'] },
      textDocument: { publishDiagnostics: { relatedInformation: true } } } });
  console.log('capabilities: ' + Object.keys(init.capabilities).sort().join(' '));
  c.sendNotification(p.InitializedNotification.type, {});

  const uri = pathToFileURL(path.join(formulas, 'typed.hcl')).href;
  const text = 'formula "Rolls é e\u0301 😀" {\n  dough "d" {\n    ingredients = {\n' +
    '      /* 😀😀 */ "bread flour" = "1 kg"\n      "water" = "600 g"\n      "instant yeast" = "1 %"\n' +
    '      "salt" = "3.5 %"\n    }\n    steps = [\n      { mix = "8 min", by = "spiral" },\n    ]\n  }\n}\n';
  let got = diagnostics(1);
  c.sendNotification(p.DidOpenTextDocumentNotification.type,
    { textDocument: { uri, languageId: 'hcl', version: 1, text } });
  const salt = (await got).find((d) => d.code === 'salt-high');
  if (!salt) fail('salt of 3.5 % is not found');
  console.log('salt-high at ' + JSON.stringify(salt.range));

  // Behind two emoji the flour's name begins at UTF-16 unit 18.
  const hover = await c.sendRequest(p.HoverRequest.type, { textDocument: { uri }, position: { line: 3, character: 20 } });
  if (!hover || hover.range.start.character !== 18) fail('hover: ' + JSON.stringify(hover));
  console.log('hover: ' + hover.contents.value.split('\n')[0] + ' at ' + JSON.stringify(hover.range));

  got = diagnostics(2);
  c.sendNotification(p.DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 },
    contentChanges: [{ range: { start: { line: 6, character: 16 }, end: { line: 6, character: 19 } }, text: '1.8' }] });
  if ((await got).some((d) => d.code === 'salt-high')) fail('the salt is still high');
  console.log('typed 1.8: salt-high is gone');

  const at = { textDocument: { uri }, position: { line: 9, character: 8 } };
  const completion = await c.sendRequest(p.CompletionRequest.type, at);
  console.log('completion in a step: ' + completion.items.length + ' words, ' + completion.items.slice(0, 4).map((i) => i.label).join(' '));
  const hints = await c.sendRequest(p.InlayHintRequest.type,
    { textDocument: { uri }, range: { start: { line: 0, character: 0 }, end: { line: 20, character: 0 } } });
  console.log('hints: ' + hints.map((h) => h.label).join(', '));
  const edits = await c.sendRequest(p.DocumentFormattingRequest.type,
    { textDocument: { uri }, options: { tabSize: 2, insertSpaces: true } });
  console.log('formatting: ' + edits.length + ' edits');

  const rules = pathToFileURL(path.join(formulas, 'mine.hcl')).href;
  const rule = 'about = "mine"\n\nrule "sweet" {\n  on = "dough"\n  level = "note"\n  limits = { most = 20 }\n' +
    '  when = "dough.suger_pct > limit.most"\n  say = "Sweet."\n  why = "So."\n  source = "common practice"\n}\n';
  got = diagnostics(7);
  c.sendNotification(p.DidOpenTextDocumentNotification.type,
    { textDocument: { uri: rules, languageId: 'hcl', version: 7, text: rule } });
  const wrong = (await got)[0];
  const word = rule.split('\n')[wrong.range.start.line].slice(wrong.range.start.character, wrong.range.end.character);
  console.log('rule file: "' + word + '": ' + wrong.message);
  if (!word.includes('suger_pct')) fail('the misspelt fact is not underlined: ' + word);
  const facts = await c.sendRequest(p.CompletionRequest.type,
    { textDocument: { uri: rules }, position: { line: 6, character: 20 } });
  if (!facts.items.some((i) => i.label === 'dough.sugar_pct')) fail('completion lacks dough.sugar_pct');
  console.log('completion there: ' + facts.items.length + ' words, with dough.sugar_pct');

  await c.sendRequest(p.ShutdownRequest.type);
  c.sendNotification(p.ExitNotification.type);
  const status = await ended;
  if (status !== 0) fail('exit status ' + status);
  console.log('shutdown, exit: status 0');
  process.exit(0);
})().catch((e) => fail(e.stack));
