/** What each input is: repeated runs, clarity, runs in steps, spreads and offers. */
export const trialHelps: Readonly<Record<string, string>> = {
  'Name of the powder of each run, in the order of the runs; the second that appears is compared with the first.':
    'Name des Pulvers jedes Laufs, in der Folge der Läufe; das zweite, das vorkommt, wird mit dem ersten verglichen.',
  'One figure of each run, such as its rise or cake resistance (FITRUN, FITCAKES), all in one unit.':
    'Ein Wert je Lauf, etwa sein Anstieg oder Kuchenwiderstand (FITRUN, FITCAKES), alle in einer Einheit.',
  'What would change the decision: smaller differences count as none.':
    'Was die Entscheidung ändern würde: Kleinere Unterschiede zählen als keine.',
  'Between the rises or resistances of both powders, as a share of the old one’s. Write 10 % or 0.1.':
    'Zwischen den Anstiegen oder Widerständen beider Pulver, als Anteil vom alten. 10 % oder 0,1 schreiben.',
  'Standard deviation of one powder’s runs as a share of their mean: from your own past runs (COMPARERUNS).':
    'Standardabweichung der Läufe eines Pulvers als Anteil ihres Mittels: aus eigenen früheren Läufen (COMPARERUNS).',
  'Share of such trials that would show the difference, if it is there.':
    'Anteil solcher Versuche, die den Unterschied zeigen würden, wenn es ihn gibt.',
  'Labels that are unsure in both plans and not the same thing there, such as the price of two stabilisers: a range of labels. All others share a draw.':
    'Bezeichnungen, die in beiden Plänen unsicher und dort nicht dieselbe Sache sind, etwa der Preis zweier Stabilisierungsmittel: ein Bereich mit Bezeichnungen. Alle anderen teilen eine Ziehung.',
  'Of each run, as bought, in any order.': 'Jedes Laufs, im Anlieferungszustand, in beliebiger Folge.',
  'At the filter’s outlet in each run, all by one meter: a mean once the run is steady.':
    'Am Auslauf des Filters in jedem Lauf, alle mit einem Gerät: ein Mittel, sobald der Lauf ruhig ist.',
  'Outlet haze that no run may exceed.': 'Trübung am Auslauf, die kein Lauf überschreiten darf.',
  'Of each run, where they differ: more flow over the area carries more haze through. One for all, or left out, where it is the same.':
    'Jedes Laufs, wo sie sich unterscheiden: Mehr Durchfluss je Fläche trägt mehr Trübung hindurch. Eine für alle oder weggelassen, wo sie gleich ist.',
  'At which the limit is to be kept; left out, the mean of the runs.':
    'Bei der die Grenze einzuhalten ist; weggelassen das Mittel der Läufe.',
  'Chance that the mean outlet haze keeps the limit at the least feed on the safe side.':
    'Chance, dass die mittlere Trübung am Auslauf bei der kleinsten Dosage auf der sicheren Seite die Grenze einhält.',
  'Dosed while the beer brought Beer solids.': 'Dosiert, während das Bier die Bierfeststoffe brachte.',
  'Dry, in each hL of the beer at that feed.': 'Trocken, je hL des Biers bei dieser Dosage.',
  'Dry, in each hL of the beer that comes now.': 'Trocken, je hL des Biers, das jetzt kommt.',
  'Below which the beer is not clear (FITCLARITY).': 'Unter der das Bier nicht klar ist (FITCLARITY).',
  'The most that your pump can dose, or that you would.':
    'Das Größte, das Ihre Pumpe dosieren kann oder Sie dosieren würden.',
  'Beer of each step, in the order in which they run.': 'Bier jedes Schritts, in der Folge, in der sie laufen.',
  'Of each step, as bought; left out, that of the plan.':
    'Jedes Schritts, im Anlieferungszustand; weggelassen die des Plans.',
  'Dry, in each hL of that step’s beer; left out, those of the plan.':
    'Trocken, je hL des Biers dieses Schritts; weggelassen die des Plans.',
  'Of each step’s beer; left out, that of the plan. The start follows it where the plan says at which it was read.':
    'Des Biers jedes Schritts; weggelassen die des Plans. Der Start folgt ihr, wo der Plan sagt, bei welcher er abgelesen wurde.',
};
