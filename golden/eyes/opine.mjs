// Works problems with two libraries of exact and of decimal arithmetic.
//
// Standard input, a line for each problem: {"kind", "left", "right", "list", "to",
// "blank"}. A number is a string as it is typed, an operation {"op", "left",
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
    read: (text) => new Fraction(plain(text)), // it reads 1 1/2 and 0.30 itself
    print: (x) => x.toFraction(),
    floor: (x) => x.floor(),
    nearest: (x, to) => x.div(to).round().mul(to),
    order: (x, y) => x.compare(y),
    mixed: (x) => x.toFraction(true),
  },
  decimal: {
    read(text) {
      const [part, whole] = plain(text).split(' ').reverse();
      const [above, below] = part.split('/');
      return new Decimal(above).div(below ?? 1).add(whole ?? 0);
    },
    print: (x) => x.toFixed(),
    floor: (x) => x.floor(),
    nearest: (x, to) => x.toNearest(to, Decimal.ROUND_HALF_UP),
    order: (x, y) => x.cmp(y),
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

function opinion({ kind, left, right, list, to, blank }, lib) {
  const tell = (x) => lib.print(x);
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
      return { value: tell(x.div(y)), quotient: tell(quotient), remainder: tell(x.sub(quotient.mul(y))) };
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
