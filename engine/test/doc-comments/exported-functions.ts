import ts from 'typescript';

export interface DocTag {
  readonly tag: string;
  readonly text: string;
}

export interface DocumentedFunction {
  readonly file: string;
  readonly name: string;
  readonly summary: string;
  readonly tags: readonly DocTag[];
  /** A destructured parameter has no name. */
  readonly parameters: readonly { readonly name: string | undefined; readonly numeric: boolean }[];
  readonly returns: string;
  /** Whether its own body refuses or checks a range. */
  readonly refuses: boolean;
}

type FunctionNode = ts.FunctionDeclaration | ts.ArrowFunction | ts.FunctionExpression;

/** Every function that a source file exports, with its doc comment as the parser reads it. */
export function exportedFunctions(file: string, text: string): DocumentedFunction[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  return source.statements.flatMap((statement) => {
    if (!ts.canHaveModifiers(statement)) return [];
    const exported = ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    return exported ? functionsOf(statement).map(([name, node]) => documented(file, name, statement, node)) : [];
  });
}

function functionsOf(statement: ts.Statement): [string, FunctionNode][] {
  if (ts.isFunctionDeclaration(statement)) return [[statement.name?.text ?? 'default', statement]];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations.flatMap(({ name, initializer }): [string, FunctionNode][] => {
    const isFunction = initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer));
    return isFunction ? [[name.getText(), initializer]] : [];
  });
}

function documented(file: string, name: string, statement: ts.Statement, node: FunctionNode): DocumentedFunction {
  const comment = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc).at(-1);
  const tags = (comment?.tags ?? []).map((tag) => ({ tag: tag.tagName.text, text: textOf(tag) }));
  const body = node.body?.getText() ?? '';
  return {
    file,
    name,
    summary: (ts.getTextOfJSDocComment(comment?.comment) ?? '').split('\n\n')[0]?.trim() ?? '',
    tags,
    parameters: node.parameters.map((one) => ({
      name: ts.isIdentifier(one.name) ? one.name.text : undefined,
      numeric: /^(number|Float64Array)\b/.test(one.type?.getText() ?? ''),
    })),
    returns: node.type?.getText() ?? 'inferred',
    refuses: /\bnew Refusal\(|\b(inRange|indexInRange)\(/.test(body),
  };
}

/** The tag's own text without its name and comment stars; for a parameter with the name in front. */
function textOf(tag: ts.JSDocTag): string {
  return tag
    .getText()
    .replace(/^@\w+\s*/, '')
    .replace(/\s*\n\s*\*?\s*/g, ' ')
    .trim();
}
