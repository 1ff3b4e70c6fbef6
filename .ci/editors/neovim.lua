-- Neovim as the client. Each draft: the findings are those of check. A mend as a code action: its
-- finding goes, and the buffer differs in that value alone. A formula typed from nothing, letter by
-- letter. A rule with a misspelt fact: the word is underlined, and completion offers the right one.
local program, formulas, checks = os.getenv('PROGRAM'), os.getenv('FORMULAS'), os.getenv('CHECKS')

local function fail(text)
  io.stdout:write('FAILED: ' .. text .. '\n')
  vim.cmd('cquit 1')
  error('ended')
end

local function say(...) io.stdout:write(string.format(...) .. '\n') end

-- open edits a file with a server of its own. published counts what the server has sent, and said is
-- the newest of it.
local function open(path)
  vim.cmd('edit ' .. path)
  local o = { buffer = vim.api.nvim_get_current_buf(), published = 0 }
  local show = vim.lsp.handlers['textDocument/publishDiagnostics']
  o.client = vim.lsp.start_client({ name = 'forebake', cmd = { program, 'editor' },
    root_dir = vim.fn.fnamemodify(path, ':h'), flags = { debounce_text_changes = 0 },
    on_error = function(_, err) fail('the client reports ' .. vim.inspect(err)) end,
    handlers = { ['textDocument/publishDiagnostics'] = function(err, result, ...)
      if result.uri == vim.uri_from_bufnr(o.buffer) then
        o.published, o.said, o.version = o.published + 1, result.diagnostics, result.version
      end
      return show(err, result, ...)
    end } })
  if not o.client then fail('the server does not start') end
  vim.lsp.buf_attach_client(o.buffer, o.client)
  if not vim.wait(20000, function() return o.said ~= nil end, 5) then fail('no diagnostics of ' .. path) end
  function o.codes()
    local out = {}
    for _, d in ipairs(vim.diagnostic.get(o.buffer)) do
      if d.code ~= 'cautions' then table.insert(out, (d.lnum + 1) .. ' ' .. tostring(d.code)) end
    end
    table.sort(out)
    return out
  end
  function o.request(method, params)
    params.textDocument = { uri = vim.uri_from_bufnr(o.buffer) }
    local answer = vim.lsp.buf_request_sync(o.buffer, 'textDocument/' .. method, params, 20000)
    if not answer or not answer[o.client] then fail('no answer to ' .. method) end
    return answer[o.client].result
  end
  function o.text() return table.concat(vim.api.nvim_buf_get_lines(o.buffer, 0, -1, false), '\n') end
  function o.close()
    vim.lsp.stop_client(o.client)
    vim.wait(5000, function() return vim.lsp.client_is_stopped(o.client) end, 5)
    vim.bo[o.buffer].modified = false
  end
  return o
end

