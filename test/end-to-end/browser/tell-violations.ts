import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright';

/** WCAG 2.2 AA by axe-core's rules. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What is wrong on the page as it stands, in both colour schemes; empty when nothing is. */
export async function tellViolations(page: Page): Promise<string[]> {
  const told: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const { violations } = await new AxeBuilder({ page }).withTags(TAGS).exclude('iframe').analyze();
    told.push(
      ...violations.map(
        (each) => `${colorScheme} ${each.id}: ${each.nodes.map((node) => node.target.join(' ')).join()}`,
      ),
    );
  }
  return told;
}
