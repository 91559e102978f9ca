-- Read table for safety stops, of vehicles and of places; a row is a function of the stream of its vehicle, or of the works.
create table safety_stop (
    id varchar(100) primary key,
    vehicle varchar(80) not null,
    number integer not null,
    entry uuid not null,
    station varchar(80),
    since timestamp(6) with time zone not null,
    still_open boolean not null
);

create index safety_stop_open on safety_stop (still_open, since);
create index safety_stop_entry on safety_stop (entry);
