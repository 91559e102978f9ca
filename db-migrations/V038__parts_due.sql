-- Read table for parts taken out of vehicles that are due to somebody: cores to return, parts bought back or sold. A row is a
-- function of the stream of its vehicle.
create table part_due (
    id varchar(200) primary key,
    work_order varchar(40) not null,
    thing varchar(160) not null,
    fate varchar(20) not null,
    party varchar(80),
    due_on date not null,
    since timestamp(6) with time zone not null
);

create index part_due_day on part_due (due_on);
