-- The size of gloves and the like, so that whoever issues a live-work permit sees whose hands a pair fits. Rows made before this
-- get it with the next rebuild or description.
alter table instrument add column gear_size varchar(80);
