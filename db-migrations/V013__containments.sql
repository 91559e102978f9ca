-- Read tables for the list of containments: a row of the first is a function of the stream of its cause, a row of the
-- second one of a work order's.
create table containment (
    code varchar(120) primary key,
    subject varchar(120) not null,
    sort varchar(20) not null,
    about varchar(120) not null,
    reason text not null,
    opened_at timestamp(6) with time zone not null,
    closed boolean not null,
    vehicles integer not null
);

create index containment_subject on containment (subject);

create table vehicle_doubt (
    id varchar(220) primary key,
    containment varchar(120) not null,
    work_order varchar(80) not null,
    since timestamp(6) with time zone not null,
    sure_out integer not null,
    possible integer not null,
    safe integer not null,
    open_readings integer not null,
    open_sure_out integer not null,
    gravest varchar(20) not null,
    held boolean not null,
    informed boolean not null
);

create index vehicle_doubt_containment on vehicle_doubt (containment);
create index vehicle_doubt_work_order on vehicle_doubt (work_order);
