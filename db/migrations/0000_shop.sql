CREATE TABLE `complaint` (
	`id` text PRIMARY KEY NOT NULL,
	`jar_code` text NOT NULL,
	`kind` text NOT NULL,
	`seriousness` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	`local_day` text NOT NULL,
	`iso_week` integer NOT NULL,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "complaint_kind" CHECK("complaint"."kind" in ('reaction', 'look', 'smell', 'separation', 'packaging', 'other')),
	CONSTRAINT "complaint_seriousness" CHECK("complaint"."seriousness" in ('not-serious', 'serious'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `complaint_jar` ON `complaint` (`jar_code`);--> statement-breakpoint
CREATE INDEX `complaint_week` ON `complaint` (`iso_week`);--> statement-breakpoint
CREATE TABLE `complaint_erased` (
	`complaint_id` text PRIMARY KEY NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`complaint_id`) REFERENCES `complaint`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `complaint_person` (
	`complaint_id` text PRIMARY KEY NOT NULL,
	`said` text NOT NULL,
	`contact` text NOT NULL,
	FOREIGN KEY (`complaint_id`) REFERENCES `complaint`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `complaint_step` (
	`complaint_id` text NOT NULL,
	`step_no` integer NOT NULL,
	`kind` text NOT NULL,
	`note` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`complaint_id`, `step_no`),
	FOREIGN KEY (`complaint_id`) REFERENCES `complaint`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "complaint_step_kind" CHECK("complaint_step"."kind" in ('told-responsible-person', 'told-authority', 'jar-returned', 'sample-kept', 'answered', 'reclassified-serious', 'closed'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `counter` (
	`bucket_id` text NOT NULL,
	`kind` text NOT NULL,
	`subject` text NOT NULL,
	`visits_count` integer NOT NULL,
	PRIMARY KEY(`bucket_id`, `kind`, `subject`),
	FOREIGN KEY (`bucket_id`) REFERENCES `counter_bucket`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "counter_kind" CHECK("counter"."kind" in ('concern', 'outcome', 'finding')),
	CONSTRAINT "counter_something" CHECK("counter"."visits_count" > 0)
) STRICT;
--> statement-breakpoint
CREATE TABLE `counter_bucket` (
	`id` text PRIMARY KEY NOT NULL,
	`iso_week` integer NOT NULL,
	`visits_count` integer NOT NULL,
	`flushed_at_ms` integer NOT NULL,
	CONSTRAINT "counter_bucket_five" CHECK("counter_bucket"."visits_count" >= 5)
) STRICT;
--> statement-breakpoint
CREATE INDEX `counter_bucket_week` ON `counter_bucket` (`iso_week`);--> statement-breakpoint
CREATE TABLE `stop` (
	`id` text PRIMARY KEY NOT NULL,
	`subject_kind` text NOT NULL,
	`subject_id` text NOT NULL,
	`reason` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "stop_subject_kind" CHECK("stop"."subject_kind" in ('material', 'stock', 'lot', 'pair', 'shade', 'active', 'variant'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `stop_subject` ON `stop` (`subject_kind`,`subject_id`);--> statement-breakpoint
CREATE TABLE `stop_lifted` (
	`stop_id` text PRIMARY KEY NOT NULL,
	`first_account_id` text NOT NULL,
	`second_account_id` text NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`stop_id`) REFERENCES `stop`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`first_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`second_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "stop_lifted_two_people" CHECK("stop_lifted"."first_account_id" <> "stop_lifted"."second_account_id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `clearance` (
	`id` text PRIMARY KEY NOT NULL,
	`order_id` text NOT NULL,
	`station_id` text NOT NULL,
	`items` text NOT NULL,
	`was_full_clean` integer NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `clearance_order` ON `clearance` (`order_id`);--> statement-breakpoint
CREATE INDEX `clearance_station` ON `clearance` (`station_id`,`at_ms`);--> statement-breakpoint
CREATE TABLE `jar` (
	`batch_code` text PRIMARY KEY NOT NULL,
	`order_id` text NOT NULL,
	`local_day` text NOT NULL,
	`batch_no` integer NOT NULL,
	`tare_ug` integer NOT NULL,
	`jar_lot_id` text,
	`station_id` text NOT NULL,
	`by_account_id` text NOT NULL,
	`bound_at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`jar_lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `jar_orderId_unique` ON `jar` (`order_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `jar_batch_no` ON `jar` (`local_day`,`batch_no`);--> statement-breakpoint
CREATE TABLE `jar_waste` (
	`id` text PRIMARY KEY NOT NULL,
	`jar_code` text NOT NULL,
	`fact_no` integer NOT NULL,
	`line_no` integer NOT NULL,
	`lot_id` text NOT NULL,
	`mass_ug` integer NOT NULL,
	`reason` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "jar_waste_something" CHECK("jar_waste"."mass_ug" > 0)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `jar_waste_fact_no` ON `jar_waste` (`jar_code`,`fact_no`);--> statement-breakpoint
CREATE TABLE `lot_use` (
	`id` text PRIMARY KEY NOT NULL,
	`lot_id` text NOT NULL,
	`kind` text NOT NULL,
	`left_mass_ug` integer,
	`left_count` integer,
	`reason` text NOT NULL,
	`jar_code` text,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lot_use_kind" CHECK("lot_use"."kind" in ('use', 'waste', 'spill', 'stock-take')),
	CONSTRAINT "lot_use_one_measure" CHECK(("lot_use"."left_mass_ug" is null) <> ("lot_use"."left_count" is null)),
	CONSTRAINT "lot_use_direction" CHECK("lot_use"."kind" in ('use', 'stock-take') or coalesce("lot_use"."left_mass_ug", "lot_use"."left_count") > 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `lot_use_lot` ON `lot_use` (`lot_id`,`left_mass_ug`,`left_count`);--> statement-breakpoint
CREATE INDEX `lot_use_jar` ON `lot_use` (`jar_code`);--> statement-breakpoint
CREATE TABLE `mend` (
	`id` text PRIMARY KEY NOT NULL,
	`jar_code` text NOT NULL,
	`fact_no` integer NOT NULL,
	`kind` text NOT NULL,
	`new_batch_mass_ug` integer,
	`lines` text,
	`stock_id` text,
	`lot_id` text,
	`mass_ug` integer,
	`waste_cost_minor` integer,
	`reason` text NOT NULL,
	`by_account_id` text NOT NULL,
	`second_account_id` text,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`second_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "mend_kind" CHECK("mend"."kind" in ('grow', 'correct', 'discard')),
	CONSTRAINT "mend_grown" CHECK(("mend"."kind" = 'grow') = ("mend"."new_batch_mass_ug" is not null) and ("mend"."kind" = 'grow') = ("mend"."lines" is not null)),
	CONSTRAINT "mend_corrected" CHECK(("mend"."kind" = 'correct') = ("mend"."stock_id" is not null and "mend"."lot_id" is not null and coalesce("mend"."mass_ug", 0) > 0)),
	CONSTRAINT "mend_two_people" CHECK(("mend"."kind" = 'discard' or "mend"."second_account_id" is not null) and "mend"."second_account_id" is not "mend"."by_account_id")
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `mend_corrected_once` ON `mend` (`jar_code`) WHERE kind = 'correct';--> statement-breakpoint
CREATE UNIQUE INDEX `mend_discarded_once` ON `mend` (`jar_code`) WHERE kind = 'discard';--> statement-breakpoint
CREATE UNIQUE INDEX `mend_fact_no` ON `mend` (`jar_code`,`fact_no`);--> statement-breakpoint
CREATE TABLE `order_link` (
	`order_id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`jar_code` text NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "order_link_kind" CHECK("order_link"."kind" in ('remake', 'again'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `order_link_jar` ON `order_link` (`jar_code`);--> statement-breakpoint
CREATE TABLE `reading` (
	`id` text PRIMARY KEY NOT NULL,
	`request_key` text NOT NULL,
	`jar_code` text NOT NULL,
	`fact_no` integer NOT NULL,
	`line_no` integer NOT NULL,
	`weighing_no` integer NOT NULL,
	`kind` text NOT NULL,
	`source` text NOT NULL,
	`mass_ug` integer NOT NULL,
	`scale_id` text NOT NULL,
	`lot_id` text NOT NULL,
	`lot_entry` text NOT NULL,
	`by_account_id` text NOT NULL,
	`second_account_id` text,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`request_key`) REFERENCES `request`(`key`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`scale_id`) REFERENCES `station_scale`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`second_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "reading_kind" CHECK("reading"."kind" in ('line', 'top-up')),
	CONSTRAINT "reading_source" CHECK("reading"."source" in ('scale', 'typed')),
	CONSTRAINT "reading_lot_entry" CHECK("reading"."lot_entry" in ('scanned', 'typed')),
	CONSTRAINT "reading_two_people" CHECK("reading"."second_account_id" is null or "reading"."second_account_id" <> "reading"."by_account_id")
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `reading_requestKey_unique` ON `reading` (`request_key`);--> statement-breakpoint
CREATE INDEX `reading_lot` ON `reading` (`lot_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `reading_fact_no` ON `reading` (`jar_code`,`fact_no`);--> statement-breakpoint
CREATE TABLE `reading_void` (
	`reading_id` text PRIMARY KEY NOT NULL,
	`jar_code` text NOT NULL,
	`fact_no` integer NOT NULL,
	`had_left_lot` integer NOT NULL,
	`reason` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`reading_id`) REFERENCES `reading`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `reading_void_fact_no` ON `reading_void` (`jar_code`,`fact_no`);--> statement-breakpoint
CREATE TABLE `draft_revision` (
	`revision_no` integer PRIMARY KEY NOT NULL,
	`parent_revision_no` integer,
	`document` text NOT NULL,
	`sha256` text NOT NULL,
	`by_account_id` text NOT NULL,
	`changed` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "draft_revision_follows" CHECK(case when "draft_revision"."parent_revision_no" is null then "draft_revision"."revision_no" = 1 else "draft_revision"."revision_no" = "draft_revision"."parent_revision_no" + 1 end),
	CONSTRAINT "draft_revision_json" CHECK(json_valid("draft_revision"."document"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `draft_revision_parentRevisionNo_unique` ON `draft_revision` (`parent_revision_no`);--> statement-breakpoint
CREATE TABLE `edition` (
	`edition_no` integer PRIMARY KEY NOT NULL,
	`hash` text NOT NULL,
	`document` text NOT NULL,
	`variants_count` text NOT NULL,
	`published_at_ms` integer NOT NULL,
	`effective_at_ms` integer NOT NULL,
	`author_account_id` text NOT NULL,
	`approver_account_id` text NOT NULL,
	`from_revision_no` integer NOT NULL,
	FOREIGN KEY (`author_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`approver_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`from_revision_no`) REFERENCES `draft_revision`(`revision_no`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "edition_two_people" CHECK("edition"."author_account_id" <> "edition"."approver_account_id"),
	CONSTRAINT "edition_json" CHECK(json_valid("edition"."document")),
	CONSTRAINT "edition_not_backdated" CHECK("edition"."effective_at_ms" >= "edition"."published_at_ms")
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `edition_hash_unique` ON `edition` (`hash`);--> statement-breakpoint
CREATE INDEX `edition_effective` ON `edition` (`effective_at_ms`);--> statement-breakpoint
CREATE TABLE `edition_signature` (
	`edition_hash` text NOT NULL,
	`account_id` text NOT NULL,
	`meaning` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`edition_hash`, `account_id`),
	FOREIGN KEY (`edition_hash`) REFERENCES `edition`(`hash`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `lot` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`ref_id` text NOT NULL,
	`code` text NOT NULL,
	`received_at_ms` integer NOT NULL,
	`expiry_day` text NOT NULL,
	`received_mass_ug` integer,
	`received_count` integer,
	`cost_minor` integer,
	`measured_ph_x_100` integer,
	`supplier` text NOT NULL,
	`certificate` text NOT NULL,
	`by_account_id` text NOT NULL,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lot_kind" CHECK("lot"."kind" in ('stock', 'base-cream', 'base-oil', 'jar', 'label')),
	CONSTRAINT "lot_mass_or_count" CHECK(case when "lot"."kind" in ('jar', 'label') then "lot"."received_mass_ug" is null and coalesce("lot"."received_count", 0) > 0 else "lot"."received_count" is null and coalesce("lot"."received_mass_ug", 0) > 0 end)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `lot_code_unique` ON `lot` (`code`);--> statement-breakpoint
CREATE INDEX `lot_ref` ON `lot` (`kind`,`ref_id`,`expiry_day`);--> statement-breakpoint
CREATE TABLE `lot_event` (
	`lot_id` text NOT NULL,
	`event_no` integer NOT NULL,
	`kind` text NOT NULL,
	`reason` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`lot_id`, `event_no`),
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lot_event_kind" CHECK("lot_event"."kind" in ('released', 'held', 'opened', 'spent', 'rejected'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `lot_event_opened_once` ON `lot_event` (`lot_id`) WHERE kind = 'opened';--> statement-breakpoint
CREATE UNIQUE INDEX `lot_event_ended_once` ON `lot_event` (`lot_id`) WHERE kind in ('spent', 'rejected');--> statement-breakpoint
CREATE TABLE `lot_parent` (
	`lot_id` text NOT NULL,
	`parent_lot_id` text NOT NULL,
	`mass_ug` integer NOT NULL,
	PRIMARY KEY(`lot_id`, `parent_lot_id`),
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`parent_lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lot_parent_other" CHECK("lot_parent"."lot_id" <> "lot_parent"."parent_lot_id")
) STRICT;
--> statement-breakpoint
CREATE INDEX `lot_parent_parent` ON `lot_parent` (`parent_lot_id`);--> statement-breakpoint
CREATE TABLE `card` (
	`order_id` text NOT NULL,
	`issue_no` integer NOT NULL,
	`edition_hash` text NOT NULL,
	`body` text NOT NULL,
	`sha256` text NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`order_id`, `issue_no`),
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`edition_hash`) REFERENCES `edition`(`hash`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "card_json" CHECK(json_valid("card"."body"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `contact` (
	`order_id` text PRIMARY KEY NOT NULL,
	`contact` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `contact_erased` (
	`order_id` text PRIMARY KEY NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `customer_order` (
	`id` text PRIMARY KEY NOT NULL,
	`request_key` text NOT NULL,
	`local_day` text NOT NULL,
	`day_no` integer NOT NULL,
	`short_code` text NOT NULL,
	`edition_hash` text NOT NULL,
	`variant_key` text NOT NULL,
	`plan` text NOT NULL,
	`jar_size_id` text NOT NULL,
	`price_minor` integer NOT NULL,
	`lang` text NOT NULL,
	`variant_caution_ids` text NOT NULL,
	`was_personal_caution_shown` integer NOT NULL,
	`station_id` text NOT NULL,
	`placed_at_ms` integer NOT NULL,
	`iso_week` integer NOT NULL,
	FOREIGN KEY (`request_key`) REFERENCES `request`(`key`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`edition_hash`) REFERENCES `edition`(`hash`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "customer_order_lang" CHECK("customer_order"."lang" in ('en', 'fr', 'de', 'es', 'ar'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `customer_order_requestKey_unique` ON `customer_order` (`request_key`);--> statement-breakpoint
CREATE INDEX `customer_order_week` ON `customer_order` (`iso_week`);--> statement-breakpoint
CREATE INDEX `customer_order_edition` ON `customer_order` (`edition_hash`);--> statement-breakpoint
CREATE UNIQUE INDEX `customer_order_day_no` ON `customer_order` (`local_day`,`day_no`);--> statement-breakpoint
CREATE UNIQUE INDEX `customer_order_short_code` ON `customer_order` (`short_code`,`local_day`);--> statement-breakpoint
CREATE TABLE `order_claim` (
	`order_id` text PRIMARY KEY NOT NULL,
	`by_account_id` text NOT NULL,
	`station_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `order_end` (
	`order_id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`reason` text NOT NULL,
	`by_account_id` text,
	`at_ms` integer NOT NULL,
	`local_day` text NOT NULL,
	`iso_week` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "order_end_kind" CHECK("order_end"."kind" in ('cancelled', 'lapsed', 'collected', 'discarded')),
	CONSTRAINT "order_end_by" CHECK("order_end"."kind" in ('lapsed', 'cancelled') or "order_end"."by_account_id" is not null)
) STRICT;
--> statement-breakpoint
CREATE INDEX `order_end_week` ON `order_end` (`iso_week`);--> statement-breakpoint
CREATE TABLE `order_hold` (
	`id` text PRIMARY KEY NOT NULL,
	`order_id` text NOT NULL,
	`reason` text NOT NULL,
	`findings` text NOT NULL,
	`by_account_id` text,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `order_hold_order` ON `order_hold` (`order_id`);--> statement-breakpoint
CREATE TABLE `order_hold_end` (
	`hold_id` text PRIMARY KEY NOT NULL,
	`by_account_id` text,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`hold_id`) REFERENCES `order_hold`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `reservation` (
	`id` text PRIMARY KEY NOT NULL,
	`order_id` text NOT NULL,
	`lot_id` text NOT NULL,
	`mass_ug` integer NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`order_id`) REFERENCES `customer_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "reservation_something" CHECK("reservation"."mass_ug" > 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `reservation_order` ON `reservation` (`order_id`);--> statement-breakpoint
CREATE INDEX `reservation_lot` ON `reservation` (`lot_id`,`mass_ug`);--> statement-breakpoint
CREATE TABLE `reservation_freed` (
	`reservation_id` text PRIMARY KEY NOT NULL,
	`lot_id` text NOT NULL,
	`mass_ug` integer NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`reservation_id`) REFERENCES `reservation`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`lot_id`) REFERENCES `lot`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "reservation_freed_reason" CHECK("reservation_freed"."reason" in ('used', 'lapsed', 'cancelled', 'planned-anew', 'discarded'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `reservation_freed_lot` ON `reservation_freed` (`lot_id`,`mass_ug`);--> statement-breakpoint
CREATE TABLE `account` (
	`id` text PRIMARY KEY NOT NULL,
	`code` text NOT NULL,
	`name` text NOT NULL,
	`role` text NOT NULL,
	`created_at_ms` integer NOT NULL,
	CONSTRAINT "account_role" CHECK("account"."role" in ('mixer', 'checker', 'formulator', 'manager'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `account_code_unique` ON `account` (`code`);--> statement-breakpoint
CREATE TABLE `account_closed` (
	`account_id` text PRIMARY KEY NOT NULL,
	`by_account_id` text NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `account_secret` (
	`account_id` text NOT NULL,
	`version_no` integer NOT NULL,
	`hash` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`account_id`, `version_no`),
	FOREIGN KEY (`account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "account_secret_hash" CHECK("account_secret"."hash" glob '$argon2id$*')
) STRICT;
--> statement-breakpoint
CREATE TABLE `auth_attempt` (
	`id` text PRIMARY KEY NOT NULL,
	`account_id` text,
	`station_id` text,
	`outcome` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "auth_attempt_outcome" CHECK("auth_attempt"."outcome" in ('passed', 'wrong', 'locked', 'closed'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `auth_attempt_account` ON `auth_attempt` (`account_id`,`at_ms`);--> statement-breakpoint
CREATE INDEX `auth_attempt_station` ON `auth_attempt` (`station_id`,`at_ms`);--> statement-breakpoint
CREATE TABLE `session` (
	`token_sha256` text PRIMARY KEY NOT NULL,
	`account_id` text,
	`station_id` text,
	`created_at_ms` integer NOT NULL,
	`expires_at_ms` integer NOT NULL,
	FOREIGN KEY (`account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_somebody" CHECK("session"."account_id" is not null or "session"."station_id" is not null),
	CONSTRAINT "session_ends_later" CHECK("session"."expires_at_ms" > "session"."created_at_ms")
) STRICT;
--> statement-breakpoint
CREATE INDEX `session_account` ON `session` (`account_id`);--> statement-breakpoint
CREATE TABLE `session_end` (
	`token_sha256` text PRIMARY KEY NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`token_sha256`) REFERENCES `session`(`token_sha256`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "session_end_reason" CHECK("session_end"."reason" in ('signed-out', 'switched', 'revoked'))
) STRICT;
--> statement-breakpoint
CREATE TABLE `station` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`code` text NOT NULL,
	`name` text NOT NULL,
	`created_at_ms` integer NOT NULL,
	CONSTRAINT "station_kind" CHECK("station"."kind" in ('kiosk', 'bench', 'office'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `station_code_unique` ON `station` (`code`);--> statement-breakpoint
CREATE TABLE `station_scale` (
	`id` text PRIMARY KEY NOT NULL,
	`station_id` text NOT NULL,
	`profile_id` text NOT NULL,
	`code` text NOT NULL,
	`stricter_step_ug` integer,
	`stricter_repeatability_ug` integer,
	`stricter_capacity_ug` integer,
	`bound_at_ms` integer NOT NULL,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `station_scale_code_unique` ON `station_scale` (`code`);--> statement-breakpoint
CREATE INDEX `station_scale_station` ON `station_scale` (`station_id`);--> statement-breakpoint
CREATE TABLE `station_scale_removed` (
	`scale_id` text PRIMARY KEY NOT NULL,
	`by_account_id` text NOT NULL,
	`reason` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`scale_id`) REFERENCES `station_scale`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `bench_check` (
	`id` text PRIMARY KEY NOT NULL,
	`jar_code` text NOT NULL,
	`kind` text NOT NULL,
	`ph_x_100` integer,
	`mass_ug` integer,
	`temperature_c` integer,
	`has_passed` integer NOT NULL,
	`note` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "bench_check_kind" CHECK("bench_check"."kind" in ('ph', 'look', 'draw-down', 'net', 'gross', 'temperature')),
	CONSTRAINT "bench_check_ph" CHECK(("bench_check"."kind" = 'ph') = ("bench_check"."ph_x_100" is not null)),
	CONSTRAINT "bench_check_mass" CHECK(("bench_check"."kind" in ('net', 'gross')) = ("bench_check"."mass_ug" is not null)),
	CONSTRAINT "bench_check_temperature" CHECK(("bench_check"."kind" = 'temperature') = ("bench_check"."temperature_c" is not null))
) STRICT;
--> statement-breakpoint
CREATE INDEX `bench_check_jar` ON `bench_check` (`jar_code`);--> statement-breakpoint
CREATE TABLE `fitness` (
	`id` text PRIMARY KEY NOT NULL,
	`station_id` text NOT NULL,
	`kind` text NOT NULL,
	`scale_id` text,
	`readings` text NOT NULL,
	`has_passed` integer NOT NULL,
	`valid_day` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`scale_id`) REFERENCES `station_scale`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fitness_kind" CHECK("fitness"."kind" in ('scale', 'ph-meter')),
	CONSTRAINT "fitness_scale" CHECK(("fitness"."kind" = 'scale') = ("fitness"."scale_id" is not null))
) STRICT;
--> statement-breakpoint
CREATE INDEX `fitness_day` ON `fitness` (`station_id`,`valid_day`);--> statement-breakpoint
CREATE TABLE `hold_decision` (
	`jar_code` text PRIMARY KEY NOT NULL,
	`decision` text NOT NULL,
	`reason` text NOT NULL,
	`by_account_id` text NOT NULL,
	`second_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	FOREIGN KEY (`jar_code`) REFERENCES `jar_release`(`jar_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`second_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "hold_decision_decision" CHECK("hold_decision"."decision" in ('released', 'discarded')),
	CONSTRAINT "hold_decision_two_people" CHECK("hold_decision"."by_account_id" <> "hold_decision"."second_account_id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `jar_release` (
	`jar_code` text PRIMARY KEY NOT NULL,
	`outcome` text NOT NULL,
	`findings` text NOT NULL,
	`label` text NOT NULL,
	`use_by_day` text NOT NULL,
	`material_cost_minor` integer,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	`local_day` text NOT NULL,
	`iso_week` integer NOT NULL,
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "jar_release_outcome" CHECK("jar_release"."outcome" in ('released', 'held'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `jar_release_week` ON `jar_release` (`iso_week`);--> statement-breakpoint
CREATE INDEX `jar_release_use_by` ON `jar_release` (`use_by_day`);--> statement-breakpoint
CREATE TABLE `label_print` (
	`jar_code` text NOT NULL,
	`copy_no` integer NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`jar_code`, `copy_no`),
	FOREIGN KEY (`jar_code`) REFERENCES `jar_release`(`jar_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `step_done` (
	`jar_code` text NOT NULL,
	`step_id` text NOT NULL,
	`by_account_id` text NOT NULL,
	`at_ms` integer NOT NULL,
	PRIMARY KEY(`jar_code`, `step_id`),
	FOREIGN KEY (`jar_code`) REFERENCES `jar`(`batch_code`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by_account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `evidence_file` (
	`sha256` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`media_type` text NOT NULL,
	`size_bytes` integer NOT NULL,
	`at_ms` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `incarnation` (
	`incarnation_no` integer PRIMARY KEY NOT NULL,
	`id` text NOT NULL,
	`origin` text NOT NULL,
	`started_at_ms` integer NOT NULL,
	CONSTRAINT "incarnation_origin" CHECK("incarnation"."origin" in ('founded', 'restored'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `incarnation_id_unique` ON `incarnation` (`id`);--> statement-breakpoint
CREATE TABLE `ledger` (
	`seq_no` integer PRIMARY KEY NOT NULL,
	`incarnation_id` text NOT NULL,
	`id` text NOT NULL,
	`kind` text NOT NULL,
	`schema_version_no` integer NOT NULL,
	`body_sha256` text NOT NULL,
	`prev_sha256` text NOT NULL,
	`row_sha256` text NOT NULL,
	`at_ms` integer NOT NULL,
	`local_day` text NOT NULL,
	`iso_week` integer NOT NULL,
	`account_id` text,
	`station_id` text,
	`edition_hash` text,
	FOREIGN KEY (`incarnation_id`) REFERENCES `incarnation`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`account_id`) REFERENCES `account`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`station_id`) REFERENCES `station`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`edition_hash`) REFERENCES `edition`(`hash`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `ledger_id_unique` ON `ledger` (`id`);--> statement-breakpoint
CREATE UNIQUE INDEX `ledger_prevSha256_unique` ON `ledger` (`prev_sha256`);--> statement-breakpoint
CREATE UNIQUE INDEX `ledger_rowSha256_unique` ON `ledger` (`row_sha256`);--> statement-breakpoint
CREATE INDEX `ledger_local_day` ON `ledger` (`local_day`);--> statement-breakpoint
CREATE INDEX `ledger_kind` ON `ledger` (`kind`,`seq_no`);--> statement-breakpoint
CREATE TABLE `ledger_body` (
	`seq_no` integer PRIMARY KEY NOT NULL,
	`body` text NOT NULL,
	FOREIGN KEY (`seq_no`) REFERENCES `ledger`(`seq_no`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "ledger_body_json" CHECK(json_valid("ledger_body"."body"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `purged` (
	`seq_no` integer PRIMARY KEY NOT NULL,
	`at_ms` integer NOT NULL,
	`reason` text NOT NULL,
	FOREIGN KEY (`seq_no`) REFERENCES `ledger`(`seq_no`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `request` (
	`key` text PRIMARY KEY NOT NULL,
	`sha256` text NOT NULL,
	`outcome` text NOT NULL,
	`at_ms` integer NOT NULL,
	CONSTRAINT "request_outcome_json" CHECK(json_valid("request"."outcome")),
	CONSTRAINT "request_key_length" CHECK(length("request"."key") between 16 and 64)
) STRICT;
--> statement-breakpoint
CREATE TABLE `shop` (
	`row_no` integer PRIMARY KEY NOT NULL,
	`shop_code` text NOT NULL,
	`name` text NOT NULL,
	`zone` text NOT NULL,
	`sealing_secret` text NOT NULL,
	`is_demo` integer NOT NULL,
	`notice` text NOT NULL,
	`founded_at_ms` integer NOT NULL,
	CONSTRAINT "shop_one_row" CHECK("shop"."row_no" = 1),
	CONSTRAINT "shop_code_letters" CHECK("shop"."shop_code" glob '[A-Z][A-Z]')
) STRICT;
-- Facts are added, never changed and never taken away.
CREATE TRIGGER `complaint_no_update` BEFORE UPDATE ON `complaint`
BEGIN SELECT RAISE(ABORT, 'complaint: facts are never changed'); END;
CREATE TRIGGER `complaint_no_delete` BEFORE DELETE ON `complaint`
BEGIN SELECT RAISE(ABORT, 'complaint: facts are never taken away'); END;
CREATE TRIGGER `complaint_erased_no_update` BEFORE UPDATE ON `complaint_erased`
BEGIN SELECT RAISE(ABORT, 'complaint_erased: facts are never changed'); END;
CREATE TRIGGER `complaint_erased_no_delete` BEFORE DELETE ON `complaint_erased`
BEGIN SELECT RAISE(ABORT, 'complaint_erased: facts are never taken away'); END;
CREATE TRIGGER `complaint_person_no_update` BEFORE UPDATE ON `complaint_person`
BEGIN SELECT RAISE(ABORT, 'complaint_person: facts are never changed'); END;
CREATE TRIGGER `complaint_person_no_delete` BEFORE DELETE ON `complaint_person`
WHEN NOT EXISTS (SELECT 1 FROM `complaint_erased` WHERE `complaint_id` = OLD.`complaint_id`)
BEGIN SELECT RAISE(ABORT, 'complaint_person: erased only with its row in complaint_erased'); END;
CREATE TRIGGER `complaint_step_no_update` BEFORE UPDATE ON `complaint_step`
BEGIN SELECT RAISE(ABORT, 'complaint_step: facts are never changed'); END;
CREATE TRIGGER `complaint_step_no_delete` BEFORE DELETE ON `complaint_step`
BEGIN SELECT RAISE(ABORT, 'complaint_step: facts are never taken away'); END;
CREATE TRIGGER `counter_no_update` BEFORE UPDATE ON `counter`
BEGIN SELECT RAISE(ABORT, 'counter: facts are never changed'); END;
CREATE TRIGGER `counter_no_delete` BEFORE DELETE ON `counter`
BEGIN SELECT RAISE(ABORT, 'counter: facts are never taken away'); END;
CREATE TRIGGER `counter_bucket_no_update` BEFORE UPDATE ON `counter_bucket`
BEGIN SELECT RAISE(ABORT, 'counter_bucket: facts are never changed'); END;
CREATE TRIGGER `counter_bucket_no_delete` BEFORE DELETE ON `counter_bucket`
BEGIN SELECT RAISE(ABORT, 'counter_bucket: facts are never taken away'); END;
CREATE TRIGGER `stop_no_update` BEFORE UPDATE ON `stop`
BEGIN SELECT RAISE(ABORT, 'stop: facts are never changed'); END;
CREATE TRIGGER `stop_no_delete` BEFORE DELETE ON `stop`
BEGIN SELECT RAISE(ABORT, 'stop: facts are never taken away'); END;
CREATE TRIGGER `stop_lifted_no_update` BEFORE UPDATE ON `stop_lifted`
BEGIN SELECT RAISE(ABORT, 'stop_lifted: facts are never changed'); END;
CREATE TRIGGER `stop_lifted_no_delete` BEFORE DELETE ON `stop_lifted`
BEGIN SELECT RAISE(ABORT, 'stop_lifted: facts are never taken away'); END;
CREATE TRIGGER `clearance_no_update` BEFORE UPDATE ON `clearance`
BEGIN SELECT RAISE(ABORT, 'clearance: facts are never changed'); END;
CREATE TRIGGER `clearance_no_delete` BEFORE DELETE ON `clearance`
BEGIN SELECT RAISE(ABORT, 'clearance: facts are never taken away'); END;
CREATE TRIGGER `jar_no_update` BEFORE UPDATE ON `jar`
BEGIN SELECT RAISE(ABORT, 'jar: facts are never changed'); END;
CREATE TRIGGER `jar_no_delete` BEFORE DELETE ON `jar`
BEGIN SELECT RAISE(ABORT, 'jar: facts are never taken away'); END;
CREATE TRIGGER `jar_waste_no_update` BEFORE UPDATE ON `jar_waste`
BEGIN SELECT RAISE(ABORT, 'jar_waste: facts are never changed'); END;
CREATE TRIGGER `jar_waste_no_delete` BEFORE DELETE ON `jar_waste`
BEGIN SELECT RAISE(ABORT, 'jar_waste: facts are never taken away'); END;
CREATE TRIGGER `lot_use_no_update` BEFORE UPDATE ON `lot_use`
BEGIN SELECT RAISE(ABORT, 'lot_use: facts are never changed'); END;
CREATE TRIGGER `lot_use_no_delete` BEFORE DELETE ON `lot_use`
BEGIN SELECT RAISE(ABORT, 'lot_use: facts are never taken away'); END;
CREATE TRIGGER `mend_no_update` BEFORE UPDATE ON `mend`
BEGIN SELECT RAISE(ABORT, 'mend: facts are never changed'); END;
CREATE TRIGGER `mend_no_delete` BEFORE DELETE ON `mend`
BEGIN SELECT RAISE(ABORT, 'mend: facts are never taken away'); END;
CREATE TRIGGER `order_link_no_update` BEFORE UPDATE ON `order_link`
BEGIN SELECT RAISE(ABORT, 'order_link: facts are never changed'); END;
CREATE TRIGGER `order_link_no_delete` BEFORE DELETE ON `order_link`
BEGIN SELECT RAISE(ABORT, 'order_link: facts are never taken away'); END;
CREATE TRIGGER `reading_no_update` BEFORE UPDATE ON `reading`
BEGIN SELECT RAISE(ABORT, 'reading: facts are never changed'); END;
CREATE TRIGGER `reading_no_delete` BEFORE DELETE ON `reading`
BEGIN SELECT RAISE(ABORT, 'reading: facts are never taken away'); END;
CREATE TRIGGER `reading_void_no_update` BEFORE UPDATE ON `reading_void`
BEGIN SELECT RAISE(ABORT, 'reading_void: facts are never changed'); END;
CREATE TRIGGER `reading_void_no_delete` BEFORE DELETE ON `reading_void`
BEGIN SELECT RAISE(ABORT, 'reading_void: facts are never taken away'); END;
CREATE TRIGGER `draft_revision_no_update` BEFORE UPDATE ON `draft_revision`
BEGIN SELECT RAISE(ABORT, 'draft_revision: facts are never changed'); END;
CREATE TRIGGER `draft_revision_no_delete` BEFORE DELETE ON `draft_revision`
BEGIN SELECT RAISE(ABORT, 'draft_revision: facts are never taken away'); END;
CREATE TRIGGER `edition_no_update` BEFORE UPDATE ON `edition`
BEGIN SELECT RAISE(ABORT, 'edition: facts are never changed'); END;
CREATE TRIGGER `edition_no_delete` BEFORE DELETE ON `edition`
BEGIN SELECT RAISE(ABORT, 'edition: facts are never taken away'); END;
CREATE TRIGGER `edition_signature_no_update` BEFORE UPDATE ON `edition_signature`
BEGIN SELECT RAISE(ABORT, 'edition_signature: facts are never changed'); END;
CREATE TRIGGER `edition_signature_no_delete` BEFORE DELETE ON `edition_signature`
BEGIN SELECT RAISE(ABORT, 'edition_signature: facts are never taken away'); END;
CREATE TRIGGER `lot_no_update` BEFORE UPDATE ON `lot`
BEGIN SELECT RAISE(ABORT, 'lot: facts are never changed'); END;
CREATE TRIGGER `lot_no_delete` BEFORE DELETE ON `lot`
BEGIN SELECT RAISE(ABORT, 'lot: facts are never taken away'); END;
CREATE TRIGGER `lot_event_no_update` BEFORE UPDATE ON `lot_event`
BEGIN SELECT RAISE(ABORT, 'lot_event: facts are never changed'); END;
CREATE TRIGGER `lot_event_no_delete` BEFORE DELETE ON `lot_event`
BEGIN SELECT RAISE(ABORT, 'lot_event: facts are never taken away'); END;
CREATE TRIGGER `lot_parent_no_update` BEFORE UPDATE ON `lot_parent`
BEGIN SELECT RAISE(ABORT, 'lot_parent: facts are never changed'); END;
CREATE TRIGGER `lot_parent_no_delete` BEFORE DELETE ON `lot_parent`
BEGIN SELECT RAISE(ABORT, 'lot_parent: facts are never taken away'); END;
CREATE TRIGGER `card_no_update` BEFORE UPDATE ON `card`
BEGIN SELECT RAISE(ABORT, 'card: facts are never changed'); END;
CREATE TRIGGER `card_no_delete` BEFORE DELETE ON `card`
BEGIN SELECT RAISE(ABORT, 'card: facts are never taken away'); END;
CREATE TRIGGER `contact_no_update` BEFORE UPDATE ON `contact`
BEGIN SELECT RAISE(ABORT, 'contact: facts are never changed'); END;
CREATE TRIGGER `contact_no_delete` BEFORE DELETE ON `contact`
WHEN NOT EXISTS (SELECT 1 FROM `contact_erased` WHERE `order_id` = OLD.`order_id`)
BEGIN SELECT RAISE(ABORT, 'contact: erased only with its row in contact_erased'); END;
CREATE TRIGGER `contact_erased_no_update` BEFORE UPDATE ON `contact_erased`
BEGIN SELECT RAISE(ABORT, 'contact_erased: facts are never changed'); END;
CREATE TRIGGER `contact_erased_no_delete` BEFORE DELETE ON `contact_erased`
BEGIN SELECT RAISE(ABORT, 'contact_erased: facts are never taken away'); END;
CREATE TRIGGER `customer_order_no_update` BEFORE UPDATE ON `customer_order`
BEGIN SELECT RAISE(ABORT, 'customer_order: facts are never changed'); END;
CREATE TRIGGER `customer_order_no_delete` BEFORE DELETE ON `customer_order`
BEGIN SELECT RAISE(ABORT, 'customer_order: facts are never taken away'); END;
CREATE TRIGGER `order_claim_no_update` BEFORE UPDATE ON `order_claim`
BEGIN SELECT RAISE(ABORT, 'order_claim: facts are never changed'); END;
CREATE TRIGGER `order_claim_no_delete` BEFORE DELETE ON `order_claim`
BEGIN SELECT RAISE(ABORT, 'order_claim: facts are never taken away'); END;
CREATE TRIGGER `order_end_no_update` BEFORE UPDATE ON `order_end`
BEGIN SELECT RAISE(ABORT, 'order_end: facts are never changed'); END;
CREATE TRIGGER `order_end_no_delete` BEFORE DELETE ON `order_end`
BEGIN SELECT RAISE(ABORT, 'order_end: facts are never taken away'); END;
CREATE TRIGGER `order_hold_no_update` BEFORE UPDATE ON `order_hold`
BEGIN SELECT RAISE(ABORT, 'order_hold: facts are never changed'); END;
CREATE TRIGGER `order_hold_no_delete` BEFORE DELETE ON `order_hold`
BEGIN SELECT RAISE(ABORT, 'order_hold: facts are never taken away'); END;
CREATE TRIGGER `order_hold_end_no_update` BEFORE UPDATE ON `order_hold_end`
BEGIN SELECT RAISE(ABORT, 'order_hold_end: facts are never changed'); END;
CREATE TRIGGER `order_hold_end_no_delete` BEFORE DELETE ON `order_hold_end`
BEGIN SELECT RAISE(ABORT, 'order_hold_end: facts are never taken away'); END;
CREATE TRIGGER `reservation_no_update` BEFORE UPDATE ON `reservation`
BEGIN SELECT RAISE(ABORT, 'reservation: facts are never changed'); END;
CREATE TRIGGER `reservation_no_delete` BEFORE DELETE ON `reservation`
BEGIN SELECT RAISE(ABORT, 'reservation: facts are never taken away'); END;
CREATE TRIGGER `reservation_freed_no_update` BEFORE UPDATE ON `reservation_freed`
BEGIN SELECT RAISE(ABORT, 'reservation_freed: facts are never changed'); END;
CREATE TRIGGER `reservation_freed_no_delete` BEFORE DELETE ON `reservation_freed`
BEGIN SELECT RAISE(ABORT, 'reservation_freed: facts are never taken away'); END;
CREATE TRIGGER `account_no_update` BEFORE UPDATE ON `account`
BEGIN SELECT RAISE(ABORT, 'account: facts are never changed'); END;
CREATE TRIGGER `account_no_delete` BEFORE DELETE ON `account`
BEGIN SELECT RAISE(ABORT, 'account: facts are never taken away'); END;
CREATE TRIGGER `account_closed_no_update` BEFORE UPDATE ON `account_closed`
BEGIN SELECT RAISE(ABORT, 'account_closed: facts are never changed'); END;
CREATE TRIGGER `account_closed_no_delete` BEFORE DELETE ON `account_closed`
BEGIN SELECT RAISE(ABORT, 'account_closed: facts are never taken away'); END;
CREATE TRIGGER `account_secret_no_update` BEFORE UPDATE ON `account_secret`
BEGIN SELECT RAISE(ABORT, 'account_secret: facts are never changed'); END;
CREATE TRIGGER `account_secret_no_delete` BEFORE DELETE ON `account_secret`
BEGIN SELECT RAISE(ABORT, 'account_secret: facts are never taken away'); END;
CREATE TRIGGER `auth_attempt_no_update` BEFORE UPDATE ON `auth_attempt`
BEGIN SELECT RAISE(ABORT, 'auth_attempt: facts are never changed'); END;
CREATE TRIGGER `auth_attempt_no_delete` BEFORE DELETE ON `auth_attempt`
BEGIN SELECT RAISE(ABORT, 'auth_attempt: facts are never taken away'); END;
CREATE TRIGGER `session_no_update` BEFORE UPDATE ON `session`
BEGIN SELECT RAISE(ABORT, 'session: facts are never changed'); END;
CREATE TRIGGER `session_no_delete` BEFORE DELETE ON `session`
BEGIN SELECT RAISE(ABORT, 'session: facts are never taken away'); END;
CREATE TRIGGER `session_end_no_update` BEFORE UPDATE ON `session_end`
BEGIN SELECT RAISE(ABORT, 'session_end: facts are never changed'); END;
CREATE TRIGGER `session_end_no_delete` BEFORE DELETE ON `session_end`
BEGIN SELECT RAISE(ABORT, 'session_end: facts are never taken away'); END;
CREATE TRIGGER `station_no_update` BEFORE UPDATE ON `station`
BEGIN SELECT RAISE(ABORT, 'station: facts are never changed'); END;
CREATE TRIGGER `station_no_delete` BEFORE DELETE ON `station`
BEGIN SELECT RAISE(ABORT, 'station: facts are never taken away'); END;
CREATE TRIGGER `station_scale_no_update` BEFORE UPDATE ON `station_scale`
BEGIN SELECT RAISE(ABORT, 'station_scale: facts are never changed'); END;
CREATE TRIGGER `station_scale_no_delete` BEFORE DELETE ON `station_scale`
BEGIN SELECT RAISE(ABORT, 'station_scale: facts are never taken away'); END;
CREATE TRIGGER `station_scale_removed_no_update` BEFORE UPDATE ON `station_scale_removed`
BEGIN SELECT RAISE(ABORT, 'station_scale_removed: facts are never changed'); END;
CREATE TRIGGER `station_scale_removed_no_delete` BEFORE DELETE ON `station_scale_removed`
BEGIN SELECT RAISE(ABORT, 'station_scale_removed: facts are never taken away'); END;
CREATE TRIGGER `bench_check_no_update` BEFORE UPDATE ON `bench_check`
BEGIN SELECT RAISE(ABORT, 'bench_check: facts are never changed'); END;
CREATE TRIGGER `bench_check_no_delete` BEFORE DELETE ON `bench_check`
BEGIN SELECT RAISE(ABORT, 'bench_check: facts are never taken away'); END;
CREATE TRIGGER `fitness_no_update` BEFORE UPDATE ON `fitness`
BEGIN SELECT RAISE(ABORT, 'fitness: facts are never changed'); END;
CREATE TRIGGER `fitness_no_delete` BEFORE DELETE ON `fitness`
BEGIN SELECT RAISE(ABORT, 'fitness: facts are never taken away'); END;
CREATE TRIGGER `hold_decision_no_update` BEFORE UPDATE ON `hold_decision`
BEGIN SELECT RAISE(ABORT, 'hold_decision: facts are never changed'); END;
CREATE TRIGGER `hold_decision_no_delete` BEFORE DELETE ON `hold_decision`
BEGIN SELECT RAISE(ABORT, 'hold_decision: facts are never taken away'); END;
CREATE TRIGGER `jar_release_no_update` BEFORE UPDATE ON `jar_release`
BEGIN SELECT RAISE(ABORT, 'jar_release: facts are never changed'); END;
CREATE TRIGGER `jar_release_no_delete` BEFORE DELETE ON `jar_release`
BEGIN SELECT RAISE(ABORT, 'jar_release: facts are never taken away'); END;
CREATE TRIGGER `label_print_no_update` BEFORE UPDATE ON `label_print`
BEGIN SELECT RAISE(ABORT, 'label_print: facts are never changed'); END;
CREATE TRIGGER `label_print_no_delete` BEFORE DELETE ON `label_print`
BEGIN SELECT RAISE(ABORT, 'label_print: facts are never taken away'); END;
CREATE TRIGGER `step_done_no_update` BEFORE UPDATE ON `step_done`
BEGIN SELECT RAISE(ABORT, 'step_done: facts are never changed'); END;
CREATE TRIGGER `step_done_no_delete` BEFORE DELETE ON `step_done`
BEGIN SELECT RAISE(ABORT, 'step_done: facts are never taken away'); END;
CREATE TRIGGER `evidence_file_no_update` BEFORE UPDATE ON `evidence_file`
BEGIN SELECT RAISE(ABORT, 'evidence_file: facts are never changed'); END;
CREATE TRIGGER `evidence_file_no_delete` BEFORE DELETE ON `evidence_file`
BEGIN SELECT RAISE(ABORT, 'evidence_file: facts are never taken away'); END;
CREATE TRIGGER `incarnation_no_update` BEFORE UPDATE ON `incarnation`
BEGIN SELECT RAISE(ABORT, 'incarnation: facts are never changed'); END;
CREATE TRIGGER `incarnation_no_delete` BEFORE DELETE ON `incarnation`
BEGIN SELECT RAISE(ABORT, 'incarnation: facts are never taken away'); END;
CREATE TRIGGER `ledger_no_update` BEFORE UPDATE ON `ledger`
BEGIN SELECT RAISE(ABORT, 'ledger: facts are never changed'); END;
CREATE TRIGGER `ledger_no_delete` BEFORE DELETE ON `ledger`
BEGIN SELECT RAISE(ABORT, 'ledger: facts are never taken away'); END;
CREATE TRIGGER `ledger_body_no_update` BEFORE UPDATE ON `ledger_body`
BEGIN SELECT RAISE(ABORT, 'ledger_body: facts are never changed'); END;
CREATE TRIGGER `ledger_body_no_delete` BEFORE DELETE ON `ledger_body`
WHEN NOT EXISTS (SELECT 1 FROM `purged` WHERE `seq_no` = OLD.`seq_no`)
BEGIN SELECT RAISE(ABORT, 'ledger_body: erased only with its row in purged'); END;
CREATE TRIGGER `purged_no_update` BEFORE UPDATE ON `purged`
BEGIN SELECT RAISE(ABORT, 'purged: facts are never changed'); END;
CREATE TRIGGER `purged_no_delete` BEFORE DELETE ON `purged`
BEGIN SELECT RAISE(ABORT, 'purged: facts are never taken away'); END;
CREATE TRIGGER `request_no_update` BEFORE UPDATE ON `request`
BEGIN SELECT RAISE(ABORT, 'request: facts are never changed'); END;
CREATE TRIGGER `request_no_delete` BEFORE DELETE ON `request`
BEGIN SELECT RAISE(ABORT, 'request: facts are never taken away'); END;
CREATE TRIGGER `shop_no_update` BEFORE UPDATE ON `shop`
BEGIN SELECT RAISE(ABORT, 'shop: facts are never changed'); END;
CREATE TRIGGER `shop_no_delete` BEFORE DELETE ON `shop`
BEGIN SELECT RAISE(ABORT, 'shop: facts are never taken away'); END;
-- Rows that would contradict others.
CREATE TRIGGER `ledger_follows` BEFORE INSERT ON `ledger`
WHEN NEW.`seq_no` <> (SELECT coalesce(max(`seq_no`), 0) + 1 FROM `ledger`)
  OR NEW.`prev_sha256` <> coalesce((SELECT `row_sha256` FROM `ledger` ORDER BY `seq_no` DESC LIMIT 1), '0000000000000000000000000000000000000000000000000000000000000000')
BEGIN SELECT RAISE(ABORT, 'ledger: a row follows the last one'); END;
CREATE TRIGGER `edition_follows` BEFORE INSERT ON `edition`
WHEN NEW.`edition_no` <> (SELECT coalesce(max(`edition_no`), 0) + 1 FROM `edition`)
BEGIN SELECT RAISE(ABORT, 'edition: numbers are contiguous'); END;
CREATE TRIGGER `order_claim_open` BEFORE INSERT ON `order_claim`
WHEN EXISTS (SELECT 1 FROM `order_end` WHERE `order_id` = NEW.`order_id`)
BEGIN SELECT RAISE(ABORT, 'order_claim: the order has ended'); END;
CREATE TRIGGER `order_end_lapse_unclaimed` BEFORE INSERT ON `order_end`
WHEN NEW.`kind` = 'lapsed' AND EXISTS (SELECT 1 FROM `order_claim` WHERE `order_id` = NEW.`order_id`)
BEGIN SELECT RAISE(ABORT, 'order_end: a claimed order does not lapse'); END;
CREATE TRIGGER `order_end_collect_released` BEFORE INSERT ON `order_end`
WHEN NEW.`kind` = 'collected' AND NOT EXISTS (
  SELECT 1 FROM `jar` JOIN `jar_release` AS r ON r.`jar_code` = `batch_code` LEFT JOIN `hold_decision` AS d ON d.`jar_code` = `batch_code`
  WHERE `order_id` = NEW.`order_id` AND (r.`outcome` = 'released' OR d.`decision` = 'released'))
BEGIN SELECT RAISE(ABORT, 'order_end: only a released jar is collected'); END;
CREATE TRIGGER `order_hold_one_open` BEFORE INSERT ON `order_hold`
WHEN EXISTS (SELECT 1 FROM `order_hold` AS h WHERE h.`order_id` = NEW.`order_id` AND NOT EXISTS (SELECT 1 FROM `order_hold_end` WHERE `hold_id` = h.`id`))
BEGIN SELECT RAISE(ABORT, 'order_hold: the order is held already'); END;
CREATE TRIGGER `jar_claimed` BEFORE INSERT ON `jar`
WHEN NOT EXISTS (SELECT 1 FROM `order_claim` WHERE `order_id` = NEW.`order_id`)
  OR EXISTS (SELECT 1 FROM `order_end` WHERE `order_id` = NEW.`order_id`)
BEGIN SELECT RAISE(ABORT, 'jar: only for a claimed, open order'); END;
CREATE TRIGGER `reading_jar_open` BEFORE INSERT ON `reading`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'reading: the jar is closed'); END;
CREATE TRIGGER `reading_void_jar_open` BEFORE INSERT ON `reading_void`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'reading_void: the jar is closed'); END;
CREATE TRIGGER `jar_waste_jar_open` BEFORE INSERT ON `jar_waste`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'jar_waste: the jar is closed'); END;
CREATE TRIGGER `mend_jar_open` BEFORE INSERT ON `mend`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'mend: the jar is closed'); END;
CREATE TRIGGER `step_done_jar_open` BEFORE INSERT ON `step_done`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'step_done: the jar is closed'); END;
CREATE TRIGGER `bench_check_jar_open` BEFORE INSERT ON `bench_check`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'bench_check: the jar is closed'); END;
CREATE TRIGGER `jar_release_jar_open` BEFORE INSERT ON `jar_release`
WHEN EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code`)
  OR EXISTS (SELECT 1 FROM `mend` WHERE `jar_code` = NEW.`jar_code` AND `kind` = 'discard')
BEGIN SELECT RAISE(ABORT, 'jar_release: the jar is closed'); END;
CREATE TRIGGER `reading_follows` BEFORE INSERT ON `reading`
WHEN NEW.`fact_no` <> 1 + (SELECT coalesce(max(n), 0) FROM (
    SELECT `fact_no` AS n FROM `reading` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `reading_void` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `jar_waste` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `mend` WHERE `jar_code` = NEW.`jar_code`))
BEGIN SELECT RAISE(ABORT, 'reading: the facts of a jar are numbered without a gap'); END;
CREATE TRIGGER `reading_void_follows` BEFORE INSERT ON `reading_void`
WHEN NEW.`fact_no` <> 1 + (SELECT coalesce(max(n), 0) FROM (
    SELECT `fact_no` AS n FROM `reading` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `reading_void` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `jar_waste` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `mend` WHERE `jar_code` = NEW.`jar_code`))
BEGIN SELECT RAISE(ABORT, 'reading_void: the facts of a jar are numbered without a gap'); END;
CREATE TRIGGER `jar_waste_follows` BEFORE INSERT ON `jar_waste`
WHEN NEW.`fact_no` <> 1 + (SELECT coalesce(max(n), 0) FROM (
    SELECT `fact_no` AS n FROM `reading` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `reading_void` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `jar_waste` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `mend` WHERE `jar_code` = NEW.`jar_code`))
BEGIN SELECT RAISE(ABORT, 'jar_waste: the facts of a jar are numbered without a gap'); END;
CREATE TRIGGER `mend_follows` BEFORE INSERT ON `mend`
WHEN NEW.`fact_no` <> 1 + (SELECT coalesce(max(n), 0) FROM (
    SELECT `fact_no` AS n FROM `reading` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `reading_void` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `jar_waste` WHERE `jar_code` = NEW.`jar_code` UNION ALL
    SELECT `fact_no` AS n FROM `mend` WHERE `jar_code` = NEW.`jar_code`))
BEGIN SELECT RAISE(ABORT, 'mend: the facts of a jar are numbered without a gap'); END;
CREATE TRIGGER `reservation_freed_same` BEFORE INSERT ON `reservation_freed`
WHEN NOT EXISTS (SELECT 1 FROM `reservation` WHERE `id` = NEW.`reservation_id` AND `lot_id` = NEW.`lot_id` AND `mass_ug` = NEW.`mass_ug`)
BEGIN SELECT RAISE(ABORT, 'reservation_freed: names the lot and mass of its reservation'); END;
CREATE TRIGGER `reading_void_same_jar` BEFORE INSERT ON `reading_void`
WHEN NOT EXISTS (SELECT 1 FROM `reading` WHERE `id` = NEW.`reading_id` AND `jar_code` = NEW.`jar_code`)
BEGIN SELECT RAISE(ABORT, 'reading_void: of the same jar'); END;
CREATE TRIGGER `hold_decision_held` BEFORE INSERT ON `hold_decision`
WHEN NOT EXISTS (SELECT 1 FROM `jar_release` WHERE `jar_code` = NEW.`jar_code` AND `outcome` = 'held')
BEGIN SELECT RAISE(ABORT, 'hold_decision: the jar is not held'); END;
CREATE TRIGGER `order_link_elsewhere` BEFORE INSERT ON `order_link`
WHEN EXISTS (SELECT 1 FROM `jar` WHERE `batch_code` = NEW.`jar_code` AND `order_id` = NEW.`order_id`)
BEGIN SELECT RAISE(ABORT, 'order_link: an order cannot follow its own jar'); END;
