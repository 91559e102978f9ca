-- Read table for one search over all vehicles: what each entry of a work order's record names, by which it can be found.
-- Codes are in capitals and without blanks, as they are searched for; "shown" is how they stand on record.
create table traced (
    id varchar(300) primary key,
    work_order varchar(80) not null,
    entry_number bigint not null,
    trace_sort varchar(20) not null,
    code varchar(120) not null,
    shown varchar(120) not null,
    at timestamp(6) with time zone not null
);

create index traced_code on traced (code, work_order);
