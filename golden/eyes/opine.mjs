// Works problems with two libraries of exact and of decimal arithmetic.
//
// Standard input, a line for each problem: {"kind", "left", "right", "list", "to",
// "blank", "run", "up"}. A number is a string as it is typed, an operation {"op", "left",
// "right"}, the unknown null. Standard output: an array with one opinion of each
// library for each problem: {"fraction": {...}, "decimal": {...}}.
import Decimal from 'decimal.js';
import Fraction from 'fraction.js';
import { values } from './browser.mjs';

Decimal.set({ precision: 80, rounding: Decimal.ROUND_HALF_UP });

const plain = (text) => text.replace(/[$,]/g, '');

// Each library by the names that this script uses.
const libraries = {
  fraction: {
    // It reads 1 1/2 and 0.30 itself.
    read: (text) => (text.endsWith('%') ? new Fraction(plain(text).slice(0, -1)).div(100) : new Fraction(plain(text))),
    print: (x) => x.toFraction(),
    floor: (x) => x.floor(),
    nearest: (x, to) => x.div(to).round().mul(to),
    order: (x, y) => x.compare(y),
    divisor: (x, y) => x.gcd(y), // the greatest that two have in common
    mixed: (x) => x.toFraction(true),
  },
  decimal: {
    read(text) {
      if (text.endsWith('%')) return libraries.decimal.read(text.slice(0, -1)).div(100);
      const [part, whole] = plain(text).split(' ').reverse();
      const [above, below] = part.split('/');
      return new Decimal(above).div(below ?? 1).add(whole ?? 0);
    },
    print: (x) => x.toFixed(),
    floor: (x) => x.floor(),
    nearest: (x, to) => x.toNearest(to, Decimal.ROUND_HALF_UP),
    order: (x, y) => x.cmp(y),
    divisor: (x, y) => (y.isZero() ? x : libraries.decimal.divisor(y, x.mod(y))),
  },
};

function apply(op, x, y) {
  switch (op) {
    case '+': return x.add(y);
    case '−': return x.sub(y);
    case '×': case 'of': return x.mul(y);
    case '÷': return x.div(y);
  }
  throw new Error(`a sign that was not expected: ${op}`);
}

const value = (e, lib) => (typeof e === 'string' ? lib.read(e) : apply(e.op, value(e.left, lib), value(e.right, lib)));

const unknownIn = (e) => e === null || (typeof e === 'object' && (unknownIn(e.left) || unknownIn(e.right)));

// solve undoes one operation after another until the unknown stands alone.
function solve(e, target, lib) {
  if (e === null) return target;
  if (unknownIn(e.left)) {
    const undo = { '+': '−', '−': '+', '×': '÷', of: '÷', '÷': '×' }[e.op];
    return solve(e.left, apply(undo, target, value(e.right, lib)), lib);
  }
  const known = value(e.left, lib);
  if (e.op === '−' || e.op === '÷') return solve(e.right, apply(e.op, known, target), lib);
  return solve(e.right, apply({ '+': '−', '×': '÷', of: '÷' }[e.op], target, known), lib);
}

// factors are the whole numbers that divide n, up to n itself.
function factors(n, lib) {
  const found = [];
  for (let i = 1; lib.order(n, lib.read(String(i))) >= 0; i++) {
    if (lib.order(n.mod(i), lib.read('0')) === 0) found.push(lib.read(String(i)));
  }
  return found;
}

// run is a row of numbers of which each is made of the one before.
function run({ from, by, op, terms }, lib) {
  const row = [lib.read(from)];
  while (row.length < terms) row.push(apply(op, row.at(-1), lib.read(by)));
  return row;
}

