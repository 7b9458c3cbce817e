import { followPlan, type FrontRequest } from './plan-front.ts';

addEventListener('message', ({ data }: MessageEvent<FrontRequest>) => postMessage(followPlan(data)));
