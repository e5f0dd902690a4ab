export {
  ContextMenuGroup,
  ContextMenuPosition,
  IContextMenuService,
  ILayoutService,
  IMenuManagerService,
  type IShortcutItem,
  IShortcutService,
  IUIPartsService,
  KeyCode,
  MenuItemType,
  MetaKeys,
} from '@univerjs/ui';
