-- An old certificate put on record late, the first issue of gloves and a printed last day all bear on the day up to which
-- an instrument may be used; the row keeps them, since it is made from its own stream alone. Who has it from the tool
-- store is what the store's page asks for. The day of a
-- calibration in rows made before this comes with the next rebuild or calibration.
alter table instrument add column certificate_due date;
alter table instrument add column calibrated_on date;
alter table instrument add column first_issued date;
alter table instrument add column expires date;
alter table instrument add column holder varchar(80);
alter table instrument add column place varchar(80);
alter table instrument add column out_since timestamp(6) with time zone;

update instrument set certificate_due = due;
