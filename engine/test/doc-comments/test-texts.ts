import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { filesUnder } from './files-under.ts';

// What a table of test cases puts into a template: numbers and the letters of a dimension.
const fromTable = /^[\d.,+\- x]*$/;

interface Texts {
  readonly literals: ReadonlySet<string>;
  readonly templates: readonly RegExp[];
}

/**
 * Looks whether an id of a check stands in the tests: as a literal, or as a template whose holes are numbers or again
 * such texts. Strings of the data files count as literals.
 */
export function testTexts(folder: string): (id: string) => boolean {
  const data = filesUnder(folder, '.json').flatMap((file) => readFileSync(file, 'utf8').match(/"[^"]*"/g) ?? []);
  const files = filesUnder(folder, '.ts').map((file) => textsOf(readFileSync(file, 'utf8')));
  const literals = new Set([...data.map((text) => text.slice(1, -1)), ...files.flatMap((one) => [...one.literals])]);
  const all: Texts = { literals, templates: files.flatMap((one) => one.templates) };
  return (id) => stands(id, all, 0);
}

function stands(text: string, texts: Texts, depth: number): boolean {
  if (texts.literals.has(text)) return true;
  if (depth > 2) return false;
  return texts.templates.some((template) => {
    const holes = template.exec(text)?.slice(1);
    return holes?.every((hole) => fromTable.test(hole) || (hole !== text && stands(hole, texts, depth + 1))) ?? false;
  });
}

function textsOf(source: string): Texts {
  const literals = new Set<string>();
  const templates: RegExp[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) literals.add(node.text);
    if (ts.isTemplateExpression(node)) {
      const parts = [node.head.text, ...node.templateSpans.map((span) => span.literal.text)];
      if (parts.some((part) => /[A-Za-z]/.test(part)))
        templates.push(new RegExp(`^${parts.map(escaped).join('(.*)')}$`));
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('test.ts', source, ts.ScriptTarget.Latest));
  return { literals, templates };
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
