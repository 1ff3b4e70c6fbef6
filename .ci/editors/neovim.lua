-- Opens the second draft: the findings are those of check. Applies a mend as a code action: its
-- finding goes, and the buffer differs in the lines of the mend alone.
local program, draft, check = os.getenv('PROGRAM'), os.getenv('DRAFT'), os.getenv('CHECK')

local function fail(text)
  io.stdout:write('FAILED: ' .. text .. '\n')
  vim.cmd('cquit 1')
end

local function run()
  vim.cmd('edit ' .. draft)
  local buffer = vim.api.nvim_get_current_buf()
  local client = vim.lsp.start_client({ name = 'forebake', cmd = { program, 'editor' },
    root_dir = vim.fn.fnamemodify(draft, ':h') })
  if not client then return fail('the server does not start') end
  vim.lsp.buf_attach_client(buffer, client)

  local function found()
    local out = {}
    for _, d in ipairs(vim.diagnostic.get(buffer)) do
      if d.code ~= 'cautions' then table.insert(out, (d.lnum + 1) .. ' ' .. tostring(d.code)) end
    end
    table.sort(out)
    return out
  end
  if not vim.wait(20000, function() return #vim.diagnostic.get(buffer) > 0 end, 20) then
    return fail('no diagnostics')
  end

  local want = {}
  for _, f in ipairs(vim.fn.json_decode(vim.fn.readfile(check)).findings) do
    if f.answer ~= 'waived' then table.insert(want, f.line .. ' ' .. f.rule) end
  end
  table.sort(want)
  local got = found()
  if not vim.deep_equal(got, want) then
    return fail('check has ' .. vim.inspect(want) .. ', the editor ' .. vim.inspect(got))
  end
  io.stdout:write(#got .. ' findings, those of check\n')

  local at
  for _, d in ipairs(vim.diagnostic.get(buffer)) do
    if d.code == 'core-unsafe' then at = d end
  end
  if not at then return fail('no core-unsafe in the draft') end
  local range = { start = { line = at.lnum, character = at.col },
    ['end'] = { line = at.end_lnum, character = at.end_col } }
  local answer = vim.lsp.buf_request_sync(buffer, 'textDocument/codeAction', {
    textDocument = { uri = vim.uri_from_bufnr(buffer) }, range = range,
    context = { diagnostics = {} } }, 20000)
  local action = answer and answer[client].result[1]
  if not action then return fail('no code action: ' .. vim.inspect(answer)) end
  local before = vim.api.nvim_buf_get_lines(buffer, 0, -1, false)
  vim.lsp.util.apply_workspace_edit(action.edit, 'utf-16')
  local after = vim.api.nvim_buf_get_lines(buffer, 0, -1, false)
  local changed = {}
  for i = 1, math.max(#before, #after) do
    if before[i] ~= after[i] then table.insert(changed, i) end
  end
  io.stdout:write('code action: ' .. action.title .. '\n')
  for _, i in ipairs(changed) do
    io.stdout:write('  - ' .. vim.trim(before[i]) .. '\n  + ' .. vim.trim(after[i]) .. '\n')
  end
  if #before ~= #after or #changed ~= 1 then return fail(#changed .. ' lines differ') end
  local gone = vim.wait(20000, function()
    for _, d in ipairs(vim.diagnostic.get(buffer)) do
      if d.code == 'core-unsafe' then return false end
    end
    return true
  end, 20)
  if not gone then return fail('the finding stays') end
  io.stdout:write('the finding is gone; ' .. #found() .. ' are left\n')

  local hover = vim.lsp.buf_request_sync(buffer, 'textDocument/hover', {
    textDocument = { uri = vim.uri_from_bufnr(buffer) },
    position = { line = at.lnum, character = at.col } }, 20000)
  io.stdout:write('hover: ' .. hover[client].result.contents.value:gsub('\n', '; ') .. '\n')
  vim.lsp.stop_client(client)
  vim.cmd('qall!')
end

local ok, err = xpcall(run, debug.traceback)
if not ok then fail(err) end
