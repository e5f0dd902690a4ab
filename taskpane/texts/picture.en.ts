/** The words of the pictures, in English. */
export const picture = {
  reading: 'Reading the formula…',
  /** Only the workbook can calculate a part of the formula. */
  unknown: {
    function: (what: string) =>
      `No picture: ${what} is calculated by the workbook alone. Put it into a cell of its own and refer to that cell.`,
    reference: (what: string) => `No picture: the pane cannot follow ${what}. Refer to plain cells or names.`,
    operator: (what: string) =>
      `No picture: “${what}” is calculated by the workbook alone. Put it into a cell of its own and refer to that cell.`,
    missing: (what: string) => `No picture: ${what} is not found in the workbook.`,
  },
  refused: (id: string) => `No picture of ${id}:`,
  table: 'Figures as a table',
  copy: 'Copy picture',
  savePng: 'Save as PNG',
  saveSvg: 'Save as SVG',
  copied: 'The picture is in the clipboard.',
  copiedText: 'This browser takes no pictures: the picture is in the clipboard as SVG text.',
  notCopied: 'The clipboard cannot be reached from here. Save the picture instead.',
  saved: (name: string) => `${name} goes to your downloads.`,
  drawn: (shown: string, all: string) => `${shown} of ${all} points are drawn; the fit uses them all.`,
  /** An amount of money for each of a unit. */
  per: (amount: string, unit: string) => `${amount} per ${unit}`,
  residual: 'Residual',
  measured: 'Measured',
  fitted: 'Fitted',
  fit: {
    title: 'Data and fit',
    residuals: 'Below: what the fit leaves of each point.',
    quality: (rSquared: string) => `R² is ${rSquared}.`,
  },
  run: {
    title: 'Pressure and cake through the run',
    summary: (from: string, to: string, volume: string, time: string) =>
      `The pressure drop rises from ${from} to ${to} over ${volume}, that is ${time}.`,
    ends: {
      pressure: 'The pressure limit ends the run.',
      'cake space': 'The cake space ends the run.',
      'run limit': 'The run limit ends the run.',
      several: (names: string) => `Together end the run: ${names}.`,
    },
    end: {
      pressure: 'pressure limit',
      'cake space': 'cake space',
      'run limit': 'run limit',
    },
    limit: (value: string) => `limit ${value}`,
    space: (value: string) => `cake space ${value}`,
    endsHere: (what: string) => `ends: ${what}`,
    permeabilities:
      'Assumes constant flow, steady beer and a cake whose permeability follows from its parts. That is a model: trust it as far as its permeabilities were fitted to your own runs (FITFEED).',
    resistance:
      'Assumes constant flow and steady beer. The cake resistance holds for the powder mix, beer and filter that it was fitted on, and for no other.',
  },
  feed: {
    title: 'Cost, rise and run over the body feed',
    summary: (best: string, cost: string, run: string) =>
      `The least cost is ${cost}, at a body feed of ${best}; the run is then ${run}.`,
    today: (feed: string, cost: string) => `Today’s feed of ${feed} costs ${cost}.`,
    atLeast: 'That is the least feed allowed: clarity, not cost, sets it.',
    atMost: 'That is the most feed allowed: the cost still falls there.',
    best: (feed: string) => `least cost ${feed}`,
    now: (feed: string) => `today ${feed}`,
    note: 'Weighs cost alone: clarity may ask for more feed. A model of the cake stands behind it: trust it as far as its permeabilities were fitted to your own runs (FITFEED), and near the feeds that were run.',
  },
  saving: {
    title: 'Where the money goes',
    sets: ['Present plan', 'Proposed plan'] as readonly [string, string],
    saves: (perHl: string, perYear: string) => `The proposed plan saves ${perHl}, that is ${perYear} a year.`,
    costs: (perHl: string, perYear: string) => `The proposed plan costs ${perHl} more, that is ${perYear} a year.`,
    cheaper: (items: string) => `Cheaper: ${items}.`,
    dearer: (items: string) => `Dearer: ${items}.`,
    less: (amount: string) => `${amount} less a year`,
    more: (amount: string) => `${amount} more a year`,
    note: 'Each plan is reckoned on its own run. The saving is as good as the permeabilities, doses and prices in both columns: the model invents none, and proves none.',
  },
  spread: {
    title: 'How sure the saving is',
    summary: (p10: string, p50: string, p90: string) =>
      `Half of the samples save more than ${p50} a year; one in ten less than ${p10}, one in ten more than ${p90}.`,
    chance: (share: string, error: string) => `The proposed plan saves in ${share} of them (standard error ${error}).`,
    missing: (count: string, all: string) => `${count} of ${all} samples have no run and are left out.`,
    mark: (name: string, value: string) => `${name} ${value}`,
    saving: 'Saving per year',
    share: 'Share of the samples',
    from: 'From',
    to: 'To',
    some: (shown: string, all: string) =>
      `The columns count the first ${shown} of ${all} samples; the marks all of them.`,
    note: 'The spread is that of the ends in the columns, each drawn by a triangle with its peak in the middle: it is as good as the ends, and is fitted to nothing.',
  },
  sensitivity: {
    title: 'What moves the cost most',
    sets: ['At the low end', 'At the high end'] as readonly [string, string],
    ends: (low: string, high: string) => `${low} to ${high}`,
    noRun: (ends: string) => `${ends}: no run at one end`,
    none: 'no run',
    middle: (cost: string) => `With every label in the middle of its ends the cost is ${cost}.`,
    widest: (label: string) => `${label} moves it most.`,
    some: (shown: string, all: string) => `The widest ${shown} of ${all} labels are drawn.`,
    idle: (count: string) => `${count} labels with two ends do nothing and are left out.`,
    note: 'One label at a time, the others in the middle: what two of them do together is not seen. The bars are as good as the ends that were given.',
  },
  fitRun: {
    summary: (rows: string, start: string, rise: string) =>
      `${rows} readings. The fitted pressure drop starts at ${start} and rises by ${rise}.`,
    note: 'Fitted to the rows of this log by least squares. Assumes constant flow, steady beer and a rigid cake; the resistance holds for this powder mix, beer and filter.',
  },
  ladder: {
    summary: (start: string, plateau: string, largest: string) =>
      `The fitted haze falls from ${start} without dose towards a plateau of ${plateau}. The largest dose tried is ${largest}.`,
    plateau: (value: string) => `plateau ${value}`,
    note: 'Fitted to these doses in this beer. The curve is a model: beyond the largest dose tried it is a guess.',
  },
  leaf: {
    time: 'Time per filtrate',
    summary: (resistance: string, medium: string) =>
      `Time per filtrate over filtrate. The line gives a cake resistance of ${resistance} and a medium resistance of ${medium}.`,
    note: 'Fitted to this leaf test by least squares. It holds at this pressure alone where the cake is compressible.',
  },
  compression: {
    ratio: 'Measured over fitted',
    summary: (exponent: string, resistance: string) =>
      `Both axes are logarithmic. The resistance at 1 bar is ${resistance}; it grows with the pressure to the power ${exponent}.`,
    note: 'A power law, fitted to the logarithms. Do not trust it beyond the pressures that were tested.',
  },
};
