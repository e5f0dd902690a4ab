import type { Texts } from './dictionary.js';

/** Why a workbook did not do what the pane asked of it, in German. */
export const host: Texts['host'] = {
  editing: 'Eine Zelle wird gerade bearbeitet: Schließen Sie die Eingabe ab und versuchen Sie es noch einmal.',
  protected:
    'Das Blatt oder die Arbeitsmappe ist geschützt: Heben Sie den Schutz auf und versuchen Sie es noch einmal.',
  noRoomInExcel:
    'Ab der ausgewählten Zelle hat der Block auf dem Blatt keinen Platz: Wählen Sie eine Zelle weiter oben oder links.',
  brokenOff: 'Excel hat die Anfrage abgebrochen: Versuchen Sie es noch einmal.',
  inactive: 'Die Arbeitsmappe liegt nicht vorn: Klicken Sie hinein und versuchen Sie es noch einmal.',
  hostBusy: 'Excel ist zu beschäftigt: Warten Sie einen Augenblick und versuchen Sie es noch einmal.',
  tooMuch:
    'Das ist mehr, als Excel auf einmal annimmt: Wählen Sie einen kleineren Bereich oder schließen Sie, was sonst Speicher braucht.',
  otherSheet:
    'Das Blatt, das vorn liegt, hat keine Zellen: Gehen Sie auf ein Blatt mit Zellen und versuchen Sie es noch einmal.',
  merged: 'Verbundene Zellen stehen im Weg: Trennen Sie sie, oder wählen Sie eine Zelle, wo keine sind.',
  pivot: 'Eine Pivot-Tabelle steht im Weg: Wählen Sie eine Zelle, wo keine ist.',
  excel: (detail) => `Excel hat abgelehnt: ${detail}`,
  readOnly:
    'Die Arbeitsmappe lässt sich hier nur lesen: Ein anderer Tab hat sie. Übernehmen Sie sie zuerst, mit der Taste über dem Blatt.',
  gone: 'Diese Stelle gibt es in der Arbeitsmappe nicht mehr.',
  busy: 'Excel rechnet auf diesem Blatt noch: Warten Sie, bis keine Zelle #BUSY! zeigt, und versuchen Sie es noch einmal.',
  notEmpty: (address, taken) => `${address} ist nicht leer: In ${taken} steht etwas. Nichts wurde geschrieben.`,
  noRoom: (rows, columns, address) => `${rows} × ${columns} Zellen haben unter und neben ${address} keinen Platz.`,
};
