-- Read table for the list of open matters: vehicles with snags agreed at handover that are not closed. A row is a function of the
-- stream of its vehicle.
create table open_snags (
    work_order varchar(40) primary key,
    snags integer not null
);
