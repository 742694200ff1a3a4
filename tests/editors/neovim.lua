-- SPDX-License-Identifier: MIT
-- For Neovim with the set-up of docs/editors.md, headless: works with a recipe as somebody would, writes what it saw as JSON
-- into the file that SEEN names, and quits. In the calls of version 0.7, which is Debian 12's.
local function wait(what, condition)
    if not vim.wait(20000, condition, 20) then error('waited in vain for ' .. what) end
end

local function seen()
    vim.cmd('edit film-developer.scruple')
    local buffer = vim.api.nvim_get_current_buf()
    local result = { filetype = vim.bo.filetype, syntax = vim.b.current_syntax, commentstring = vim.bo.commentstring }
    wait('the server', function() return #vim.tbl_values(vim.lsp.buf_get_clients(buffer)) == 1 end)
    local client = vim.tbl_values(vim.lsp.buf_get_clients(buffer))[1]
    wait('its start', function() return client.server_capabilities.hoverProvider end)
    result.clean = #vim.diagnostic.get(buffer)

    local line = vim.fn.search('metol   ', 'w') - 1
    local old = vim.api.nvim_buf_get_lines(buffer, line, line + 1, true)[1]
    vim.api.nvim_buf_set_lines(buffer, line, line + 1, true, { (old:gsub('4%.2 g', '4,2 g')) })
    wait('a diagnostic', function() return #vim.diagnostic.get(buffer) > 0 end)
    local first = vim.diagnostic.get(buffer)[1]
    result.found = first.code or first.user_data.lsp.code
    vim.ui.select = function(items, _, choose) choose(items[1], 1) end
    vim.api.nvim_win_set_cursor(0, { line + 1, first.col })
    vim.lsp.buf.code_action()
    wait('the mending', function() return #vim.diagnostic.get(buffer) == 0 end)
    result.mended = vim.api.nvim_buf_get_lines(buffer, line, line + 1, true)[1] == old

    vim.api.nvim_win_set_cursor(0, { 5, 8 })
    vim.lsp.buf.rename('Quince')
    wait('the renaming', function()
        return vim.api.nvim_buf_get_lines(buffer, 4, 5, true)[1] == 'recipe Quince'
    end)
    local log = vim.fn.bufnr('log.scruple')
    wait('the log', function() return log > 0 end)
    result.log = table.concat(vim.api.nvim_buf_get_lines(log, 0, -1, true), '\n'):match('Quince part A') ~= nil

    local params = vim.lsp.util.make_position_params()
    params.position = { line = line, character = 6 }
    local answer = vim.lsp.buf_request_sync(buffer, 'textDocument/hover', params, 20000)
    result.hover = answer[client.id].result.contents.value

    local groups = {}
    for row = 1, vim.api.nvim_buf_line_count(buffer) do
        local text = vim.fn.getline(row)
        for column = 1, #text do
            local group = vim.fn.synIDattr(vim.fn.synID(row, column, 1), 'name')
            if group ~= '' then groups[group] = true end
        end
    end
    result.groups = vim.tbl_keys(groups)
    return result
end

local fine, result = pcall(seen)
if not fine then result = { failed = tostring(result) } end
vim.fn.writefile({ vim.json.encode(result) }, vim.env.SEEN)
vim.cmd('qall!')
