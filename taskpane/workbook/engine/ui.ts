export { ILayoutService, type IShortcutItem, IShortcutService, KeyCode } from '@univerjs/ui';
