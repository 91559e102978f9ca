-- What was determined at which line of which vehicle, so that the next vehicle's value can be held against the ones before.
create table determined_value (
    entry_id uuid primary key,
    work_order varchar(80) not null,
    line varchar(170) not null,
    figure varchar(40) not null,
    at timestamp(6) with time zone not null
);

create index determined_value_line on determined_value (line, at);
