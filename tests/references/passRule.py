# Makes passRule.json: intervals by scipy's beta quantiles, and rates of rules in exact fractions, by another way than
# src/ (numbers of paths, not chances). Run by hand: python3 tests/references/passRule.py (scipy 1.17.1).
import json, math, os
from fractions import Fraction
from scipy.stats import beta, norm

def clopper_pearson(x, n, c):
    tail = (1 - c) / 2
    return [0.0 if x == 0 else float(beta.ppf(tail, x, n - x + 1)), 1.0 if x == n else float(beta.ppf(1 - tail, x + 1, n - x))]

def wilson(x, n, c):
    z = float(norm.ppf((1 + c) / 2)); p = x / n
    m = p + z * z / (2 * n); h = z * math.sqrt(p * (1 - p) / n + z * z / (4 * n * n)); d = 1 + z * z / n
    return [(m - h) / d, (m + h) / d]

def sequential(p0, p1, alpha, beta_, ceiling, p):
    # Paths to each undecided point, counted; a point's chance is its number of paths times p^held q^missed.
    up, low = math.log((1 - beta_) / alpha), math.log(beta_ / (1 - alpha))
    a, b = math.log(p1 / p0), math.log((1 - p1) / (1 - p0))
    p = Fraction(p); q = 1 - p
    out = {'pass': Fraction(0), 'refuse': Fraction(0), 'undecided': Fraction(0), 'meanAsks': Fraction(0)}
    paths = {(0, 0): 1}
    for n in range(1, ceiling + 1):
        new = {}
        for (h, m), ways in paths.items():
            for to in ((h + 1, m), (h, m + 1)):
                new[to] = new.get(to, 0) + ways
        paths = {}
        for (h, m), ways in new.items():
            ratio = h * a + m * b
            kind = 'pass' if ratio >= up else 'refuse' if ratio <= low else 'undecided'
            if kind == 'undecided' and n < ceiling:
                paths[(h, m)] = ways
            else:
                chance = ways * p ** h * q ** m
                out[kind] += chance; out['meanAsks'] += n * chance
    return {k: float(v) for k, v in out.items()}

def bound(confidence, share, n, p):
    low = lambda x: 0 if x == 0 else beta.ppf(1 - confidence, x, n - x + 1)
    high = lambda x: 1 if x == n else beta.ppf(confidence, x + 1, n - x)
    out = {'pass': Fraction(0), 'refuse': Fraction(0), 'undecided': Fraction(0), 'meanAsks': Fraction(n)}
    p = Fraction(p)
    for x in range(n + 1):
        kind = 'pass' if low(x) >= share else 'refuse' if high(x) < share else 'undecided'
        out[kind] += math.comb(n, x) * p ** x * (1 - p) ** (n - x)
    return {k: float(v) for k, v in out.items()}

intervals = [(x, n, c) for n in (1, 3, 14, 20, 29, 59, 148, 263, 1000) for x in sorted({0, 1, n // 3, n - 1, n}) for c in (0.5, 0.9, 0.95, 0.999)]
rules = [('0.6', '0.85', '0.05', '0.1', 40), ('0.6', '0.85', '0.05', '0.1', 14), ('0.5', '0.9', '0.05', '0.05', 20), ('0.8', '0.95', '0.05', '0.1', 60), ('0.8', '0.95', '0.01', '0.1', 120)]
shares = ['0', '0.3', '0.5', '0.6', '0.8', '0.85', '0.9', '0.95', '1']
bounds = [('0.95', '0.8', 14), ('0.9', '0.8', 20), ('0.95', '0.9', 59), ('0.95', '0.75', 30), ('0.8', '0.9', 100)]
made = {
    'source': 'tests/references/passRule.py: scipy 1.17.1 beta and normal quantiles; exact fractions',
    'intervals': [{'held': x, 'n': n, 'confidence': c, 'clopperPearson': clopper_pearson(x, n, c), 'wilson': wilson(x, n, c)} for x, n, c in intervals],
    'sequential': [{'rule': dict(zip(('p0', 'p1', 'alpha', 'beta'), map(float, r[:4])), ceiling=r[4]), 'p': float(p), 'rates': sequential(*map(float, r[:4]), r[4], p)} for r in rules for p in shares],
    'bound': [{'rule': {'confidence': float(c), 'share': float(s)}, 'n': n, 'p': float(p), 'rates': bound(float(c), float(s), n, p)} for c, s, n in bounds for p in shares],
}
with open(os.path.join(os.path.dirname(__file__), 'passRule.json'), 'w') as file:
    text = ['{"source": ' + json.dumps(made['source'])]
    for key in ('intervals', 'sequential', 'bound'):
        text.append(json.dumps(key) + ': [\n' + ',\n'.join(json.dumps(row) for row in made[key]) + ']')
    file.write(',\n'.join(text) + '}\n')
