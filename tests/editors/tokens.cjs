// SPDX-License-Identifier: MIT
// Recipe files by the tokenizer of editors that read TextMate grammars (vscode-textmate): each token's text with its
// innermost scope, as JSON.
//     node tokens.cjs GRAMMAR FILE…
'use strict';
const fs = require('node:fs');
const path = require('node:path');
const oniguruma = require('vscode-oniguruma');
const textmate = require('vscode-textmate');

async function main([grammarFile, ...files]) {
    const wasm = fs.readFileSync(path.join(path.dirname(require.resolve('vscode-oniguruma')), 'onig.wasm'));
    await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
    const registry = new textmate.Registry({
        onigLib: Promise.resolve({
            createOnigScanner: (sources) => new oniguruma.OnigScanner(sources),
            createOnigString: (string) => new oniguruma.OnigString(string),
        }),
        loadGrammar: async () => textmate.parseRawGrammar(fs.readFileSync(grammarFile, 'utf8'), grammarFile),
    });
    const grammar = await registry.loadGrammar('source.scruple');
    const all = {};
    for (const file of files) {
        let stack = textmate.INITIAL;
        all[file] = fs.readFileSync(file, 'utf8').split('\n').map((line) => {
            const result = grammar.tokenizeLine(line, stack);
            stack = result.ruleStack;
            return result.tokens.map((token) => [line.slice(token.startIndex, token.endIndex), token.scopes.at(-1)]);
        });
    }
    console.log(JSON.stringify(all));
}

main(process.argv.slice(2));
