import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Locator } from 'playwright';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, field, link, stacks, waitForText, write } from './sheet.ts';

/** The sample household's first cloth hangs at two windows: its cuts are laid together. */
describe('the cut plan', () => {
  let program: OpenProgram;
  let cloth: Locator;
  const orderOf = async (): Promise<number> => {
    const text = (await cloth.locator('.order strong').textContent()) ?? '';
    return Number(text.replace('½', '.5').replace('¼', '.25').replace('¾', '.75').replace(' yd', ''));
  };
  beforeAll(async () => {
    program = await openInBrowser();
    const { page } = program;
    await button(page, 'Open the sample household').click();
    await stacks(page).first().waitFor();
    await link(page, /^Cut plan$/).click();
    cloth = page.getByRole('region', { name: 'Larch stripe', exact: true });
    await cloth.getByRole('button', { name: /^East window 2:/ }).waitFor();
  });
  afterAll(async () => {
    await program.close();
  });

  it('lays every cut, says what to order and how good that is', async () => {
    await waitForText(cloth, /Proved best: no layout of these cuts takes less/);
    expect(await orderOf()).toBeGreaterThan(0);
  });

  it('lays the cuts round a bad stretch that is typed in, and undo takes it out', async () => {
    const { page } = program;
    const before = await orderOf();
    await cloth.getByText('Bad stretches, remnants and bolts of this cloth').click();
    const form = cloth.getByRole('form', { name: 'A bad stretch of Larch stripe' });
    await form.getByLabel('bad from').fill('4');
    await form.getByLabel('to', { exact: true }).fill('three');
    await form.getByRole('button', { name: 'Lay round it' }).click();
    await waitForText(form, /"three"/);
    await form.getByLabel('to', { exact: true }).fill('4 1/2');
    await form.getByRole('button', { name: 'Lay round it' }).click();
    await waitForText(cloth, /bad from 4 yd to 4½ yd on bolt 1/);
    await expect.poll(orderOf, { timeout: 20_000 }).toBeGreaterThan(before);
    await page.keyboard.press('Control+z');
    await expect.poll(orderOf, { timeout: 20_000 }).toBe(before);
  });

  it('a cut is put down by keyboard where its pattern is right, its cost told, and let free again', async () => {
    const before = await orderOf();
    const cut = cloth.getByRole('button', { name: /^East window 2:/ });
    await cut.focus();
    await cut.press('Enter');
    const slip = cloth.getByRole('region', { name: 'East window 2' });
    await slip.getByLabel('from its start').fill('7 yd 12 in');
    await slip.getByRole('button', { name: 'Put it there' }).click();
    const told = /The pattern is not right there: (\S+ in) along is the nearest place/;
    await waitForText(slip, told);
    await slip.getByLabel('from its start').fill(told.exec((await slip.textContent()) ?? '')?.[1] ?? '');
    await slip.getByRole('button', { name: 'Put it there' }).click();
    await waitForText(slip, /Put down by hand\./);
    await slip.getByRole('button', { name: 'Let it lie where it saves most' }).click();
    await expect.poll(orderOf, { timeout: 20_000 }).toBe(before);
  });

  it('a cut is dragged to where its pattern is right', async () => {
    const { page } = program;
    const cut = cloth.getByRole('button', { name: /^East window 2:/ });
    const box = await cut.boundingBox();
    if (box === null) throw new Error('the cut is not drawn');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 200, y, { steps: 6 });
    await page.mouse.up();
    await waitForText(cloth.getByRole('region', { name: 'East window 2' }), /Put down by hand\./);
    await page.keyboard.press('Control+z');
    await expect.poll(() => cloth.getByText('Put down by hand.').count(), { timeout: 20_000 }).toBe(0);
  });

  it('a remnant is put on the shelf and used first', async () => {
    const before = await orderOf();
    const form = cloth.getByRole('form', { name: 'A remnant of Larch stripe' });
    await form.getByLabel('long').fill('30');
    await form.getByRole('button', { name: 'Put on the shelf' }).click();
    await expect.poll(orderOf, { timeout: 20_000 }).toBeLessThan(before);
    await button(program.page, 'take off').click();
    await expect.poll(orderOf, { timeout: 20_000 }).toBe(before);
  });

  it('a cut put down by hand waits while its window is declined, and is named when its window has fewer cuts', async () => {
    const { page } = program;
    const cut = cloth.getByRole('button', { name: /^East window 4:/ });
    await cut.focus();
    await cut.press('Enter');
    const slip = cloth.getByRole('region', { name: 'East window 4' });
    const place = slip.getByLabel('from its start');
    await place.fill('265 1/8 in');
    await slip.getByRole('button', { name: 'Put it there' }).click();
    await waitForText(slip, /(\S+) in along is the nearest place/);
    const [, nearest = ''] = /(\S+) in along is the nearest place/.exec((await slip.textContent()) ?? '') ?? [];
    await place.fill(`${nearest} in`);
    await slip.getByRole('button', { name: 'Put it there' }).click();
    await waitForText(slip, /Put down by hand\./);
    await page.getByText('What was accepted', { exact: true }).click();
    await field(page, 'Nursery, East window').selectOption('declined');
    await waitForText(cloth, /One cut was put down by hand that is not in this plan/);
    await field(page, 'Nursery, East window').selectOption('');
    await expect.poll(() => cloth.getByText('is not in this plan').count(), { timeout: 20_000 }).toBe(0);
    await link(page, 'Back to the windows').click();
    const rod = field(page, 'rod face');
    const before = await rod.inputValue();
    await write(page, 'rod face', '24');
    await link(page, /^Cut plan$/).click();
    await waitForText(cloth, /cut 4 is placed by hand, but "Nursery\/East window\/Panels" has 2 cuts/);
    await cloth.getByRole('button', { name: 'Let this cut lie where it saves most' }).click();
    await cloth.getByRole('button', { name: /^East window 2:/ }).waitFor();
    await link(page, 'Back to the windows').click();
    await write(page, 'rod face', before);
    await link(page, /^Cut plan$/).click();
    await cloth.getByRole('button', { name: /^East window 4:/ }).waitFor();
  });

  it('the paper is made while the screen goes on, and opens or waits to be opened', async () => {
    const { page } = program;
    const ready = link(page, /^open the (\d+ pages|page)$/);
    await button(page, 'Cut plan to print').click();
    await button(page, 'Do without the paper').click();
    await button(page, 'Cut plan to print').waitFor();
    expect(await ready.count()).toBe(0);
    await button(page, 'Cut plan to print').click();
    await ready.waitFor({ timeout: 60_000 });
    const address = await ready.getAttribute('href');
    const head = await page.evaluate(async (from) => (await (await fetch(from)).text()).slice(0, 5), address ?? '');
    expect(head).toBe('%PDF-');
  });

  it('what is declined is not cut, and what alone was accepted is', async () => {
    const { page } = program;
    await page.getByText('What was accepted', { exact: true }).click();
    await field(page, 'Nursery, East window').selectOption('declined');
    await expect.poll(() => cloth.getByRole('button', { name: /^East window/ }).count()).toBe(0);
    await field(page, 'laid out').selectOption('accepted');
    await waitForText(page.locator('main'), /Nothing is accepted yet/);
    await field(page, 'Nursery, East window').selectOption('good');
    await expect.poll(() => cloth.getByRole('button', { name: /^East window/ }).count()).toBe(4);
  });

  it('the worksheet says what its window adds to the house', async () => {
    const { page } = program;
    await field(page, 'Nursery, Gable window').selectOption('good');
    await link(page, 'Back to the windows').click();
    await waitForText(
      page.locator('main'),
      /Cut together with the rest of the house it adds [\d.½¼¾]+ yd of\s+Larch stripe/,
    );
  });

  it('the workroom lays what was accepted, project by project as they are ticked', async () => {
    const { page } = program;
    await link(page, 'Workroom').click();
    const together = page.getByRole('region', { name: 'Larch stripe', exact: true });
    await together.getByRole('img', { name: /^Cut plan to scale\. Bolt 1: 6 cuts/ }).waitFor();
    await button(page, 'All accepted work to print').click();
    await link(page, /^open the (\d+ pages|page)$/).waitFor({ timeout: 60_000 });
    await page.getByLabel('Ada Fenn').uncheck();
    await expect.poll(() => together.count()).toBe(0);
    await page.getByLabel('Ada Fenn').check();
    await together.waitFor();
  });
});
