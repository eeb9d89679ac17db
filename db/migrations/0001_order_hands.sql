-- An order can be claimed again once it was given back or handed over. The old claims keep their rows as the first of each order.
CREATE TABLE `claim_before` AS SELECT `order_id`, `by_account_id`, `station_id`, `at_ms` FROM `order_claim`;
DROP TRIGGER `order_end_lapse_unclaimed`;
DROP TRIGGER `jar_claimed`;
DROP TABLE `order_claim`;
CREATE TABLE `order_claim` (
	`order_id` text NOT NULL,
	`claim_no` integer NOT NULL,
	`by_account_id` text NOT NULL,
	`station_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`order_id`, `claim_no`),
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
INSERT INTO `order_claim` SELECT `order_id`, 1, `by_account_id`, `station_id`, `at_ms` FROM `claim_before`;
DROP TABLE `claim_before`;
CREATE TABLE `order_claim_end` (
	`order_id` text NOT NULL,
	`claim_no` integer NOT NULL,
	`by_account_id` text,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`order_id`, `claim_no`),
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`order_id`,`claim_no`) REFERENCES `order_claim`(`order_id`,`claim_no`) ON UPDATE no action ON DELETE no action
) STRICT;
CREATE TRIGGER `order_claim_no_update` BEFORE UPDATE ON `order_claim`
BEGIN SELECT RAISE(ABORT, 'order_claim: facts are never changed'); END;
CREATE TRIGGER `order_claim_no_delete` BEFORE DELETE ON `order_claim`
BEGIN SELECT RAISE(ABORT, 'order_claim: facts are never taken away'); END;
CREATE TRIGGER `order_claim_end_no_update` BEFORE UPDATE ON `order_claim_end`
BEGIN SELECT RAISE(ABORT, 'order_claim_end: facts are never changed'); END;
CREATE TRIGGER `order_claim_end_no_delete` BEFORE DELETE ON `order_claim_end`
BEGIN SELECT RAISE(ABORT, 'order_claim_end: facts are never taken away'); END;
CREATE TRIGGER `order_claim_open` BEFORE INSERT ON `order_claim`
WHEN EXISTS (SELECT 1 FROM `order_end` WHERE `order_id` = NEW.`order_id`)
BEGIN SELECT RAISE(ABORT, 'order_claim: the order has ended'); END;
CREATE TRIGGER `order_claim_one_open` BEFORE INSERT ON `order_claim`
WHEN EXISTS (SELECT 1 FROM `order_claim` AS c WHERE c.`order_id` = NEW.`order_id`
  AND NOT EXISTS (SELECT 1 FROM `order_claim_end` AS e WHERE e.`order_id` = c.`order_id` AND e.`claim_no` = c.`claim_no`))
BEGIN SELECT RAISE(ABORT, 'order_claim: the order is claimed already'); END;
CREATE TRIGGER `order_end_lapse_unclaimed` BEFORE INSERT ON `order_end`
WHEN NEW.`kind` = 'lapsed' AND EXISTS (SELECT 1 FROM `order_claim` AS c WHERE c.`order_id` = NEW.`order_id`
  AND NOT EXISTS (SELECT 1 FROM `order_claim_end` AS e WHERE e.`order_id` = c.`order_id` AND e.`claim_no` = c.`claim_no`))
BEGIN SELECT RAISE(ABORT, 'order_end: a claimed order does not lapse'); END;
CREATE TRIGGER `jar_claimed` BEFORE INSERT ON `jar`
WHEN NOT EXISTS (SELECT 1 FROM `order_claim` AS c WHERE c.`order_id` = NEW.`order_id`
    AND NOT EXISTS (SELECT 1 FROM `order_claim_end` AS e WHERE e.`order_id` = c.`order_id` AND e.`claim_no` = c.`claim_no`))
  OR EXISTS (SELECT 1 FROM `order_end` WHERE `order_id` = NEW.`order_id`)
BEGIN SELECT RAISE(ABORT, 'jar: only for a claimed, open order'); END;
