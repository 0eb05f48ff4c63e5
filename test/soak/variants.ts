/** Of each problem, shared between the workshops: `VARIANTS=50000 npm run soak` for more. */
export const VARIANTS = Number(process.env.VARIANTS ?? 5000);
