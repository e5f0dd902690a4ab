export { codeFiles, ownFiles, textOf } from '../../.config/files.js';
export { importsOf } from '../../.config/imports.js';
