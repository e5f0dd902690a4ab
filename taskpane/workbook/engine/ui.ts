export { ILayoutService, type IShortcutItem, IShortcutService, IUIPartsService, KeyCode } from '@univerjs/ui';
