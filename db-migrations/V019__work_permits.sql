-- Read table for the list of permits to work besides high voltage; a row is a function of the stream of its vehicle, or of
-- the works.
create table work_permit (
    id varchar(100) primary key,
    vehicle varchar(80) not null,
    number integer not null,
    sort varchar(20) not null,
    issued_at timestamp(6) with time zone not null,
    still_open boolean not null
);

create index work_permit_open on work_permit (still_open, issued_at);
