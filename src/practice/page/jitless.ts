import { config } from 'zod';

// The page's policy forbids making functions of texts, which zod would try.
config({ jitless: true });