// asked is what a library says where something is asked of a number or of a row of
// numbers; undefined for the other kinds.
function asked({ kind, left, right, list, to, run: rule }, lib) {
  const zero = lib.read('0');
  const row = (numbers) => ({ row: numbers.map((x) => lib.print(x)) });
  switch (kind) {
    case 'in words': return {};
    case 'count': return row(run(rule, lib));
    case 'rule': return row(list.map((n) => apply(rule.op, lib.read(n), lib.read(rule.by))));
    case 'estimate':
      return { value: lib.print(apply(left.op, lib.nearest(value(left.left, lib), to), lib.nearest(value(left.right, lib), to))) };
    case 'fact family': {
      const [a, b, total] = [left.left, left.right, lib.print(value(left, lib))];
      const back = left.op === '+' ? '−' : '÷';
      const facts = [`${a} ${left.op} ${b} = ${total}`, `${b} ${left.op} ${a} = ${total}`, `${total} ${back} ${b} = ${a}`, `${total} ${back} ${a} = ${b}`];
      return { pairs: [...new Set(facts)] };
    }
  }
  if (typeof left !== 'string') return undefined;
  const n = lib.read(left);
  switch (kind) {
    case 'place value': return { value: lib.print(lib.floor(n.div(to)).mod(10).mul(to)) };
    case 'expanded form': {
      const parts = [];
      for (let unit = lib.read('0.001'); lib.order(n, unit) >= 0; unit = unit.mul(10)) {
        const part = lib.floor(n.div(unit)).mod(10).mul(unit);
        if (lib.order(part, zero) > 0) parts.unshift(part);
      }
      return row(parts.length > 0 ? parts : [n]);
    }
    case 'even or odd': return { word: lib.order(n.mod(2), zero) === 0 ? 'even' : 'odd' };
    case 'prime': return { word: { 1: 'neither', 2: 'prime' }[factors(n, lib).length] ?? 'composite' };
    case 'ways to make': {
      const pairs = [];
      for (let i = 0; lib.order(n, lib.read(String(2 * i))) >= 0; i++) pairs.push(`${i} + ${lib.print(n.sub(i))}`);
      return { pairs };
    }
    case 'multiples': return row(Array.from({ length: rule.terms }, (_, i) => n.mul(i + 1)));
    case 'common multiples': {
      const m = lib.read(right);
      const least = n.mul(m).div(lib.divisor(n, m));
      return row([1, 2, 3].map((i) => least.mul(i)));
    }
    case 'common factors': return row(factors(lib.divisor(n, lib.read(right)), lib));
  }
  return undefined;
}

function opinion(problem, lib) {
  const { kind, left, right, list, to, blank, up } = problem;
  const tell = (x) => lib.print(x);
  const said = asked(problem, lib);
  if (said) return said;
  switch (kind) {
    case 'unknown':
      return { value: tell(unknownIn(left) ? solve(left, value(right, lib), lib) : solve(right, value(left, lib), lib)) };
    case 'claim': case 'compare':
      return { order: lib.order(value(left, lib), value(right, lib)) };
    case 'order':
      return { sorted: list.map((n) => lib.read(n)).sort(lib.order).map(tell) };
    case 'round':
      return { value: tell(lib.nearest(value(left, lib), to)) };
    case 'factors': {
      const n = value(left, lib);
      const pairs = [];
      for (let i = 1; lib.order(n, lib.read(String(i * i))) >= 0; i++) {
        if (lib.order(n.mod(i), lib.read('0')) === 0) pairs.push(`${i} × ${tell(n.div(i))}`);
      }
      return { pairs };
    }
    case 'equal fraction': {
      const x = value(left, lib);
      return { value: tell(x), blank: tell(blank.num === 0 ? x.mul(blank.den) : lib.read(String(blank.num)).div(x)) };
    }
    case 'divide': {
      const [x, y] = [value(left.left, lib), value(left.right, lib)];
      const quotient = lib.floor(x.div(y));
      const whole = lib.order(quotient.mul(y), x) === 0;
      return { value: tell(up ? (whole ? quotient : quotient.add(1)) : x.div(y)), quotient: tell(quotient), remainder: tell(x.sub(quotient.mul(y))) };
    }
  }
  const x = value(left, lib);
  return { value: tell(x), mixed: lib.mixed?.(x) };
}

const all = [];
for await (const problem of values()) {
  all.push(Object.fromEntries(Object.entries(libraries).map(([name, lib]) => [name, opinion(problem, lib)])));
}
process.stdout.write(JSON.stringify(all) + '\n');
