export { IEditorService } from '@univerjs/docs-ui';
