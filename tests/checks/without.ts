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

export const WITHOUT_CHECK: readonly WithoutCheck[] = [
  {
    functions: ['SWAPDOSE', 'SWAPRANGE'],
    why: 'The factors are common practice; no publication gives them.',
    standsIn: 'The factors multiplied by hand for every pair of kinds; there and back returns the dose.',
    tests: ['tests/checks/cost-swapRange.test.ts', 'tests/checks/stabiliser.ts', 'tests/laws/inverses.test.ts'],
  },
  {
    functions: ['CHARGEHOURS'],
    why: 'A tank over the rate of its pump; no worked case of a dosing tank in print was found.',
    standsIn: 'A case by hand; at its own rate the pump empties the tank.',
    tests: ['tests/checks/feed.ts', 'tests/laws/inverses.test.ts'],
  },
  {
    functions: ['CAKESOLIDS'],
    why: 'A balance of dry solids as this catalogue defines it; no published case has body feed, a moist stabiliser and beer solids.',
    standsIn: 'Cases by hand; in a plan the dry solids that enter are those that the spent cake carries out.',
    tests: ['tests/checks/feed.ts', 'tests/plan/properties.test.ts'],
  },
  {
    functions: ['FEEDAFTERSWAP'],
    why: 'That a stabiliser does part of a filter aid’s work is this catalogue’s own allowance; nobody publishes the credit.',
    standsIn: 'A case by hand; a credit of nothing and the least feed as bounds.',
    tests: ['tests/checks/feed.ts', 'tests/checks/feed.test.ts'],
  },
  {
    functions: ['CAKERESISTANCE', 'CAKEPERMEABILITY'],
    why: 'Darcy’s law by mass and by depth of cake; textbooks print the resistance or the permeability of a cake, not both with its density.',
    standsIn: '1 darcy at 300 kg/m³ by hand; each undoes the other.',
    tests: ['tests/checks/cake-water.ts', 'tests/laws/inverses.test.ts'],
  },
  {
    functions: ['FITFEED'],
    why: 'A model fitted to the user’s own runs; no publication has a case in figures.',
    standsIn:
      'Fits give back what the curve of FEEDRISE, which has a published case, was made from; with seeded scatter, as often as they claim.',
    tests: ['tests/cake/feed.test.ts', 'tests/honesty/honesty.test.ts'],
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
    functions: ['FITCLARITY'],
    why: 'A model of the user’s own runs; published hazes behind filters come without their body feeds.',
    standsIn: 'Hazes made by the line give it back, and the least feed keeps its limit as often as it says.',
    tests: ['tests/cake/fitClarity.test.ts', 'tests/honesty/honesty.test.ts'],
  },
  {
    functions: ['FEEDFORSOLIDS'],
    why: 'A proportion between two limits; nobody publishes a case.',
    standsIn: 'The proportion and both limits by hand.',
    tests: ['tests/cake/fitClarity.test.ts'],
  },
  {
    functions: ['LADDERDOSE'],
    why: 'It solves the curve of LADDERFIT, which has a published case.',
    standsIn: 'The doses of an exact ladder come back from its own hazes.',
    tests: ['tests/checks/stabiliser-ladder.test.ts', 'tests/numerics/ladder.test.ts'],
  },
  {
    functions: ['BREAKEVEN'],
    why: 'Published costs of filtration name a total, not the prices and amounts of two plans.',
    standsIn: `${OWN_PLAN}; at the break-even price both plans cost the same.`,
    tests: ['tests/plan/breakEven.test.ts'],
  },
  {
    functions: ['BEERCOST'],
    why: 'It is FILTRATIONCOST for a list of beers, of which one item alone has a published case.',
    standsIn: 'Ten beers on one filter reckoned by hand, item by item; any plan agrees with FILTRATIONCOST.',
    tests: ['tests/plan/beers.test.ts', 'tests/sheets/year.test.ts'],
  },
  {
    functions: ['BESTFEED', 'FEEDCURVE', 'FEEDFORRUN'],
    why: 'The best feed is this catalogue’s own question; no publication answers it in figures.',
    standsIn: `${OWN_PLAN}; a fine scan over the feed never finds one that costs less.`,
    tests: ['tests/checks/plan.ts', 'tests/plan/feed.test.ts'],
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
    functions: ['POWDERPERHL'],
    why: 'Published uses of powder name the sum, not precoat, body feed and run behind it.',
    standsIn: 'A case by hand, which agrees with FILTRATIONCOST’s powder of the year.',
    tests: ['tests/checks/cost.ts', 'tests/cost/year.test.ts'],
  },
  {
    functions: ['SAFERANGE', 'RANGECHECK', 'PLANCHECK'],
    why: 'They read the declared ranges out; there is nothing to calculate.',
    standsIn: 'They are compared with what the functions themselves refuse.',
    tests: ['tests/checks/ranges.test.ts', 'tests/plan/planCheck.test.ts'],
  },
];