local function draft(name)
  local o = open(formulas .. '/' .. name .. '.hcl')
  local want = {}
  for _, f in ipairs(vim.fn.json_decode(vim.fn.readfile(checks .. '/' .. name .. '.json')).findings) do
    if f.answer ~= 'waived' then table.insert(want, f.line .. ' ' .. f.rule) end
  end
  table.sort(want)
  local got = o.codes()
  if not vim.deep_equal(got, want) then
    fail('check has ' .. vim.inspect(want) .. ', the editor ' .. vim.inspect(got))
  end
  say('%s: %d findings, those of check', name, #got)
  return o
end

-- mend applies the first action of a rule that is a mend of a value.
local function mend(o, rule)
  local at
  for _, d in ipairs(vim.diagnostic.get(o.buffer)) do
    if d.code == rule then at = d end
  end
  if not at then fail('no ' .. rule .. ' in the draft') end
  local action = o.request('codeAction', { context = { diagnostics = {} }, range = {
    start = { line = at.lnum, character = at.col }, ['end'] = { line = at.end_lnum, character = at.end_col } } })[1]
  if not action then fail('no code action of ' .. rule) end
  local before = o.text()
  vim.lsp.util.apply_workspace_edit(action.edit, 'utf-16')
  local after = o.text()
  local from, to = 1, 0
  while before:byte(from) == after:byte(from) do from = from + 1 end
  while before:byte(#before - to) == after:byte(#after - to) do to = to + 1 end
  say('code action of %s: %s', rule, action.title)
  -- The value is what stands between the quotes around the change.
  local function value(text)
    local first, last = from, #text - to
    while text:sub(first - 1, first - 1) ~= '"' do first = first - 1 end
    while text:sub(last + 1, last + 1) ~= '"' do last = last + 1 end
    return text:sub(first, last)
  end
  local old, new = value(before), value(after)
  if old:find('[\n"]') or new:find('[\n"]') then fail('more than a value differs: ' .. old .. ' | ' .. new) end
  say('  the buffer differs in one value: "%s" became "%s"', old, new)
  local gone = vim.wait(20000, function()
    for _, d in ipairs(vim.diagnostic.get(o.buffer)) do
      if d.code == rule then return false end
    end
    return true
  end, 5)
  if not gone then fail('the finding stays') end
  say('  the finding is gone; %d are left', #o.codes())
end

-- typing writes a text into an empty buffer, a letter at a time.
local function typing(name)
  local text = table.concat(vim.fn.readfile(formulas .. '/' .. name .. '.hcl'), '\n')
  local o = open(formulas .. '/typed.hcl')
  local states, judged, first = 0, 0, text:find('"%d', (text:find('ingredients')))
  local silent = 0
  local row, col = 0, 0
  for at, letter in text:gmatch('()([%z\1-\127\194-\244][\128-\191]*)') do
    local seen = o.published
    vim.api.nvim_buf_set_text(o.buffer, row, col, row, col, letter == '\n' and { '', '' } or { letter })
    if letter == '\n' then row, col = row + 1, 0 else col = col + #letter end
    if not vim.wait(20000, function() return o.published > seen end, 1) then
      fail('no diagnostics after letter ' .. at)
    end
    states = states + 1
    local answers = 0
    for _, d in ipairs(o.said) do
      if d.code and d.code ~= '' then answers = answers + 1 end
    end
    if answers > 0 then judged = judged + 1 elseif at > first then silent = silent + 1 end
  end
  say('%s typed from nothing: %d states, %d with an answer: %d %%; from the first amount on %d without',
    name, states, judged, math.floor(100 * judged / states), silent)
  if judged * 100 < 80 * states then fail('fewer than 80 % of the states were judged') end
  o.close()
end

local function misspelt()
  local path = formulas .. '/mine.hcl'
  vim.fn.writefile({ 'about = "mine"', '', 'rule "sweet" {', '  on     = "dough"', '  level  = "note"',
    '  limits = { most = 20 }', '  when   = "dough.suger_pct > limit.most"', '  say    = "Sweet."',
    '  why    = "So."', '  source = "common practice"', '}' }, path)
  local o = open(path)
  local d = vim.diagnostic.get(o.buffer)[1]
  if not d then fail('the misspelt fact is not told') end
  local line = vim.api.nvim_buf_get_lines(o.buffer, d.lnum, d.lnum + 1, false)[1]
  say('rule file: "%s" is underlined: %s', line:sub(d.col + 1, d.end_col), d.message)
  local words = o.request('completion', { position = { line = d.lnum, character = d.col + 2 } })
  local offered = false
  for _, i in ipairs(words.items) do offered = offered or i.label == 'dough.sugar_pct' end
  if not offered then fail('completion lacks dough.sugar_pct') end
  local action = o.request('codeAction', { context = { diagnostics = {} }, range = {
    start = { line = d.lnum, character = d.col }, ['end'] = { line = d.lnum, character = d.end_col } } })[1]
  if not action then fail('no action writes the fact right') end
  vim.lsp.util.apply_workspace_edit(action.edit, 'utf-16')
  if not vim.wait(20000, function() return #vim.diagnostic.get(o.buffer) == 0 end, 5) then
    fail('the problem stays: ' .. o.text() .. vim.inspect(vim.diagnostic.get(o.buffer)))
  end
  say('  completion offers dough.sugar_pct; the action "%s" clears it', action.title)
  o.close()
end

local function run()
  draft('first-draft').close()
  local o = draft('second-draft')
  mend(o, 'core-unsafe')
  o.close()
  typing('plain-milk-loaf')
  misspelt()
  vim.cmd('qall!')
end

local ok, err = xpcall(run, debug.traceback)
if not ok and not tostring(err):find('ended') then fail(err) end
