/** Hash over all files of this build, as the page carries it; `development` where nothing was built. */
export function buildVersion(): string {
  return document.querySelector<HTMLMetaElement>('meta[name="build"]')?.content ?? 'development';
}
