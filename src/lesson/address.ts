/** The address of a page of this site, under whatever path the site is served from: `address('plan/')`. */
export function address(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path.replace(/^\//, '')}`;
}
