export {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  type IConditionFormattingRule,
  UniverSheetsConditionalFormattingPlugin,
} from '@univerjs/sheets-conditional-formatting';
