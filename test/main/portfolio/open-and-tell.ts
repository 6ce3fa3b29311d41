/** Opens the portfolio named on the command line and prints what came of it. Run by `read-only.test.ts`. */
import { openPortfolio } from '#main/portfolio/open-portfolio.ts';
import { PortfolioUnavailable } from '#main/portfolio/portfolio-trouble.ts';

try {
  openPortfolio({ file: process.argv[2] ?? '', now: () => new Date(0).toISOString() }).close();
  console.log(JSON.stringify({ opened: true }));
} catch (error) {
  if (!(error instanceof PortfolioUnavailable)) throw error;
  console.log(JSON.stringify({ trouble: error.trouble.trouble }));
}
