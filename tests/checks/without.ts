/** Functions that no published figure checks: why there is none, and what stands in for it. */
export interface WithoutCheck {
  readonly functions: readonly Uppercase<string>[];
  readonly why: string;
  /** The independent calculation. */
  readonly standsIn: string;
  /** Where it runs. */
  readonly tests: readonly string[];
}

const OWN_PLAN =
  'The invented plan, reckoned apart from this code from the closed forms of cake filtration at constant flow';
const LAWS = 'tests/laws/dimensions.test.ts';

export const WITHOUT_CHECK: readonly WithoutCheck[] = [
  {
    functions: ['SWAPDOSE', 'SWAPRANGE'],
    why: 'The factors are common practice; no publication gives them.',
    standsIn: 'The factors multiplied by hand for every pair of kinds; there and back returns the dose.',
    tests: ['tests/checks/cost-swapRange.test.ts', 'tests/checks/stabiliser.ts', 'tests/laws/inverses.test.ts'],
  },
  {
    functions: ['CHARGEHOURS', 'PUMPRATE', 'DOSEMADE'],
    why: 'A flow, a dose and a strength of slurry; no worked case with all three in print was found.',
    standsIn: 'One case each by hand; the pairs undo each other.',
    tests: ['tests/checks/feed.ts', 'tests/checks/stabiliser.ts', 'tests/laws/inverses.test.ts'],
  },
  {
    functions: ['SLURRYSTRENGTH', 'SLURRYWATER'],
    why: 'A balance of volumes; tables in use leave out the room that the powder takes.',
    standsIn: '100 kg in 1000 L by hand; each undoes the other.',
    tests: ['tests/checks/feed.ts', 'tests/checks/feed.test.ts'],
  },
  {
    functions: ['SULPHITECARRY', 'METALCARRY'],
    why: 'An upper bound by balance of mass; published carry-over is measured, and lower.',
    standsIn: 'One case each by hand, and the sum over two powders.',
    tests: ['tests/checks/stabiliser.ts', 'tests/checks/stabiliser.test.ts'],
  },
  {
    functions: ['CAKESOLIDS', 'FEEDAFTERSWAP'],
    why: 'Balances of dry solids as this catalogue defines them; no published case has all their parts.',
    standsIn: 'Cases by hand; in a plan the dry solids that enter are those that the spent cake carries out.',
    tests: ['tests/checks/feed.ts', 'tests/plan/properties.test.ts'],
  },
  {
    functions: ['CAKERESISTANCE', 'CAKEPERMEABILITY', 'CAKEPRESSURE'],
    why: 'Darcy’s law in the trade’s units; textbooks print resistances, not the permeability behind them.',
    standsIn: '1 kg/m² of 1 darcy by hand; TESTPERMEABILITY, which has a published case, finds the cake again.',
    tests: ['tests/checks/cake-rises.ts', 'tests/laws/inverses.test.ts', 'tests/cake/feed.test.ts'],
  },
  {
    functions: ['MIXPERMEABILITY', 'PARTPERMEABILITY', 'FEEDRISE', 'FITFEED'],
    why: 'A model fitted to the user’s own runs; no publication has a case in figures.',
    standsIn: 'The logarithmic mean by hand; fits give back what the curve was made from, with seeded scatter too.',
    tests: ['tests/checks/cake-water.ts', 'tests/checks/cake-rises.ts', 'tests/cake/feed.test.ts'],
  },
  {
    functions: ['FITCAKE', 'FITCAKES'],
    why: 'Published logs at constant flow name no solids or no flow, so no resistance at 1 bar can be held against theirs.',
    standsIn:
      'Made runs, flat and on candles, give back what they were made from; errors and correlation are those of 600 noisy logs; the whole chain of fits ends at the true run and best feed.',
    tests: ['tests/cake/fitCake.test.ts', 'tests/chain/chain.test.ts'],
  },
  {
    functions: ['RISEREPORT'],
    why: 'Its rise is that of RISERATE, which has a published case; the error allows for readings that hang together, which published cases do not have.',
    standsIn: 'How often the stated error holds the truth, with wild readings and without.',
    tests: ['tests/honesty/honesty.test.ts'],
  },
  {
    functions: ['FITCLARITY', 'FEEDFORSOLIDS', 'RUNSTEPS'],
    why: 'A model of the user’s own runs, a proportion, and the plan’s own run in steps; no publication has a case in figures.',
    standsIn:
      'Hazes made by the line give it back, and the least feed keeps its limit as often as it says; equal steps are RUNLENGTH, layers of other beers are integrated step by step.',
    tests: ['tests/cake/fitClarity.test.ts', 'tests/honesty/honesty.test.ts', 'tests/plan/runSteps.test.ts'],
  },
  {
    functions: ['TRIALPLAN'],
    why: 'Published trial sizes are those of other trials, in other units; the order is a convention.',
    standsIn:
      'The number of runs that a statistics package prints for one standard deviation; 1,000 trials of that size.',
    tests: ['tests/cake/compareRuns.test.ts'],
  },
  {
    functions: ['LADDERDOSE'],
    why: 'It solves the curve of LADDERFIT, which has a published case.',
    standsIn: 'The doses of an exact ladder come back from its own hazes.',
    tests: ['tests/checks/stabiliser-ladder.test.ts', 'tests/numerics/ladder.test.ts'],
  },
  {
    functions: ['RUNLENGTH', 'RUNREPORT', 'RUNCURVE'],
    why: 'Published runs give no full set of powder, cake and limits.',
    standsIn: `${OWN_PLAN}; the growth of the cake integrated step by step by an ODE package.`,
    tests: ['tests/checks/plan.ts', 'tests/plan/integration.test.ts'],
  },
  {
    functions: ['FILTRATIONCOST', 'SAVING', 'BREAKEVEN'],
    why: 'Published costs name a total, not the prices and amounts behind it.',
    standsIn: `${OWN_PLAN}; every item is its amount times its price, and items add up to the total.`,
    tests: ['tests/checks/plan.ts', 'tests/laws/closure.test.ts', 'tests/plan/breakEven.test.ts'],
  },
  {
    functions: ['BESTFEED', 'FEEDCURVE', 'FEEDFORRUN'],
    why: 'The best feed is this catalogue’s own question; no publication answers it in figures.',
    standsIn: `${OWN_PLAN}; a fine scan over the feed never finds one that costs less.`,
    tests: ['tests/checks/plan.ts', 'tests/plan/feed.test.ts'],
  },
  {
    functions: ['BEERRUN', 'BEERCOST'],
    why: 'They are RUNLENGTH and FILTRATIONCOST for a list of beers, which have none either.',
    standsIn:
      'Ten beers on one filter reckoned by hand, item by item; any plan agrees with RUNLENGTH and FILTRATIONCOST.',
    tests: ['tests/plan/beers.test.ts', 'tests/sheets/year.test.ts'],
  },
  {
    functions: ['SAVINGSPREAD', 'SENSITIVITY', 'SAVINGSENSITIVITY'],
    why: 'The spread belongs to the plans that are compared.',
    standsIn:
      'A second sampling written apart from this code, with another source of chance; the differences of SAVING at both ends.',
    tests: [
      'tests/plan/savingSpreadOracle.test.ts',
      'tests/plan/sensitivity.test.ts',
      'tests/plan/savingSensitivity.test.ts',
    ],
  },
  {
    functions: [
      'COSTPERHL',
      'POWDERPERHL',
      'YEARPOWDER',
      'RUNSPERYEAR',
      'BREAKEVENPRICE',
      'DISPOSALCOST',
      'RANKQUOTES',
    ],
    why: 'Arithmetic on the user’s own prices; nobody publishes a case.',
    standsIn: 'Cases by hand; the year agrees with FILTRATIONCOST, break-even closes with COSTPERHL.',
    tests: ['tests/checks/cost.ts', 'tests/cost/year.test.ts', 'tests/cost/purchase.test.ts', LAWS],
  },
  {
    functions: ['SAFERANGE', 'RANGECHECK', 'PLANCHECK'],
    why: 'They read the declared ranges out; there is nothing to calculate.',
    standsIn: 'They are compared with what the functions themselves refuse.',
    tests: ['tests/checks/ranges.test.ts', 'tests/plan/planCheck.test.ts'],
  },
];
