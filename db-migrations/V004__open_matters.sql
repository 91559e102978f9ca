-- Read table of nonconformities that await their disposition.
create table open_nonconformity (
    id varchar(120) primary key,
    work_order varchar(80) not null,
    number integer not null,
    stage varchar(80) not null,
    item varchar(200),
    cause varchar(40) not null,
    what varchar(4000) not null,
    opened_by varchar(80) not null,
    since timestamp(6) with time zone not null
);

create index open_nonconformity_since on open_nonconformity (since);
