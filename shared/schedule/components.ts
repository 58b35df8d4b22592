import { at } from './network.ts';

/**
 * The strong components of a graph: nodes get the same number when each can be reached from the
 * other (Tarjan, SIAM Journal on Computing 1, 1972; without recursion, for long chains).
 */
export function components(nodes: number, after: readonly (readonly number[])[]): Int32Array {
  const component = new Int32Array(nodes).fill(-1);
  const found = new Int32Array(nodes).fill(-1);
  const low = new Int32Array(nodes);
  const next = new Int32Array(nodes);
  const open: number[] = [];
  let count = 0;
  let number = 0;
  const enter = (node: number, path: number[]) => {
    found[node] = low[node] = count++;
    open.push(node);
    path.push(node);
  };
  for (let root = 0; root < nodes; root++) {
    if (at(found, root) >= 0) continue;
    const path: number[] = [];
    enter(root, path);
    for (let node = path.at(-1); node !== undefined; node = path.at(-1)) {
      const to = after[node]?.[at(next, node)];
      if (to !== undefined) {
        next[node] = at(next, node) + 1;
        if (at(found, to) < 0) enter(to, path);
        else if (at(component, to) < 0) low[node] = Math.min(at(low, node), at(found, to));
        continue;
      }
      path.pop();
      const parent = path.at(-1);
      if (parent !== undefined) low[parent] = Math.min(at(low, parent), at(low, node));
      if (at(low, node) !== at(found, node)) continue;
      for (let member = open.pop(); member !== undefined; member = open.pop()) {
        component[member] = number;
        if (member === node) break;
      }
      number++;
    }
  }
  return component;
}
