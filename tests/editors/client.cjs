// SPDX-License-Identifier: MIT
// The language server as an editor has it: by the client libraries of the protocol (vscode-jsonrpc, whose types are those
// of vscode-languageserver-protocol). What is awaited and does not come is a failure.
//     node client.cjs PROGRAM FOLDER
'use strict';
const assert = require('node:assert');
const fs = require('node:fs');
const path = require('node:path');
const { spawn } = require('node:child_process');
const { pathToFileURL } = require('node:url');
const rpc = require('vscode-jsonrpc/node');
const lsp = require('vscode-languageserver-protocol');

const [program, folder] = process.argv.slice(2);
const server = spawn(program, ['language-server'], { stdio: ['pipe', 'pipe', 'inherit'] });
const ended = new Promise((resolve) => server.on('exit', resolve));
const connection = rpc.createMessageConnection(
    new rpc.StreamMessageReader(server.stdout), new rpc.StreamMessageWriter(server.stdin));
const published = new Map();
let wake = () => {};
connection.onNotification(lsp.PublishDiagnosticsNotification.type, (params) => {
    published.set(params.uri, params);
    wake();
});
const watched = [];
connection.onRequest(lsp.RegistrationRequest.type, (params) => { watched.push(...params.registrations); });
connection.listen();

async function diagnostics(uri, version) {
    while (published.get(uri)?.version !== version) await new Promise((resolve) => { wake = resolve; });
    return published.get(uri).diagnostics;
}

async function main() {
    const started = await connection.sendRequest(lsp.InitializeRequest.type, {
        processId: process.pid,
        rootUri: null,
        workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'darkroom' }],
        capabilities: {
            general: { positionEncodings: [lsp.PositionEncodingKind.UTF16] },
            workspace: { didChangeWatchedFiles: { dynamicRegistration: true } },
        },
    });
    assert.strictEqual(started.serverInfo.name, 'scruple');
    assert.strictEqual(started.capabilities.positionEncoding, lsp.PositionEncodingKind.UTF16);
    await connection.sendNotification(lsp.InitializedNotification.type, {});

    const file = path.join(folder, 'film-developer.scruple');
    const uri = pathToFileURL(file).href;
    const text = fs.readFileSync(file, 'utf8');
    await connection.sendNotification(lsp.DidOpenTextDocumentNotification.type, {
        textDocument: { uri, languageId: 'scruple', version: 1, text },
    });
    assert.deepStrictEqual(await diagnostics(uri, 1), []);
    assert.strictEqual(watched[0].method, 'workspace/didChangeWatchedFiles');

    const line = text.split('\n').findIndex((one) => one.includes('metol   '));
    const column = text.split('\n')[line].indexOf('4.2 g');
    const range = lsp.Range.create(line, column, line, column + 3);
    await connection.sendNotification(lsp.DidChangeTextDocumentNotification.type, {
        textDocument: { uri, version: 2 }, contentChanges: [{ range, text: '4,2' }],
    });
    const found = await diagnostics(uri, 2);
    const comma = found.find((one) => one.code === 'decimal-comma');
    assert.deepStrictEqual(comma.range, range);
    assert.strictEqual(comma.severity, lsp.DiagnosticSeverity.Error);

    const actions = await connection.sendRequest(lsp.CodeActionRequest.type, {
        textDocument: { uri }, range, context: { diagnostics: [comma], only: [lsp.CodeActionKind.QuickFix] },
    });
    assert.ok(lsp.CodeAction.is(actions[0]));
    assert.deepStrictEqual(actions[0].edit.changes[uri], [lsp.TextEdit.replace(range, '4.2')]);

    const at = { textDocument: { uri }, position: lsp.Position.create(line, 6) };
    const hover = await connection.sendRequest(lsp.HoverRequest.type, at);
    assert.ok(lsp.MarkupContent.is(hover.contents));
    assert.match(hover.contents.value, /344\.4 g\/mol/);
    const items = await connection.sendRequest(lsp.CompletionRequest.type, at);
    assert.ok(items.items.every((item) => lsp.TextEdit.is(item.textEdit)));
    const renamed = await connection.sendRequest(lsp.RenameRequest.type, {
        textDocument: { uri }, position: lsp.Position.create(4, 9), newName: 'Quince' });
    assert.ok(Object.keys(renamed.changes).length >= 3 && lsp.WorkspaceEdit.is(renamed));
    const symbols = await connection.sendRequest(lsp.DocumentSymbolRequest.type, { textDocument: { uri } });
    assert.ok(symbols.every((symbol) => lsp.DocumentSymbol.is(symbol)));
    const hints = await connection.sendRequest(lsp.InlayHintRequest.type, {
        textDocument: { uri }, range: lsp.Range.create(0, 0, 99, 0) });
    assert.ok(hints.length > 3 && hints.every((hint) => lsp.InlayHint.is(hint)));
    const lenses = await connection.sendRequest(lsp.CodeLensRequest.type, { textDocument: { uri } });
    assert.ok(lenses.length === 3 && lenses.every((lens) => lsp.CodeLens.is(lens)));
    const folds = await connection.sendRequest(lsp.FoldingRangeRequest.type, { textDocument: { uri } });
    assert.ok(folds.every((fold) => lsp.FoldingRange.is(fold)));
    await assert.rejects(connection.sendRequest('textDocument/unheardOf', {}),
        (error) => error.code === rpc.ErrorCodes.MethodNotFound);

    const many = Array.from({ length: 50 }, (_, i) => {
        const source = new rpc.CancellationTokenSource();
        const asked = connection.sendRequest(lsp.HoverRequest.type, at, source.token).then(() => 1, (error) => {
            assert.strictEqual(error.code, lsp.LSPErrorCodes.RequestCancelled);
            return 1;
        });
        if (i % 2) source.cancel();
        return asked;
    });
    assert.strictEqual((await Promise.all(many)).length, 50);

    await connection.sendRequest(lsp.ShutdownRequest.type);
    await connection.sendNotification(lsp.ExitNotification.type);
    assert.strictEqual(await ended, 0);
    console.log('client: all as awaited');
}

main().then(() => process.exit(0), (error) => {
    console.error(error);
    server.kill();
    process.exit(1);
});
