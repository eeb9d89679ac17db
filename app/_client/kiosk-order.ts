// Sends an order. Sent twice with the same key it is stored once.
import type { OrderInput, OrderOutput } from '#lib/contracts/kiosk-order.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const placeOrder = (input: OrderInput): Promise<Reply<OrderOutput>> => send('/api/kiosk/order', input);
