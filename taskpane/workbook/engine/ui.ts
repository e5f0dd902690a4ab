export {
  ContextMenuPosition,
  IContextMenuService,
  ILayoutService,
  type IShortcutItem,
  IShortcutService,
  IUIPartsService,
  KeyCode,
  MetaKeys,
} from '@univerjs/ui';
